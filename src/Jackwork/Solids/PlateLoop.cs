using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>A closed loop of a plate in straight lines, none of which cuts into the solid.</summary>
/// <remarks>
/// The loop runs with the solid on its left. An arc that turns left bulges out of the solid: it is replaced by tangents, whose
/// corners stand R (1/cos(t/2) - 1) outside it, t the angle of each piece. An arc that turns right hollows the solid: it is replaced by
/// chords, which leave R (1 - cos(t/2)) of the hollow filled. Both ends of each segment stay where they are. Then hollow corners are left
/// out wherever a straight line past them fills no more than the sagitta; each such corner would cost a piece. Half of the
/// sagitta goes to either step.
/// </remarks>
internal static class PlateLoop
{
    /// <summary>A corner nearer than this to the line through its neighbours, mm, counts as in line with them.</summary>
    private const double StraightMm = 1e-12;

    /// <summary>Widest angle of one piece of an arc, rad, so that a circle keeps four sides however coarse the sagitta.</summary>
    private const double WidestPiece = Math.PI / 2;

    /// <summary>The loop's corners, with the solid on the left.</summary>
    /// <param name="outline">Any closed outline.</param>
    /// <param name="solidInside">True for the outside of a plate, false for a hole.</param>
    /// <param name="sagitta">Greatest distance of the lines from the outline, mm, above 0.</param>
    public static List<Point2> Of(Outline outline, bool solidInside, double sagitta)
    {
        var loop = outline.SignedArea > 0 == solidInside ? outline : outline.Reversed();
        var points = new List<Point2>();
        foreach (var s in loop.Segments)
        {
            points.Add(s.Start);
            if (s.IsLine)
            {
                continue;
            }

            var bulges = s.Bulge > 0;
            var cosine = bulges ? s.Radius / (s.Radius + sagitta / 2) : Math.Max(0, 1 - sagitta / 2 / s.Radius);
            var n = Math.Max(1, (int)Math.Ceiling(Math.Abs(s.Sweep) / Math.Min(WidestPiece, 2 * Math.Acos(cosine))));
            for (var i = 0; i < n; i++)
            {
                if (bulges)
                {
                    points.Add(s.Centre + (1 / Math.Cos(0.5 * s.Sweep / n)) * (s.PointAt((i + 0.5) / n) - s.Centre));
                }
                else if (i > 0)
                {
                    points.Add(s.PointAt((double)i / n));
                }
            }
        }

        return Simplified(points, sagitta / 2);
    }

    // Goes round once. Every corner left out is measured against the one line that passes it, so the shifts do not add up.
    private static List<Point2> Simplified(List<Point2> points, double allowed)
    {
        var kept = new List<Point2>();
        foreach (var p in points)
        {
            if (kept.Count == 0 || p.DistanceTo(kept[^1]) > StraightMm)
            {
                kept.Add(p);
            }
        }

        if (kept.Count > 1 && kept[0].DistanceTo(kept[^1]) <= StraightMm)
        {
            kept.RemoveAt(kept.Count - 1);
        }

        var n = kept.Count;
        var result = new List<Point2>();
        for (var i = 0; i < n;)
        {
            // The hollow corners after i that one line from i passes by.
            var end = i + 1;
            while (end < n && Passes(kept, i, end + 1, allowed))
            {
                end++;
            }

            result.Add(kept[i]);
            i = end;
        }

        return result.Count >= 3 ? result : kept;
    }

    // Whether the line from one corner to another has all corners between on its left, where the solid is, and near.
    private static bool Passes(List<Point2> points, int from, int to, double allowed)
    {
        var a = points[from];
        var b = points[to % points.Count];
        if (to - from >= points.Count - 1 || b == a)
        {
            return false;
        }

        var along = (b - a).Unit();
        for (var k = from + 1; k < to; k++)
        {
            var p = points[k] - a;
            var off = along.Cross(p);
            var t = along.Dot(p);
            if (off < -StraightMm || off > allowed || t < 0 || t > (b - a).Length)
            {
                return false;
            }
        }

        return true;
    }
}
