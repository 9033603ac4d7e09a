using Jackwork.Design;
using Jackwork.Gears;
using Jackwork.PartialGears;
using Jackwork.Pins;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a partial gear of its spec.</summary>
internal static class PartialGearDriveMaker
{
    private const double UsualThinning = 0.1;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static PartialGearDrive? Make(PartialGearSpec g, DriveSite site)
    {
        if (!site.TwoShafts("a partial gear and its wheel") || !site.ParallelShafts("a partial gear and its wheel"))
        {
            return null;
        }

        var place = PinPlace.Parallel(site.DriverJoint, site.DrivenJoint, g.At ?? site.DrivenJoint.Through);
        var steps = g.Steps ?? g.Teeth[1];
        PartialGear? gear;
        try
        {
            gear = PartialGear.Of(Wheel(0), Wheel(1), place.Distance, steps, g.Shorten);
        }
        catch (ArgumentException e)
        {
            // The wheels' own contracts say in a sentence which figure leaves no tooth or no mesh.
            var apart = g.Module * (g.Teeth[0] + g.Teeth[1]) / 2;
            site.Note("", $"the teeth can't be made or don't meet: {e.Message.Split(" (Parameter", 2)[0].TrimEnd('.')}", FormattableString.Invariant($"Unshifted, these teeth stand {apart:0.###} mm apart; take other 'teeth', 'module' or 'shift', or set the axes so"));
            return null;
        }

        if (gear is null)
        {
            site.Note(
                "teeth",
                FormattableString.Invariant($"a driver of {g.Teeth[0]} teeth all round can't turn '{site.DrivenName}' on by {steps} teeth in less than its own turn, with a first tooth that comes in"),
                FormattableString.Invariant($"Give it well over {steps} teeth, fewer 'steps', or leave 'shorten' out"));
            return null;
        }

        return new(site.Driver, site.Driven, g, place, gear);

        SpurGear Wheel(int k) => new(g.Module, g.Teeth[k], g.Shift?[k] ?? 0, BasicRack.Of(g.PressureAngle is { } deg ? deg * Math.PI / 180 : BasicRack.A.PressureAngle), g.Thinning ?? UsualThinning);
    }
}
