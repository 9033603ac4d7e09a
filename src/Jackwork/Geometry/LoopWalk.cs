namespace Jackwork.Geometry;

/// <summary>Distances from a loop for points that come in order along it: each search begins where the last one ended.</summary>
/// <param name="loop">The loop, run in the sense in which the points come.</param>
internal sealed class LoopWalk(Outline loop)
{
    private int at = -1;

    /// <summary>Distance of <paramref name="p"/> from the loop, mm.</summary>
    public double DistanceTo(Point2 p)
    {
        var n = loop.Segments.Length;
        if (at < 0)
        {
            at = Enumerable.Range(0, n).MinBy(i => loop.Segments[i].DistanceTo(p));
        }

        var here = loop.Segments[at].DistanceTo(p);
        // Once round is enough: where segments are equally near (a circle of two arcs, seen from its middle), going on would never end.
        for (var (ahead, hops) = (1, 0); ahead <= 2 && hops < n; ahead++, hops++)
        {
            var next = (at + ahead) % n;
            var there = loop.Segments[next].DistanceTo(p);
            if (there <= here)
            {
                (at, here, ahead) = (next, there, 0);
            }
        }

        return here;
    }
}
