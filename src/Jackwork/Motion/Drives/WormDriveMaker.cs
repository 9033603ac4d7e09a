using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a worm and its wheel of their spec.</summary>
internal static class WormDriveMaker
{
    private const int FewestTeeth = 5;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static WormDrive? Make(GearSpec g, DriveSite site)
    {
        if (g.Module is not { } module)
        {
            site.Note("", "a worm and its wheel need a module", "Add 'module: 1.5', the pitch along the worm over pi");
            return null;
        }

        if (g.Teeth[0] == g.Teeth[1] || g.Teeth.Max() < FewestTeeth)
        {
            site.Note("teeth", $"of {g.Teeth[0]} and {g.Teeth[1]} teeth it can't be told which is the worm, or no wheel can be made", "Give the worm's starts, such as 1, and 5 teeth or more for its wheel");
            return null;
        }

        if ((g.Inside ? "inside" : g.Shift is not null ? "shift" : g.At is not null ? "at" : null) is { } stray)
        {
            site.Note(stray, $"'{stray}' says nothing of a worm and its wheel: they stand where the shafts pass each other, at a distance that the worm's diameter sets", "Remove it");
            return null;
        }

        if (Math.Abs(site.AxisCosine) > DriveSite.Parallel)
        {
            site.Note("", "the shafts of a worm and its wheel are not square to each other", "Set one along x and the other along y, say, or use bevel wheels on shafts that meet");
            return null;
        }

        var passing = ShaftApproach.Of(site.DriverJoint, site.DrivenJoint);
        if (passing.Distance < DriveSite.OnAxis)
        {
            var starts = g.Teeth.Min();
            site.Note("", "the shafts of a worm and its wheel meet", FormattableString.Invariant($"Let them pass each other at {((g.Worm!.Diameter ?? Worms.WormPair.UsualDiameter * module) + module * (g.Teeth[0] + g.Teeth[1] - starts)) / 2:0.###} mm, or use bevel wheels"));
            return null;
        }

        // Of a right-hand thread, by the worm's and the wheel's axes and the way from one to the other.
        var wormDrives = g.Teeth[0] < g.Teeth[1];
        var (a, b) = wormDrives ? (site.DriverJoint.Along, site.DrivenJoint.Along) : (site.DrivenJoint.Along, site.DriverJoint.Along);
        var c = (wormDrives ? 1 : -1) * (passing.OnDriven - passing.OnDriver);
        var right = Math.Sign(a.Dot(b.Cross(c)));
        var asked = g.Sense is { } sense ? (sense == "same") == right > 0 : (bool?)null;
        if (g.Worm!.Hand is { } hand && asked is { } wanted && wanted != (hand == "right"))
        {
            site.Note("sense", $"a {hand}-hand worm turns '{site.DrivenName}' in the {(g.Sense == "same" ? "opposite" : "same")} sense", "Keep one of 'sense' and 'worm: hand', or change one of them");
            return null;
        }

        var isRight = g.Worm.Hand is { } given ? given == "right" : asked ?? true;
        return new(site.Driver, site.Driven, new Rational((isRight ? right : -right) * g.Teeth[0], g.Teeth[1]), g, passing, isRight);
    }
}
