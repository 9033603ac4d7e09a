using Jackwork.Design;
using Jackwork.Pins;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a pair of pin wheels of its spec.</summary>
internal static class PinWheelDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static PinWheelDrive? Make(PinWheelSpec w, DriveSite site)
    {
        if (!site.TwoShafts("two wheels of pins") || PinPlaceMaker.Make(w.At, w.Circle, site) is not { } place)
        {
            return null;
        }

        var (driver, driven, pin) = (w.Pins[0], w.Pins[1], w.Pin ?? IntermittentSizes.UsualPin);
        var size = place.IsCrossed ? w.Circle!.Value : place.Distance;
        var stand = new PinStand(place.IsCrossed, w.Pegs is "driver" or "both", w.Pegs is "driven" or "both");
        if (stand.Refused is { } why)
        {
            site.Note("pegs", why, place.IsCrossed ? "Write 'both', or leave it out for pins along the shafts" : "Write 'driver' or 'driven', or leave it out for pins along the shafts");
            return null;
        }

        if (PinWheelLaw.Of(stand, size, driver, driven, pin) is not { } law)
        {
            var pair = PinPair.Rolling(place.IsCrossed, size, Math.Tau / driver, Math.Tau / driven, pin);
            site.Note(
                "",
                FormattableString.Invariant($"pins of {pin:0.##} mm, {driver} and {driven} of them on circles of {pair.DriverCircle:0.##} and {pair.DrivenCircle:0.##} mm radius, let go of each other, or meet head-on, before the next take over"),
                "Too thin pins let go, too thick ones meet head-on: try another 'pin', or other 'pins'");
            return null;
        }

        return new(site.Driver, site.Driven, w, place, stand, law);
    }
}
