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
            if (segments.Count > 0)
            {
                Close(segments, points[0].Point);
            }

            if (points.Length > 1)
            {
                ArcFit.Fit(points, FitTolerance, segments);
            }
        }

        Close(segments, segments[0].Start);
        return new([.. segments]);
    }

    // A corner leaves a step between runs no longer than the sampling. A line closes it; one of rounding is drawn into the segment before, as a segment of no length has no direction.
    private static void Close(List<Segment> segments, Point2 to)
    {
        if (segments[^1].End.DistanceTo(to) < Same)
        {
            segments[^1] = segments[^1] with { End = to };
        }
        else
        {
            segments.Add(new(segments[^1].End, to, 0));
        }
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
