using System.Runtime.InteropServices;
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
/// passed over is proved clear. (The bound by chords is ours; for bounds over stretches of time that are halved see S. Redon, Y. J. Kim,
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
    private const double DepthShare = 0.1;

    /// <summary>Length of a stretch, steps, that is not halved any more in search of the deepest moment.</summary>
    private const double ShortestOfDepth = 1;

    /// <summary>Length of a stretch, steps, that is not halved any more: 1e-6 of a degree of the crank, or less.</summary>
    private const double Shortest = 1e-6;

    /// <summary>Tests of one pair after which a search ends with what it has: parts that stay within the tolerance of a limit for whole turns.</summary>
    private const int MostTests = 40_000;

    /// <summary>Most pairs of pieces whose normals are kept.</summary>
    private const int MostNormals = 8192;

    /// <summary>The node that stands for the box round a whole part.</summary>
    private const int Whole = -1;

    // For every pair of pieces the normal that was found last, from the first part's pieces by the second's; only where these are few.
    private readonly List<Vec3> normals = [];
    private readonly List<Entry> group = [];
    private readonly List<Entry> survivors = [];
    private (List<Entry> Entries, List<(Stretch Over, int Count)> Runs) now = ([], []);
    private (List<Entry> Entries, List<(Stretch Over, int Count)> Runs) next = ([], []);
    private readonly Stack<(Stretch Over, Entry[] Entries)> waiting = new();
    private Mover a;
    private Mover b;
    private Frame a0;
    private Frame b0;
    private Frame a1;
    private Frame b1;
    private Frame am;
    private Frame bm;
    private double bow;
    private int tests;

    // A pair of nodes, with the normal that was found nearby, the distance there, and a proved lower bound of the distance.
    private readonly record struct Entry(int A, int B, Vec3 Normal, double Nearby, double Least);

    /// <summary>What was found: a place in steps, and the separation there, seen from the first part.</summary>
    internal readonly record struct Found(double Place, PartSeparation Parts);

    /// <summary>Halvings of the golden section that closes in the nearest moment: to a ten-thousandth of its stretch.</summary>
    private const int Sections = 20;

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

        Found? found = null;
        var about = 0.0;
        double Limit() => found is { } f ? f.Parts.Apart.Signed - Slack(f.Parts.Apart.Signed) : bound - Margin;
        Clear(now);
        for (var k = 0; k << BodyPath.TopLevel < steps; k++)
        {
            now.Entries.Add(Start());
            now.Runs.Add((Stretch.At(BodyPath.TopLevel, k, steps), 1));
        }

        // All stretches of one length before any shorter one, so that a good least distance is known early.
        for (; now.Runs.Count > 0; (now, next) = (next, now))
        {
            Clear(next);
            var from = 0;
            foreach (var (over, count) in now.Runs)
            {
                group.Clear();
                for (var i = from; i < from + count; i++)
                {
                    if (now.Entries[i].Least <= Limit())
                    {
                        group.Add(now.Entries[i]);
                    }
                }

                from += count;
                if (group.Count == 0 || (found?.Parts.Apart.Signed ?? bound) <= floor + Tolerance)
                {
                    continue;
                }

                var middle = over.Middle(steps);
                survivors.Clear();
                Hold(over, middle);
                for (var i = 0; i < group.Count; i++)
                {
                    if (Test(group[i], over, Limit()) is { } near && near.Apart.Signed < (found?.Parts.Apart.Signed ?? bound))
                    {
                        (found, about) = (new(middle, near), 0.5 * over.Length);
                    }
                }

                if (survivors.Count > 0 && (found is not { Parts.Apart.Signed: < 0 } || over.Length > ShortestOfDepth))
                {
                    var (earlier, later) = over.Halves(steps);
                    Pass(earlier);
                    Pass(later);
                }
            }
        }

        return found is { } f ? Closest(f, about) : null;
    }

    /// <summary>The first moment at which the parts are <paramref name="limit"/> mm apart or less; null when there is none.</summary>
    public double? First(in Mover first, in Mover second, double limit)
    {
        Begin(first, second);
        if (PartDistance.Between(a.Set, a.At(0), b.Set, b.At(0), limit) is not null)
        {
            return 0;
        }

        double? found = null;
        for (var k = 0; k << BodyPath.TopLevel < steps && found is null; k++)
        {
            waiting.Push((Stretch.At(BodyPath.TopLevel, k, steps), [Start()]));
            while (waiting.TryPop(out var work))
            {
                if (work.Over.From >= found)
                {
                    continue;
                }

                var middle = work.Over.Middle(steps);
                group.Clear();
                group.AddRange(work.Entries);
                survivors.Clear();
                Hold(work.Over, middle);
                for (var i = 0; i < group.Count; i++)
                {
                    if (Test(group[i], work.Over, limit) is { } near && near.Apart.Signed <= limit)
                    {
                        found = Math.Min(found ?? middle, middle);
                    }
                }

                if (survivors.Count > 0 && !IsLast(work.Over))
                {
                    var (earlier, later) = work.Over.Halves(steps);
                    Entry[] left = [.. survivors];
                    if (later.Length > 0)
                    {
                        waiting.Push((later, left));
                    }

                    waiting.Push((earlier, left));
                }
                else if (survivors.Count > 0)
                {
                    found = Math.Min(found ?? work.Over.To, work.Over.To);
                }
            }
        }

        return found;
    }

    // Golden section between the neighbours of the nearest moment tried, with the two pieces that are nearest there.
    private Found Closest(in Found found, double about)
    {
        var (p, q) = (a.Set.Pieces[found.Parts.FirstPiece], b.Set.Pieces[found.Parts.SecondPiece]);
        Separation At(double place) => ConvexDistance.Between(p, q, a.At(place).See(b.At(place)));
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (low, high) = (Math.Max(0, found.Place - about), Math.Min(steps, found.Place + about));
        var (x, y) = (high - golden * (high - low), low + golden * (high - low));
        var (fx, fy) = (At(x), At(y));
        for (var i = 0; i < Sections; i++)
        {
            if (fx.Signed < fy.Signed)
            {
                (high, y, fy) = (y, x, fx);
                x = high - golden * (high - low);
                fx = At(x);
            }
            else
            {
                (low, x, fx) = (x, y, fy);
                y = low + golden * (high - low);
                fy = At(y);
            }
        }

        var (place, best) = fx.Signed < fy.Signed ? (x, fx) : (y, fy);
        return best.Signed < found.Parts.Apart.Signed ? new(place, found.Parts with { Apart = best }) : found;
    }

    private void Begin(in Mover first, in Mover second)
    {
        (a, b, tests) = (first, second, 0);
        normals.Clear();
        var pairs = (long)a.Set.Pieces.Length * b.Set.Pieces.Length;
        CollectionsMarshal.SetCount(normals, pairs <= MostNormals ? (int)pairs : 0);
        CollectionsMarshal.AsSpan(normals).Clear();
    }

    private static double Slack(double least) => least > 0 ? Tolerance : Math.Max(Tolerance, -DepthShare * least);

    private static void Clear((List<Entry> Entries, List<(Stretch Over, int Count)> Runs) level)
    {
        level.Entries.Clear();
        level.Runs.Clear();
    }

    private bool IsLast(in Stretch over) => over.Length <= Shortest || tests >= MostTests;

    // All of both parts. A part of one piece needs no box round it.
    private Entry Start()
    {
        var node = a.Set[0].IsLeaf && b.Set[0].IsLeaf ? 0 : Whole;
        return new(node, node, default, double.PositiveInfinity, double.NegativeInfinity);
    }

    private void Pass(in Stretch half)
    {
        if (half.Length > 0)
        {
            next.Entries.AddRange(survivors);
            next.Runs.Add((half, survivors.Count));
        }
    }

    private void Hold(in Stretch over, double middle)
    {
        (a0, a1, am) = (a.At(over.From), a.At(over.To), a.At(middle));
        (b0, b1, bm) = (b.At(over.From), b.At(over.To), b.At(middle));
        bow = a.Bow(over) + b.Bow(over);
    }

    // What isn't proved clear of the limit goes to the group again as smaller nodes, or to the survivors, to be tried over half
    // the time. The distance at the middle is told where it was worked out and isn't proved above the limit.
    private PartSeparation? Test(in Entry e, in Stretch over, double limit)
    {
        var whole = e.A == Whole;
        if (!whole && !(a.Set[e.A].IsLeaf && b.Set[e.B].IsLeaf))
        {
            Balls(e, limit);
            return null;
        }

        var (p, q) = whole ? (a.Shell, b.Shell) : (a.Set.Pieces[a.Set[e.A].Piece], b.Set.Pieces[b.Set[e.B].Piece]);
        var pair = whole || normals.Count == 0 ? -1 : a.Set[e.A].Piece * b.Set.Pieces.Length + b.Set[e.B].Piece;
        var guess = e.Normal == default && pair >= 0 ? normals[pair] : e.Normal;
        if (guess != default && Across(guess, p, a0, q, b0) - bow > limit && Across(guess, p, a1, q, b1) - bow > limit)
        {
            return null;
        }

        if (e.Nearby > limit && bow > e.Nearby - limit && !IsLast(over))
        {
            // What was near a moment away can't be cleared of this bow.
            survivors.Add(e);
            return null;
        }

        tests++;
        var seen = am.See(bm);
        var s = ConvexDistance.Search(p, q, seen, am.Undo(guess), limit, out var farther);
        var normal = am.Apply(s.Normal);
        if (pair >= 0)
        {
            normals[pair] = normal;
        }

        var least = Math.Min(Across(normal, p, a0, q, b0), Across(normal, p, a1, q, b1)) - bow;
        if (least > limit)
        {
            return null;
        }

        if (whole && !farther)
        {
            // The boxes are near: the parts themselves are measured once, so that the least distance is known early.
            group.Add(e with { A = 0, B = 0 });
            return PartDistance.Between(a.Set, b.Set, seen, limit);
        }

        if (!IsLast(over))
        {
            survivors.Add(e with { Normal = normal, Nearby = farther ? double.PositiveInfinity : s.Signed, Least = least });
        }

        return whole || farther ? null : new(s, a.Set[e.A].Piece, b.Set[e.B].Piece);
    }

    private void Balls(in Entry e, double limit)
    {
        ref readonly var na = ref a.Set[e.A];
        ref readonly var nb = ref b.Set[e.B];
        var from = b0.Apply(nb.Ball.Centre) - a0.Apply(na.Ball.Centre);
        var to = b1.Apply(nb.Ball.Centre) - a1.Apply(na.Ball.Centre);
        var radii = na.Ball.Radius + nb.Ball.Radius;
        if (Nearest(from, to) - radii - bow > limit)
        {
            return;
        }

        if (bow + (to - from).Length > radii)
        {
            survivors.Add(e);
        }
        else if (nb.IsLeaf || (!na.IsLeaf && na.Ball.Radius >= nb.Ball.Radius))
        {
            group.Add(e with { A = na.Left });
            group.Add(e with { A = na.Left + 1 });
        }
        else
        {
            group.Add(e with { B = nb.Left });
            group.Add(e with { B = nb.Left + 1 });
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
