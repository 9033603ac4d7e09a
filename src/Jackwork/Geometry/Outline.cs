using System.Collections.Immutable;

namespace Jackwork.Geometry;

/// <summary>A closed loop of lines and arcs, each ending where the next begins. Counter-clockwise for a solid's outside.</summary>
/// <param name="Segments">At least two segments, in order; the last ends where the first begins.</param>
public sealed record Outline(ImmutableArray<Segment> Segments)
{
    /// <summary>A full circle as two half arcs, counter-clockwise, mm.</summary>
    public static Outline Circle(Point2 centre, double radius) => new(
    [
        Segment.Arc(centre, radius, 0, Math.PI),
        Segment.Arc(centre, radius, Math.PI, Math.PI),
    ]);

    /// <summary>Straight lines through <paramref name="points"/>, closed back to the first.</summary>
    public static Outline Polygon(IReadOnlyList<Point2> points)
    {
        var b = ImmutableArray.CreateBuilder<Segment>(points.Count);
        for (var i = 0; i < points.Count; i++)
        {
            b.Add(new(points[i], points[(i + 1) % points.Count], 0));
        }

        return new(b.MoveToImmutable());
    }

    /// <summary>Greatest distance between the end of a segment and the start of the next, mm; zero for a closed loop.</summary>
    public double Gap
    {
        get
        {
            var gap = 0.0;
            for (var i = 0; i < Segments.Length; i++)
            {
                gap = Math.Max(gap, Segments[i].End.DistanceTo(Segments[(i + 1) % Segments.Length].Start));
            }

            return gap;
        }
    }

    /// <summary>Enclosed area, mm^2; positive when the loop runs counter-clockwise.</summary>
    public double SignedArea
    {
        get
        {
            var sum = 0.0;
            foreach (var s in Segments)
            {
                sum += 0.5 * s.Start.FromOrigin.Cross(s.End.FromOrigin);
                if (!s.IsLine)
                {
                    // Circular segment between chord and arc: r^2 (sweep - sin sweep) / 2, with the sweep's sign.
                    sum += 0.5 * s.Radius * s.Radius * (s.Sweep - Math.Sin(s.Sweep));
                }
            }

            return sum;
        }
    }

    /// <summary>Length once round, mm.</summary>
    public double Length => Segments.Sum(s => s.Length);

    /// <summary>The same loop run the other way.</summary>
    public Outline Reversed() => new([.. Segments.Reverse().Select(s => s.Reversed())]);

    /// <summary>The loop seen from behind: y the other way, run the same way round.</summary>
    public Outline Mirrored() => new([.. Segments.Reverse().Select(s => new Segment(new(s.End.X, -s.End.Y), new(s.Start.X, -s.Start.Y), s.Bulge))]);

    /// <summary>The same loop turned about the origin by <paramref name="angle"/> radians.</summary>
    public Outline Turned(double angle) => new([.. Segments.Select(s => s.Turned(angle))]);

    /// <summary>The same loop displaced.</summary>
    public Outline Moved(Vec2 by) => new([.. Segments.Select(s => s.Moved(by))]);

    /// <summary>Distance from <paramref name="p"/> to the nearest point of the loop, mm, whether inside or outside.</summary>
    public double DistanceTo(Point2 p)
    {
        var best = double.PositiveInfinity;
        foreach (var s in Segments)
        {
            best = Math.Min(best, s.DistanceTo(p));
        }

        return best;
    }

    /// <summary>Points along the loop such that no chord strays more than <paramref name="sagitta"/> mm from its arc.</summary>
    public IEnumerable<Point2> Flatten(double sagitta)
    {
        foreach (var s in Segments)
        {
            var n = s.IsLine ? 1 : Math.Max(1, (int)Math.Ceiling(Math.Abs(s.Sweep) / (2 * Math.Acos(Math.Max(0, 1 - sagitta / s.Radius)))));
            for (var i = 0; i < n; i++)
            {
                yield return s.PointAt((double)i / n);
            }
        }
    }

    /// <summary>Smallest and largest coordinates over the loop, arcs included, mm.</summary>
    public (Point2 Min, Point2 Max) Bounds()
    {
        var (minX, minY, maxX, maxY) = (double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        void Take(Point2 p)
        {
            minX = Math.Min(minX, p.X);
            minY = Math.Min(minY, p.Y);
            maxX = Math.Max(maxX, p.X);
            maxY = Math.Max(maxY, p.Y);
        }

        foreach (var s in Segments)
        {
            Take(s.Start);
            if (s.IsLine)
            {
                continue;
            }

            foreach (var d in (ReadOnlySpan<Vec2>)[new(1, 0), new(0, 1), new(-1, 0), new(0, -1)])
            {
                if (s.Spans(d))
                {
                    Take(s.Centre + s.Radius * d);
                }
            }
        }

        return (new(minX, minY), new(maxX, maxY));
    }
}
