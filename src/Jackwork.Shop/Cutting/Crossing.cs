using Jackwork.Geometry;

namespace Jackwork.Shop.Cutting;

/// <summary>Closed-form questions about lines and arcs: where a ray leaves an outline, whether a rectangle is crossed.</summary>
internal static class Crossing
{
    /// <summary>How near to a ray the joint of two segments counts as on it, mm: rounding of a turned outline.</summary>
    private const double Joint = 1e-9;

    /// <summary>Distance from the origin to the nearest crossing with <paramref name="outline"/> in the direction <paramref name="angle"/> rad, mm; infinite when there is none.</summary>
    public static double AlongRay(Outline outline, double angle)
    {
        var nearest = double.PositiveInfinity;
        foreach (var segment in outline.Segments)
        {
            // Turned so that the ray is the positive x axis.
            var s = segment.Turned(-angle);
            if (s.IsLine)
            {
                if (s.Start.Y * s.End.Y <= 0)
                {
                    var (a, b) = (Math.Abs(s.Start.Y), Math.Abs(s.End.Y));
                    Take(a + b == 0 ? Math.Min(s.Start.X, s.End.X) : (s.Start.X * b + s.End.X * a) / (a + b));
                }

                continue;
            }

            // Through the joint of two arcs neither may own the crossing.
            if (Math.Abs(s.Start.Y) <= Joint)
            {
                Take(s.Start.X);
            }

            var c = s.Centre;
            foreach (var x in Chord(c.X, c.Y, s.Radius, 0))
            {
                if (s.Spans(new(x - c.X, -c.Y)))
                {
                    Take(x);
                }
            }
        }

        return nearest;

        void Take(double x) => nearest = x > 0 ? Math.Min(nearest, x) : nearest;
    }

    /// <summary>Whether any point of <paramref name="s"/> lies in the upright rectangle about the origin of half sizes <paramref name="halfWidth"/> and <paramref name="halfHeight"/>, mm.</summary>
    public static bool Meets(Segment s, double halfWidth, double halfHeight)
    {
        bool Inside(Point2 p) => Math.Abs(p.X) <= halfWidth && Math.Abs(p.Y) <= halfHeight;
        if (Inside(s.Start) || Inside(s.End))
        {
            return true;
        }

        return s.IsLine ? LineMeets(s, halfWidth, halfHeight) : ArcMeets(s, halfWidth, halfHeight);
    }

    /// <summary>How often <paramref name="outline"/> runs round <paramref name="p"/>, counter-clockwise positive; <paramref name="p"/> is at least <paramref name="clear"/> mm away from it.</summary>
    public static int Winding(Outline outline, Point2 p, double clear)
    {
        // Chords that stray less than the clearance run round the point as often as the arcs do.
        var points = outline.Flatten(clear / 2).Select(q => q - p).ToList();
        var turned = points.Select((v, i) => Math.Atan2(v.Cross(points[(i + 1) % points.Count]), v.Dot(points[(i + 1) % points.Count]))).Sum();
        return (int)Math.Round(turned / (2 * Math.PI));
    }

    // Clipped against the two slabs (Liang and Barsky): a share of the line from `enter` to `leave` is inside both.
    private static bool LineMeets(Segment s, double halfWidth, double halfHeight)
    {
        var d = s.End - s.Start;
        var (enter, leave) = (0.0, 1.0);
        return Clip(s.Start.X, d.X, halfWidth) && Clip(s.Start.Y, d.Y, halfHeight);

        bool Clip(double from, double run, double half)
        {
            if (run == 0)
            {
                return Math.Abs(from) <= half;
            }

            var (a, b) = ((-half - from) / run, (half - from) / run);
            enter = Math.Max(enter, Math.Min(a, b));
            leave = Math.Min(leave, Math.Max(a, b));
            return enter <= leave;
        }
    }

    // With both ends outside, the arc meets the rectangle only by crossing one of its four sides.
    private static bool ArcMeets(Segment s, double halfWidth, double halfHeight)
    {
        var (c, r) = (s.Centre, s.Radius);
        foreach (var side in (ReadOnlySpan<int>)[-1, 1])
        {
            foreach (var x in Chord(c.X, c.Y, r, side * halfHeight))
            {
                if (Math.Abs(x) <= halfWidth && s.Spans(new(x - c.X, side * halfHeight - c.Y)))
                {
                    return true;
                }
            }

            foreach (var y in Chord(c.Y, c.X, r, side * halfWidth))
            {
                if (Math.Abs(y) <= halfHeight && s.Spans(new(side * halfWidth - c.X, y - c.Y)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // Where the circle about (u, v) crosses the line v = level, along u.
    private static double[] Chord(double u, double v, double radius, double level)
    {
        var half2 = radius * radius - (level - v) * (level - v);
        return half2 < 0 ? [] : [u - Math.Sqrt(half2), u + Math.Sqrt(half2)];
    }
}
