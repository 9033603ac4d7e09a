using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Least distance of one pair of moving parts over the performance, and where it first falls below a limit.</summary>
/// <remarks>
/// Over a stretch each point p moves from p0 to p1 along its chord, but for the bow b (<see cref="BodyPath"/>). Across a fixed unit
/// vector n the gap of two convex pieces A and B,
///   g(t) = min n . pB(t) - max n . pA(t),
/// is, for chords, a least of straight lines in t and so nowhere less than at one of the ends. Hence
///   distance(t) &gt;= min(g(t0), g(t1)) - bA - bB   all through the stretch,
/// for any n; the normal of the pair at the stretch's middle is the one to try. A stretch that this does not clear is halved; pieces
/// are taken together in balls, and first of all in one box for each part, until the bow is the smaller. Nothing is sampled: what is
/// passed over is proved clear. (The bound by chords is ours; for branch and bound on the time of contact see S. Redon, Y. J. Kim,
/// M. C. Lin, D. Manocha, Fast continuous collision detection for articulated models, 2004, from memory.)
/// All coordinates are seen from what carries both parts.
/// </remarks>
internal sealed class PairSearch(int steps)
{
    /// <summary>Error of a least distance above 0, mm: no moment is nearer by more.</summary>
    public const double Tolerance = 0.002;

    /// <summary>Width below the bound within which a pair may go untold, mm: pairs that keep just about to the bound for whole turns would cost most.</summary>
    public const double Margin = 0.1;

    /// <summary>Share of a depth by which the deepest moment may be deeper: of parts that run into each other the place matters more.</summary>
    private const double DepthShare = 0.02;

    /// <summary>Length of a stretch, steps, that is not halved any more: 1e-6 of a degree of the crank, or less.</summary>
    private const double Shortest = 1e-6;

    /// <summary>Tests of one pair after which a search ends with what it has: parts that stay within the tolerance of a limit for whole turns.</summary>
    private const int MostTests = 400_000;

    /// <summary>The node that stands for the box round a whole part.</summary>
    private const int Whole = -1;

    private readonly List<Entry> now = [];
    private readonly List<Entry> next = [];
    private readonly Stack<Entry> waiting = new();
    private Mover a;
    private Mover b;
    private int tests;

    // A pair of nodes over a stretch, with the normal that was found nearby, the distance there, and a proved lower bound of the distance.
    private readonly record struct Entry(int A, int B, Stretch Over, Vec3 Normal, double Nearby, double Least);

    // The stretch that was tested last, with its bow and the frames of both parts at its ends: many pairs of nodes are tested over one.
    private (Stretch Over, double Bow, Frame A0, Frame B0, Frame A1, Frame B1) held;

    /// <summary>What was found: a place in steps, and the separation there.</summary>
    internal readonly record struct Found(double Place, PartSeparation Parts);

    /// <summary>The moment at which the parts are nearest; null when they are never nearer than <paramref name="bound"/> mm by more than <see cref="Margin"/>.</summary>
    /// <param name="first">One part.</param>
    /// <param name="second">The other.</param>
    /// <param name="bound">Distance beyond which nothing matters, mm.</param>
    /// <param name="floor">A distance below which they are known never to come, mm.</param>
    public Found? Least(in Mover first, in Mover second, double bound, double floor)
    {
        Begin(first, second);
        if (a.IsStill && b.IsStill)
        {
            return PartDistance.Between(a.Set, b.Set, Frame.Identity, bound) is { } d ? new(0, d) : null;
        }

        var least = bound;
        Found? found = null;
        now.Clear();
        for (var k = 0; k << BodyPath.TopLevel < steps; k++)
        {
            now.Add(Start(k));
        }

        // All stretches of one length before any shorter one, so that a good least distance is known early.
        for (; now.Count > 0; Turn())
        {
            for (var i = 0; i < now.Count && least > floor + Tolerance; i++)
            {
                var limit = found is null ? bound - Margin : least - Slack(least);
                if (now[i].Least <= limit && !Test(now[i], limit, now, next, out var apart, out var at)
                    && apart is { } near && near.Apart.Signed < least)
                {
                    least = near.Apart.Signed;
                    found = new(at, near);
                }
            }
        }

        return found;
    }

    /// <summary>The first moment at which the parts are <paramref name="limit"/> mm apart or less; null when there is none.</summary>
    public double? First(in Mover first, in Mover second, double limit)
    {
        Begin(first, second);
        for (var k = 0; k << BodyPath.TopLevel < steps; k++)
        {
            double? found = null;
            waiting.Push(Start(k));
            while (waiting.TryPop(out var entry))
            {
                if (entry.Over.From >= found)
                {
                    continue;
                }

                next.Clear();
                now.Clear();
                if (Test(entry, limit, now, next, out var apart, out var at))
                {
                    continue;
                }

                if (apart is { } near && near.Apart.Signed <= limit)
                {
                    found = Math.Min(found ?? at, at);
                }
                else if (next.Count == 0 && now.Count == 0)
                {
                    found = Math.Min(found ?? entry.Over.To, entry.Over.To);
                }

                now.ForEach(waiting.Push);
                for (var i = next.Count - 1; i >= 0; i--)
                {
                    waiting.Push(next[i]);
                }
            }

            if (found is not null)
            {
                return found;
            }
        }

        return null;
    }

    private static double Slack(double least) => least > 0 ? Tolerance : Math.Max(Tolerance, -DepthShare * least);

    private void Begin(in Mover first, in Mover second) => (a, b, tests, held) = (first, second, 0, default);

