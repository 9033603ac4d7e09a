namespace Jackwork.Geometry;

/// <summary>Draws a sampled smooth curve with few lines and arcs that meet with a common tangent (an arc spline).</summary>
/// <remarks>
/// Each span runs from sample to sample by a <see cref="Biarc"/>; the longest span that passes within the tolerance of
/// every sample under it is found by doubling and bisection. A run that lies on one circle or line (a dwell) is drawn
/// as that very arc or line. The error between samples is not seen, so the samples must be dense against the tolerance.
/// Sources: see <see cref="Biarc"/>; the longest-span rule is that of Meek and Walton (1995), section 4, from memory.
/// </remarks>
public static class ArcFit
{
    /// <summary>Two samples nearer than this are one, mm: below it the direction of the chord is rounding noise.</summary>
    private const double CoincidentMm = 1e-9;

    /// <summary>Greatest stray of a sample from the arc or line it is taken to lie on exactly, mm.</summary>
    private const double ExactMm = 1e-6;

    /// <summary>Fits the run from the first sample to the last, adding the segments to <paramref name="into"/>.</summary>
    /// <remarks>
    /// Each segment starts where the one before it ends, bit for bit; the first starts at the first sample and the last
    /// ends at the last. Split the run at corners. Where two neighbouring samples admit no biarc (a tangent against
    /// the chord, as at a cusp) the chord between them is kept.
    /// </remarks>
    /// <param name="points">Samples in order of travel; fewer than two give nothing.</param>
    /// <param name="toleranceMm">Greatest distance of a sample from the result, mm, above zero.</param>
    /// <param name="into">Receives the segments.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above zero.</exception>
    public static void Fit(ReadOnlySpan<OutlinePoint> points, double toleranceMm, List<Segment> into)
    {
        if (!(toleranceMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(toleranceMm), toleranceMm, "The tolerance must be above 0 mm.");
        }

        if (points.Length < 2)
        {
            return;
        }

        var first = into.Count;
        var at = points[0].Point;
        for (var i = 0; i < points.Length - 1;)
        {
            var span = Span(points[i..], toleranceMm);
            var b = points[i + span];
            if (at.DistanceTo(b.Point) > CoincidentMm)
            {
                if (Biarc.TryBetween(points[i], b, out var biarc))
                {
                    biarc.AddTo(into, at);
                }
                else
                {
                    into.Add(new(at, b.Point, 0));
                }

                at = b.Point;
            }

            i += span;
        }

        if (into.Count > first)
        {
            into[^1] = into[^1] with { End = points[^1].Point };
        }
    }

    /// <summary>Fits the loop through the samples; the last joins the first, which is not repeated.</summary>
    /// <param name="points">Samples in order of travel, at least three, smooth all the way round.</param>
    /// <param name="toleranceMm">Greatest distance of a sample from the result, mm, above zero.</param>
    /// <exception cref="ArgumentException">Fewer than three samples.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above zero.</exception>
    public static Outline FitClosed(ReadOnlySpan<OutlinePoint> points, double toleranceMm)
    {
        if (points.Length < 3)
        {
            throw new ArgumentException($"A loop needs at least 3 samples; {points.Length} given.", nameof(points));
        }

        // Begin where the longest span from the first sample ends, so that the seam is a break the curve would have anyway.
        var seam = Span(points, toleranceMm);
        var loop = new OutlinePoint[points.Length + 1];
        points[seam..].CopyTo(loop);
        points[..seam].CopyTo(loop.AsSpan(points.Length - seam));
        loop[^1] = loop[0];
        var segments = new List<Segment>();
        Fit(loop, toleranceMm, segments);
        return new([.. segments]);
    }

    // Steps from the first sample that one biarc covers; an exact arc is preferred when it covers at least half as many.
    private static int Span(ReadOnlySpan<OutlinePoint> points, double tolerance)
    {
        var most = Longest(points, tolerance, oneArc: false);
        var exact = Longest(points[..(most + 1)], Math.Min(ExactMm, tolerance), oneArc: true);
        return 2 * exact >= most ? exact : most;
    }

    private static int Longest(ReadOnlySpan<OutlinePoint> points, double tolerance, bool oneArc)
    {
        var last = points.Length - 1;
        var good = 1;
        var bad = 2;
        while (bad <= last && Covers(points[..(bad + 1)], tolerance, oneArc))
        {
            good = bad;
            bad = bad < last ? Math.Min(2 * bad, last) : last + 1;
        }

        bad = Math.Min(bad, last + 1);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            if (Covers(points[..(middle + 1)], tolerance, oneArc))
            {
                good = middle;
            }
            else
            {
                bad = middle;
            }
        }

        return good;
    }

    private static bool Covers(ReadOnlySpan<OutlinePoint> points, double tolerance, bool oneArc)
    {
        if (!Biarc.TryBetween(points[0], points[^1], out var biarc) || (oneArc && !biarc.IsOneArc))
        {
            return false;
        }

        foreach (ref readonly var s in points[1..^1])
        {
            if (!biarc.Follows(s, tolerance))
            {
                return false;
            }
        }

        return true;
    }
}
