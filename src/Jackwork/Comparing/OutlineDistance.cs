using Jackwork.Geometry;

namespace Jackwork.Comparing;

/// <summary>The greatest distance between two loops: how far a point of either can lie from the other (Hausdorff distance).</summary>
/// <remarks>
/// With d(x, B) the distance from a point to the nearest of B,  h(A, B) = max over a in A of d(a, B)  and  H = max(h(A, B), h(B, A)).
/// Both loops are flattened to straight edges. The distance to one edge of B is convex along an edge of A, so that it is
/// greatest at an end:  max(d(a1, b), d(a2, b))  bounds d(x, B) from above between a1 and a2, for every b. An edge whose least bound
/// is no more than what was found already is done; else it is halved. H. Alt, B. Behrends, J. Blömer, Approximate matching of
/// polygonal shapes, 1995, section 3 (from memory).
/// </remarks>
public static class OutlineDistance
{
    /// <summary>Error allowed to flattening, mm: the answer is within twice this, and <see cref="Close"/>.</summary>
    private const double Sagitta = 0.0005;

    /// <summary>An edge that can hold no more than this beyond what was found is not halved further, mm.</summary>
    private const double Close = 0.0002;

    /// <summary>The greatest distance, mm, and the two points between which it is.</summary>
    public static (double Mm, Point2 OnA, Point2 OnB) Between(Outline a, Outline b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        if (a.Segments.AsSpan().SequenceEqual(b.Segments.AsSpan()))
        {
            return (0, a.Segments[0].Start, a.Segments[0].Start);
        }

        Point2[] p = [.. a.Flatten(Sagitta)], q = [.. b.Flatten(Sagitta)];
        var (there, back) = (Farthest(p, q), Farthest(q, p));
        return there.Mm >= back.Mm ? (there.Mm, there.From, there.To) : (back.Mm, back.To, back.From);
    }

    private static (double Mm, Point2 From, Point2 To) Farthest(Point2[] from, Point2[] to)
    {
        var best = (Mm: -1.0, From: from[0], To: from[0]);
        void Take(Point2 p)
        {
            var (mm, at) = Nearest(p, to);
            if (mm > best.Mm)
            {
                best = (mm, p, at);
            }
        }

        foreach (var p in from)
        {
            Take(p);
        }

        var open = new Stack<(Point2 A, Point2 B)>(from.Select((p, i) => (p, from[(i + 1) % from.Length])));
        while (open.TryPop(out var edge))
        {
            if (Bound(edge.A, edge.B, to) > best.Mm + Close)
            {
                var middle = edge.A.Midpoint(edge.B);
                Take(middle);
                open.Push((edge.A, middle));
                open.Push((middle, edge.B));
            }
        }

        return best;
    }

    // What no point of the edge from a to b can exceed.
    private static double Bound(Point2 a, Point2 b, Point2[] loop)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < loop.Length; i++)
        {
            var (p, q) = (loop[i], loop[(i + 1) % loop.Length]);
            var near = On(a, p, q).DistanceTo(a);
            if (near < least)
            {
                least = Math.Min(least, Math.Max(near, On(b, p, q).DistanceTo(b)));
            }
        }

        return least;
    }

    private static (double Mm, Point2 At) Nearest(Point2 x, Point2[] loop)
    {
        var best = (Mm: double.PositiveInfinity, At: x);
        for (var i = 0; i < loop.Length; i++)
        {
            var at = On(x, loop[i], loop[(i + 1) % loop.Length]);
            if (at.DistanceTo(x) is var mm && mm < best.Mm)
            {
                best = (mm, at);
            }
        }

        return best;
    }

    // The point between p and q that is nearest to x.
    private static Point2 On(Point2 x, Point2 p, Point2 q)
    {
        var d = q - p;
        var dd = d.Dot(d);
        return dd == 0 ? p : p + Math.Clamp((x - p).Dot(d) / dd, 0, 1) * d;
    }
}