    // One of the longest stretches, with all of both parts. A part of one piece needs no box round it.
    private Entry Start(int k)
    {
        var node = a.Set[0].IsLeaf && b.Set[0].IsLeaf ? 0 : Whole;
        return new(node, node, Stretch.At(BodyPath.TopLevel, k, steps), default, double.PositiveInfinity, double.NegativeInfinity);
    }

    private void Turn()
    {
        now.Clear();
        now.AddRange(next);
        next.Clear();
    }

    // True when the stretch is proved clear of the limit. Else what is to be tried instead goes to same (smaller nodes) or
    // shorter (halves, the earlier first), and the distance at the middle is told where it was worked out and isn't proved above the limit.
    private bool Test(in Entry e, double limit, List<Entry> same, List<Entry> shorter, out PartSeparation? apart, out double at)
    {
        apart = null;
        var over = e.Over;
        at = over.Middle(steps);
        if (over != held.Over)
        {
            held = (over, a.Bow(over) + b.Bow(over), a.At(over.From), b.At(over.From), a.At(over.To), b.At(over.To));
        }

        var bow = held.Bow;
        ref readonly var a0 = ref held.A0;
        ref readonly var b0 = ref held.B0;
        ref readonly var a1 = ref held.A1;
        ref readonly var b1 = ref held.B1;
        var whole = e.A == Whole;
        if (!whole && !(a.Set[e.A].IsLeaf && b.Set[e.B].IsLeaf))
        {
            ref readonly var na = ref a.Set[e.A];
            ref readonly var nb = ref b.Set[e.B];
            var from = b0.Apply(nb.Ball.Centre) - a0.Apply(na.Ball.Centre);
            var to = b1.Apply(nb.Ball.Centre) - a1.Apply(na.Ball.Centre);
            if (Nearest(from, to) - na.Ball.Radius - nb.Ball.Radius - bow > limit)
            {
                return true;
            }

            if (bow + (to - from).Length > na.Ball.Radius + nb.Ball.Radius)
            {
                Halve(e, e.Normal, e.Nearby, double.NegativeInfinity, shorter);
            }
            else
            {
                Descend(e, same);
            }

            return false;
        }

        var (p, q) = whole ? (a.Shell, b.Shell) : (a.Set.Pieces[a.Set[e.A].Piece], b.Set.Pieces[b.Set[e.B].Piece]);
        if (e.Normal != default && Across(e.Normal, p, a0, q, b0) - bow > limit && Across(e.Normal, p, a1, q, b1) - bow > limit)
        {
            return true;
        }

        if (bow > e.Nearby - limit && over.Length > Shortest)
        {
            // What was near a moment away can't be cleared of this bow.
            Halve(e, e.Normal, e.Nearby, e.Least, shorter);
            return false;
        }

        tests++;
        var (am, bm) = (a.At(at), b.At(at));
        var seen = am.See(bm);
        var s = ConvexDistance.Search(p, q, seen, am.Undo(e.Normal), limit, out var farther);
        var normal = am.Apply(s.Normal);
        var least = Math.Min(Across(normal, p, a0, q, b0), Across(normal, p, a1, q, b1)) - bow;
        if (least > limit)
        {
            return true;
        }

        if (whole && !farther)
        {
            // The boxes are near: the parts themselves are measured once, so that the least distance is known early.
            apart = PartDistance.Between(a.Set, b.Set, seen, limit);
            same.Add(new(0, 0, over, default, double.PositiveInfinity, double.NegativeInfinity));
            return false;
        }

        if (!whole && !farther)
        {
            apart = new PartSeparation(s, a.Set[e.A].Piece, b.Set[e.B].Piece);
        }

        if (over.Length > Shortest && tests < MostTests)
        {
            Halve(e, normal, s.Signed, least, shorter);
        }

        return false;
    }

    private void Halve(in Entry e, in Vec3 normal, double nearby, double least, List<Entry> to)
    {
        var (earlier, later) = e.Over.Halves(steps);
        to.Add(e with { Over = earlier, Normal = normal, Nearby = nearby, Least = least });
        if (later.Length > 0)
        {
            to.Add(e with { Over = later, Normal = normal, Nearby = nearby, Least = least });
        }
    }

    private void Descend(in Entry e, List<Entry> to)
    {
        ref readonly var na = ref a.Set[e.A];
        ref readonly var nb = ref b.Set[e.B];
        if (nb.IsLeaf || (!na.IsLeaf && na.Ball.Radius >= nb.Ball.Radius))
        {
            to.Add(e with { A = na.Left });
            to.Add(e with { A = na.Left + 1 });
        }
        else
        {
            to.Add(e with { B = nb.Left });
            to.Add(e with { B = nb.Left + 1 });
        }
    }

    // Least length of the vectors from one to the other along the straight line between them, mm.
    private static double Nearest(in Vec3 from, in Vec3 to)
    {
        var along = to - from;
        var square = along.Dot(along);
        var u = square > 0 ? Math.Clamp(-from.Dot(along) / square, 0, 1) : 0;
        return (from + u * along).Length;
    }

    // The gap of two pieces across a unit vector.
    private static double Across(in Vec3 normal, ConvexPiece p, in Frame fp, ConvexPiece q, in Frame fq)
    {
        var (u, v) = (fp.Undo(normal), fq.Undo(-normal));
        return (fq.Origin - fp.Origin).Dot(normal) - q.CoreSupport(v).Dot(v) - p.CoreSupport(u).Dot(u) - p.Margin - q.Margin;
    }
}
