using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Finds what makes loops of straight lines no plate: sides that cross, holes that lie outside.</summary>
internal static class LoopFault
{
    /// <summary>A sentence that names the first fault and its place; null for a sound plate.</summary>
    /// <param name="points">All corners.</param>
    /// <param name="outside">The outer loop.</param>
    /// <param name="holes">The holes.</param>
    public static string? Of(List<Point2> points, List<int> outside, List<List<int>> holes)
    {
        var sides = new List<(Point2 A, Point2 B)>();
        foreach (var loop in holes.Prepend(outside))
        {
            for (var i = 0; i < loop.Count; i++)
            {
                sides.Add((points[loop[i]], points[loop[(i + 1) % loop.Count]]));
            }
        }

        // Swept along x: a side is tested against those whose stretch of x has begun and not ended.
        sides.Sort((s, t) => Math.Min(s.A.X, s.B.X).CompareTo(Math.Min(t.A.X, t.B.X)));
        var open = new List<(Point2 A, Point2 B)>();
        foreach (var s in sides)
        {
            var begin = Math.Min(s.A.X, s.B.X);
            open.RemoveAll(t => Math.Max(t.A.X, t.B.X) < begin);
            foreach (var t in open)
            {
                if (Apart(s, t) && Apart(t, s))
                {
                    return FormattableString.Invariant($"Sides cross near ({s.A.X:0.###}, {s.A.Y:0.###}) mm.");
                }
            }

            open.Add(s);
        }

        var lost = holes.FindIndex(h => !Holds(points, outside, points[h[0]]));
        return lost < 0 ? null : FormattableString.Invariant($"Hole {lost} lies outside the plate.");
    }

    // Whether the ends of t lie strictly on opposite sides of the line through s.
    private static bool Apart((Point2 A, Point2 B) s, (Point2 A, Point2 B) t)
    {
        var d = s.B - s.A;
        var (u, v) = (d.Cross(t.A - s.A), d.Cross(t.B - s.A));
        return (u > 0 && v < 0) || (u < 0 && v > 0);
    }

    // Crossings of a ray along x, counted odd.
    private static bool Holds(List<Point2> points, List<int> loop, Point2 p)
    {
        var inside = false;
        for (var i = 0; i < loop.Count; i++)
        {
            var (a, b) = (points[loop[i]], points[loop[(i + 1) % loop.Count]]);
            if ((a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X + (p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
