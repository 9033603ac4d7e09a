using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>One to four points of a Minkowski difference, and the point of their hull nearest the origin.</summary>
/// <remarks>
/// For an edge a, b: t = -a . ab / ab^2, clamped to [0, 1].
/// For a triangle a, b, c with n = ab x ac: lb = n . (ap x ac) / n^2, lc = n . (ab x ap) / n^2, la = 1 - lb - lc, where ap = -a.
/// All positive: the nearest point is (n . a / n^2) n. Else it lies on an edge opposite a corner with a share below 0.
/// For a tetrahedron the nearest point lies on a face that has the origin on its outer side; no such face: it holds the origin.
/// This goes by signed areas and volumes as in M. Montanari, N. Petrinic, E. Barbieri, Improving the GJK algorithm for faster
/// and more reliable distance queries between convex objects, ACM Transactions on Graphics 36 (2017), with two changes: all
/// products are taken of differences, and wherever a sign cannot be trusted every lower feature is tried and the nearest kept, so
/// that the result is always a point of the hull.
/// </remarks>
internal struct Simplex
{
    /// <summary>A triangle whose n^2 is below this share of ab^2 ac^2 counts as a line: its corners are in line to 1e-13 rad.</summary>
    private const double InLine = 1e-26;

    /// <summary>A tetrahedron lower than this share of its size counts as flat, so that rounding cannot enclose the origin.</summary>
    private const double Flat = 1e-13;

    private Corners corners;

    /// <summary>Number of points.</summary>
    public int Count { get; private set; }

    /// <summary>The point of the hull nearest the origin.</summary>
    public Vec3 Nearest { get; private set; }

    /// <summary>The corner <paramref name="i"/> of the difference.</summary>
    [UnscopedRef]
    public readonly ref readonly Corner this[int i] => ref corners[i];

    /// <summary>Adds a point; the caller then reduces.</summary>
    public void Add(in Vec3 w, in Vec3 onA)
    {
        corners[Count++] = new() { W = w, OnA = onA };
    }

    /// <summary>Whether <paramref name="w"/> is a corner already, bit for bit.</summary>
    public readonly bool Holds(in Vec3 w)
    {
        for (var i = 0; i < Count; i++)
        {
            if (corners[i].W == w)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Finds the nearest point and drops the corners it does not need; true when the origin is enclosed.</summary>
    public bool Reduce()
    {
        Candidate best;
        switch (Count)
        {
            case 1: best = Point(0); break;
            case 2: best = Edge(0, 1); break;
            case 3: best = Triangle(0, 1, 2); break;
            default:
                best = new() { Square = double.PositiveInfinity };
                Face(3, 0, 1, 2, ref best);
                Face(3, 1, 2, 0, ref best);
                Face(3, 2, 0, 1, ref best);
                Face(0, 1, 2, 3, ref best);
                if (double.IsPositiveInfinity(best.Square))
                {
                    Nearest = default;
                    return true;
                }

                break;
        }

        var old = corners;
        Count = 0;
        Keep(old, best.I, best.Li);
        Keep(old, best.J, best.Lj);
        Keep(old, best.K, best.Lk);
        Nearest = best.V;
        return false;
    }

    /// <summary>The point of A that goes with the nearest point.</summary>
    public readonly Vec3 NearestOnA()
    {
        Vec3 p = default;
        for (var i = 0; i < Count; i++)
        {
            p += corners[i].Share * corners[i].OnA;
        }

        return p;
    }

    private void Keep(in Corners old, int i, double share)
    {
        if (share > 0)
        {
            corners[Count] = old[i];
            corners[Count++].Share = share;
        }
    }

    private readonly Candidate Point(int i)
    {
        var v = corners[i].W;
        return new() { V = v, Square = v.Dot(v), I = i, Li = 1 };
    }

    private readonly Candidate Edge(int i, int j)
    {
        var a = corners[i].W;
        var ab = corners[j].W - a;
        var square = ab.Dot(ab);
        var t = -a.Dot(ab);
        if (t <= 0 || square == 0)
        {
            return Point(i);
        }

        if (t >= square)
        {
            return Point(j);
        }

        t /= square;
        var v = a + t * ab;
        v -= (v.Dot(ab) / square) * ab;
        return new() { V = v, Square = v.Dot(v), I = i, J = j, Li = 1 - t, Lj = t };
    }

    private readonly Candidate Triangle(int i, int j, int k)
    {
        var a = corners[i].W;
        var ab = corners[j].W - a;
        var ac = corners[k].W - a;
        var n = ab.Cross(ac);
        var square = n.Dot(n);
        if (square <= InLine * ab.Dot(ab) * ac.Dot(ac))
        {
            return Nearer(Edge(i, j), Nearer(Edge(i, k), Edge(j, k)));
        }

        var lj = n.Dot(ac.Cross(a)) / square;
        var lk = n.Dot(a.Cross(ab)) / square;
        var li = 1 - lj - lk;
        if (li > 0 && lj > 0 && lk > 0)
        {
            var v = (n.Dot(a) / square) * n;
            return new() { V = v, Square = v.Dot(v), I = i, J = j, K = k, Li = li, Lj = lj, Lk = lk };
        }

        var best = new Candidate { Square = double.PositiveInfinity };
        if (li <= 0)
        {
            best = Edge(j, k);
        }

        if (lj <= 0)
        {
            best = Nearer(best, Edge(i, k));
        }

        return lk <= 0 ? Nearer(best, Edge(i, j)) : best;
    }

    private readonly void Face(int i, int j, int k, int opposite, ref Candidate best)
    {
        var a = corners[i].W;
        var ab = corners[j].W - a;
        var ac = corners[k].W - a;
        var n = ab.Cross(ac);
        var height = n.Dot(corners[opposite].W - a);
        var origin = -n.Dot(a);
        var flat = Flat * Flat * n.Dot(n) * Math.Max(a.Dot(a), Math.Max(ab.Dot(ab), ac.Dot(ac)));
        if (height * height <= flat || (height > 0 ? origin < 0 : origin > 0))
        {
            best = Nearer(best, Triangle(i, j, k));
        }
    }

    private static Candidate Nearer(in Candidate a, in Candidate b) => b.Square < a.Square ? b : a;

    /// <summary>A point of the difference, the point of A it comes from, and its share in the nearest point.</summary>
    internal struct Corner
    {
        public Vec3 W;
        public Vec3 OnA;
        public double Share;
    }

    private struct Candidate
    {
        public Vec3 V;
        public double Square;
        public int I;
        public int J;
        public int K;
        public double Li;
        public double Lj;
        public double Lk;
    }

    [InlineArray(4)]
    private struct Corners
    {
        private Corner first;
    }
}
