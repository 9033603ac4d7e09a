using Jackwork.Geometry;

namespace Jackwork.Barrels;

/// <summary>The groove of a barrel cam, sampled over one turn, with its worst places.</summary>
/// <param name="Samples">One for each step of the barrel's first turn.</param>
/// <param name="Surface">Radius of the surface that is unrolled, mm: the drum's outside.</param>
/// <param name="Half">Half the groove's width, mm.</param>
public sealed record BarrelGroove(IReadOnlyList<BarrelSample> Samples, double Surface, double Half)
{
    /// <summary>Length of the unrolled surface, once round, mm.</summary>
    public double Round => 2 * Math.PI * Surface;

    /// <summary>Step of the largest pressure angle.</summary>
    public int MaxPressureStep { get; } = IndexOfMost(Samples, s => s.PressureAngle);

    /// <summary>Step of the smallest radius of curvature of the pitch curve.</summary>
    public int MinRadiusStep { get; } = IndexOfMost(Samples, s => -Math.Abs(s.PitchRadius));

    /// <summary>Largest pressure angle, rad.</summary>
    public double MaxPressureAngle => Samples[MaxPressureStep].PressureAngle;

    /// <summary>Smallest radius of curvature of a wall on its inner side, mm: the pitch curve's less half the width; below zero the wall folds (undercut).</summary>
    /// <remarks>As in the plane; the roller's section with the drum is longer round the drum by (R/s)^2/6 of itself.</remarks>
    public double MinWallRadius => Math.Abs(Samples[MinRadiusStep].PitchRadius) - Half;

    /// <summary>Where the groove reaches along the shaft, mm.</summary>
    public (double From, double To) Reach => (Samples.Min(s => s.Lower.Point.Y), Samples.Max(s => s.Upper.Point.Y));

    /// <summary>A wall once round from u = 0, its ends cut to there exactly, with u rising.</summary>
    /// <param name="upper">The wall towards greater v, or the other.</param>
    public IReadOnlyList<OutlinePoint> Wall(bool upper)
    {
        var points = Samples.Select(s => upper ? s.Upper : s.Lower).ToList();
        if (points[^1].Point.X < points[0].Point.X)
        {
            points.Reverse();
        }

        // Unrolled it goes on for ever; the piece from 0 to once round is cut out, its ends between samples.
        var shift = -Round * Math.Floor(points[0].Point.X / Round);
        var turn = points.Select(p => p with { Point = new(p.Point.X + shift, p.Point.Y) }).ToList();
        var twice = turn.Select(p => p with { Point = new(p.Point.X - Round, p.Point.Y) }).Concat(turn).Append(turn[0] with { Point = new(turn[0].Point.X + Round, turn[0].Point.Y) }).ToList();
        var first = twice.FindIndex(p => p.Point.X > Near);
        var seam = Between(twice[first - 1], twice[first]);
        return [seam, .. twice.Skip(first).TakeWhile(p => p.Point.X < Round - Near), seam with { Point = new(Round, seam.Point.Y) }];
    }

    /// <summary>Samples nearer to the seam than this are on it, mm.</summary>
    private const double Near = 1e-6;

    // The curve between two samples where u = 0: cubic Hermite in v over u.
    private static OutlinePoint Between(OutlinePoint a, OutlinePoint b)
    {
        var h = b.Point.X - a.Point.X;
        var (s, m0, m1) = (-a.Point.X / h, a.Tangent.Y / a.Tangent.X, b.Tangent.Y / b.Tangent.X);
        var v = (1 + 2 * s) * (1 - s) * (1 - s) * a.Point.Y + s * (1 - s) * (1 - s) * h * m0
            + s * s * (3 - 2 * s) * b.Point.Y - s * s * (1 - s) * h * m1;
        var slope = 6 * s * (s - 1) * (a.Point.Y - b.Point.Y) / h + (1 - s) * (1 - 3 * s) * m0 + s * (3 * s - 2) * m1;
        return new(new(0, v), new Vec2(1, slope).Unit());
    }

    private static int IndexOfMost(IReadOnlyList<BarrelSample> samples, Func<BarrelSample, double> of)
    {
        var best = 0;
        for (var i = 1; i < samples.Count; i++)
        {
            best = of(samples[i]) > of(samples[best]) ? i : best;
        }

        return best;
    }
}
