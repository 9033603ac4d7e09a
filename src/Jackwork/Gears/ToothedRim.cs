using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>The outline of a wheel from one side of one tooth: mirrored and turned round.</summary>
internal static class ToothedRim
{
    /// <summary>An arc shorter than this is left out, mm: rounding noise.</summary>
    public const double NoLengthMm = 1e-9;

    /// <summary>The closed outline, counter-clockwise about the origin.</summary>
    /// <param name="side">The counter-clockwise side of a tooth whose middle is on the x axis, outwards.</param>
    /// <param name="tipRadius">Radius of the arc between the two sides' ends, mm.</param>
    /// <param name="rootRadius">Radius of the arc from one tooth to the next, mm; negative for a hollow about a point outside.</param>
    /// <param name="teeth">Number of teeth.</param>
    /// <param name="first">Angle to which the first tooth is turned, rad.</param>
    public static Outline Of(IReadOnlyList<Segment> side, double tipRadius, double rootRadius, int teeth, double first = 0)
    {
        var pitch = Math.Tau / teeth;
        var tooth = Tooth(side, tipRadius);
        AddArc(tooth, rootRadius, side[0].Start, Mirrored(side[0].Start).Turned(pitch));

        // Each segment starts bit for bit where the one before it ends.
        var all = new Segment[tooth.Count * teeth];
        for (var i = 0; i < all.Length; i++)
        {
            var s = tooth[i % tooth.Count].Turned(first + pitch * (i / tooth.Count));
            all[i] = i == 0 ? s : s with { Start = all[i - 1].End };
        }

        all[^1] = all[^1] with { End = all[0].Start };
        return new([.. all]);
    }

    /// <summary>One tooth, its middle on the x axis, from the foot of its clockwise side over the tip to the other foot.</summary>
    /// <param name="side">Its counter-clockwise side, outwards.</param>
    /// <param name="tipRadius">Radius of the arc between the two sides' ends, mm.</param>
    public static List<Segment> Tooth(IReadOnlyList<Segment> side, double tipRadius)
    {
        var tooth = new List<Segment>(2 * side.Count + 2);
        tooth.AddRange(side.Select(s => new Segment(Mirrored(s.Start), Mirrored(s.End), -s.Bulge)));
        AddArc(tooth, tipRadius, Mirrored(side[^1].End), side[^1].End);
        tooth.AddRange(side.Reverse().Select(s => s.Reversed()));
        return tooth;
    }

    private static Point2 Mirrored(Point2 p) => new(p.X, -p.Y);

    private static void AddArc(List<Segment> into, double radius, Point2 from, Point2 to)
    {
        if (from.DistanceTo(to) > NoLengthMm)
        {
            // Half the sweep from half the chord.
            into.Add(new(from, to, Math.Tan(0.5 * Math.Asin(Math.Clamp(0.5 * from.DistanceTo(to) / radius, -1, 1)))));
        }
    }
}
