using Jackwork.Cams;
using Jackwork.Geometry;

namespace Jackwork.Barrels;

/// <summary>The drum's surface unrolled, as it is cut: the two bands that the groove leaves.</summary>
/// <remarks>x round the drum, rising against the sense in which its shaft turns forward past the roller, y along the shaft from the drum's near end; seen from outside.</remarks>
/// <param name="Lower">The band towards the near end, counter-clockwise.</param>
/// <param name="Upper">The band towards the far end, counter-clockwise.</param>
/// <param name="Groove">The groove between them from the seam once round, counter-clockwise.</param>
/// <param name="Round">Length once round, mm.</param>
/// <param name="Length">Length along the shaft, mm.</param>
public sealed record BarrelPattern(Outline Lower, Outline Upper, Outline Groove, double Round, double Length)
{
    /// <summary>The pattern of a groove in a drum.</summary>
    /// <param name="groove">The groove.</param>
    /// <param name="from">Where along the shaft the drum begins, mm.</param>
    /// <param name="length">Its length, mm.</param>
    public static BarrelPattern Of(BarrelGroove groove, double from, double length)
    {
        var (round, down) = (groove.Round, new Vec2(0, -from));
        var lower = Run(groove.Wall(false), down);
        var upper = Run(groove.Wall(true), down);
        var (l, u) = (lower[0].Start.Y, upper[0].Start.Y);
        var low = new List<Segment> { new(new(0, 0), new(round, 0), 0), new(new(round, 0), lower[^1].End, 0) };
        low.AddRange(lower.AsEnumerable().Reverse().Select(s => s.Reversed()));
        low.Add(new(new(0, l), new(0, 0), 0));
        var high = new List<Segment>(upper) { new(upper[^1].End, new(round, length), 0), new(new(round, length), new(0, length), 0), new(new(0, length), new(0, u), 0) };
        var between = new List<Segment>(lower) { new(lower[^1].End, upper[^1].End, 0) };
        between.AddRange(upper.AsEnumerable().Reverse().Select(s => s.Reversed()));
        between.Add(new(new(0, u), new(0, l), 0));
        return new(new([.. low]), new([.. high]), new([.. between]), round, length);
    }

    private static List<Segment> Run(IReadOnlyList<OutlinePoint> wall, Vec2 by)
    {
        var segments = new List<Segment>();
        ArcFit.Fit([.. wall], CamOutline.FitTolerance, segments);
        return [.. segments.Select(s => s.Moved(by))];
    }
}
