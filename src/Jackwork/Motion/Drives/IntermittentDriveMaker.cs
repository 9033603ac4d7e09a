using Jackwork.Design;
using Jackwork.Pins;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of an intermittent pin wheel of its spec.</summary>
internal static class IntermittentDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static IntermittentDrive? Make(IntermittentSpec w, DriveSite site)
    {
        if (!site.TwoShafts("two wheels of pins") || PinPlaceMaker.Make(w.At, w.Circle, site) is not { } place)
        {
            return null;
        }

        var (pin, steps, share) = (w.Pin ?? IntermittentSizes.UsualPin, w.Steps ?? w.Pins, w.Share ?? 180);
        var size = place.IsCrossed ? w.Circle!.Value : place.Distance;
        if (IntermittentMaker.Law(place.IsCrossed, size, w.Pins, steps, share * Math.PI / 180, pin, w.SetIn ?? 0) is not { } law)
        {
            site.Note(
                "",
                FormattableString.Invariant($"no circles can be found on which pins of {pin:0.##} mm turn '{site.DrivenName}' on by {steps} of its {w.Pins} pins in {share:0.#}° of '{site.DriverName}', with {(place.IsCrossed ? "a circle" : "axes")} of {size:0.##} mm{(place.IsCrossed ? " radius" : " distance")}"),
                "Pins that are too thick for their circle jam, too thin ones miss each other: try other 'pins', 'pin' or 'share', more room, or 'set-in' left out");
            return null;
        }

        return new(site.Driver, site.Driven, w, place, law);
    }
}
