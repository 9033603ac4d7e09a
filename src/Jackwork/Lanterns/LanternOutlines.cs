using System.Collections.Immutable;
using Jackwork.Gears;
using Jackwork.Geometry;

namespace Jackwork.Lanterns;

/// <summary>What is cut and drilled for a lantern and its wheel, mm, each about its own axis: a tooth's middle along x, a pin along x.</summary>
public static class LanternOutlines
{
    /// <summary>Samples on a flank: one to about 0.2 mm on the largest.</summary>
    private const int Samples = 64;

    /// <summary>The toothed wheel, counter-clockwise.</summary>
    /// <param name="s">The sizes; there must be a tooth.</param>
    /// <param name="toleranceMm">Greatest distance between outline and true curve, mm, above 0.</param>
    public static Outline Wheel(LanternSizes s, double toleranceMm = 0.005)
    {
        var pitch = Math.Tau / s.Teeth;
        var along = Vec2.FromAngle(pitch / 2);
        var foot = Point2.Origin + s.GapCentre * along - s.GapRadius * along.Left;

        // The straight wall, then the flank, mirrored into this side of the tooth; the gap's round bottom joins it to the next tooth.
        var side = new List<Segment> { new(foot, foot + LanternSizes.RootShare * s.Pin * along, 0) };
        var turn = pitch / 2 - s.Thinning / (2 * s.WheelRadius);
        var flank = Enumerable.Range(0, Samples + 1)
            .Select(i => s.Flank.At(s.Flank.Start + (s.TipPhi - s.Flank.Start) * i / Samples))
            .Select(o => new OutlinePoint(new(o.Point.X, -o.Point.Y), new(o.Tangent.X, -o.Tangent.Y)).Turned(turn))
            .ToArray();
        ArcFit.Fit(flank, toleranceMm, side);
        return ToothedRim.Of(side, s.TipRadius, -s.GapRadius, s.Teeth);
    }

    /// <summary>The middles of the holes in the lantern's discs for its pins, anticlockwise from the x axis.</summary>
    public static ImmutableArray<Point2> Holes(LanternSizes s) =>
        [.. Enumerable.Range(0, s.Pins).Select(i => Point2.Origin + s.LanternRadius * Vec2.FromAngle(i * Math.Tau / s.Pins))];
}
