using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>Turns a cam's samples into the loop of lines and arcs that is cut.</summary>
internal static class CamOutline
{
    /// <summary>How far the fitted outline may stray from the samples, mm; the rest of the 0.005 that is promised is left for between them.</summary>
    public const double FitTolerance = 0.004;

    /// <summary>Change of tangent between neighbouring samples, beyond what their curvature explains, that makes a corner, rad.</summary>
    private const double Corner = 0.02;

    /// <summary>Samples nearer than this are one point, mm: rounding only.</summary>
    private const double Same = 1e-6;

    /// <summary>The loop, counter-clockwise.</summary>
    public static Outline Fit(IReadOnlyList<CamSample> roundTheCam)
    {
        var runs = Runs(roundTheCam);
        var segments = new List<Segment>();
        if (runs.Count == 1 && runs[0].Closed)
        {
            return ArcFit.FitClosed(runs[0].Points, FitTolerance);
        }

        foreach (var (points, _) in runs)
        {
            // A corner leaves a step between runs no longer than the sampling; a line closes it.
            if (segments.Count > 0 && segments[^1].End != points[0].Point)
            {
                segments.Add(new(segments[^1].End, points[0].Point, 0));
            }

            if (points.Length > 1)
            {
                ArcFit.Fit(points, FitTolerance, segments);
            }
        }

        if (segments[^1].End != segments[0].Start)
        {
            segments.Add(new(segments[^1].End, segments[0].Start, 0));
        }

        return new([.. segments]);
    }

    // Splits the loop where its tangent jumps, and where a point comes twice, as it does where one kind of piece ends and another begins.
    private static List<(OutlinePoint[] Points, bool Closed)> Runs(IReadOnlyList<CamSample> samples)
    {
        var n = samples.Count;
        var corners = Enumerable.Range(0, n).Where(i => IsCorner(samples[i], samples[(i + 1) % n])).ToList();
        if (corners.Count == 0)
        {
            return [([.. samples.Select(s => new OutlinePoint(s.Point, s.Tangent))], true)];
        }

        var runs = new List<(OutlinePoint[], bool)>();
        for (var k = 0; k < corners.Count; k++)
        {
            var first = corners[k] + 1;
            var last = corners[(k + 1) % corners.Count] + (k + 1 == corners.Count ? n : 0);
            runs.Add(([.. Enumerable.Range(first, last - first + 1).Select(i => new OutlinePoint(samples[i % n].Point, samples[i % n].Tangent))], false));
        }

        return runs;
    }

    private static bool IsCorner(in CamSample a, in CamSample b)
    {
        if (a.Point.DistanceTo(b.Point) < Same)
        {
            return true;
        }

        var turned = Math.Abs(Math.Atan2(a.Tangent.Cross(b.Tangent), a.Tangent.Dot(b.Tangent)));
        var explained = a.Point.DistanceTo(b.Point) / Math.Max(1e-3, Math.Min(Math.Abs(a.Radius), Math.Abs(b.Radius)));
        return turned > Corner + 1.5 * explained;
    }
}
