using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Depth of a Minkowski difference that holds the origin: the least h(n) over all unit vectors n, h(n) = max n . w.</summary>
/// <remarks>
/// A polytope within the difference is grown from a tetrahedron. Its face nearest the origin, at d with normal n, gives
///   d &lt;= depth &lt;= h(n),
/// and the support point along n joins the polytope until both meet (G. van den Bergen, Collision Detection in Interactive 3D
/// Environments, 2003, section 4.3.8, from memory). Faces in one plane with the new point are taken away with those it
/// sees, so that no face of no area arises. A flat difference (bars and balls reduced to their cores) has depth 0 across it.
/// </remarks>
internal ref struct Expansion
{
    /// <summary>The bounds have met between polytopes, mm: rounding at sizes of 1 m.</summary>
    private const double FlatMetMm = 1e-10;

    /// <summary>The bounds have met where a face is curved, mm: a tenth of the error allowed.</summary>
    private const double CurvedMetMm = 1e-7;

    /// <summary>Two heights closer than this share of the difference's size are one plane: a few hundred roundings.</summary>
    private const double PlaneShare = 1e-13;

    /// <summary>Two normals whose product differs from 1 by less belong to one facet: 1e-6 rad.</summary>
    private const double OneFacet = 1e-12;

    /// <summary>Points before the search gives the bounds it has.</summary>
    private const int MostPoints = 200;

    private const int MostFaces = 2 * MostPoints;

    private readonly Difference difference;
    private readonly Span<Simplex.Corner> points;
    private readonly Span<Face> faces;
    private readonly Span<(int From, int To)> edges;
    private int pointCount;
    private int faceCount;
    private double plane;

    private Expansion(
        in Difference difference, Span<Simplex.Corner> points, Span<Face> faces, Span<(int From, int To)> edges)
    {
        this.difference = difference;
        this.points = points;
        this.faces = faces;
        this.edges = edges;
    }

    /// <summary>The depth, with the direction in which the second piece leaves the first.</summary>
    /// <param name="difference">A difference that holds the origin or all but touches it.</param>
    /// <param name="start">Points of it found on the way, not flat.</param>
    public static Depth Of(in Difference difference, in Simplex start)
    {
        var work = new Expansion(
            difference, stackalloc Simplex.Corner[MostPoints], stackalloc Face[MostFaces], stackalloc (int, int)[3 * MostFaces]);
        for (var i = 0; i < start.Count; i++)
        {
            work.points[work.pointCount++] = start[i];
        }

        return work.Solid() is { } across ? new(0, across, start.NearestOnA(), 0) : work.Grow();
    }

    /// <summary>Completes a tetrahedron; a flat difference gives the normal across it instead.</summary>
    private Vec3? Solid()
    {
        Span<Vec3> axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];
        var size = 0.0;
        foreach (var e in axes)
        {
            size = Math.Max(size, Math.Max(difference.Support(e, out _).Length, difference.Support(-e, out _).Length));
        }

        plane = PlaneShare * size;
        if (pointCount == 1 && !Reach(axes, default))
        {
            return new Vec3(0, 1, 0);
        }

        if (pointCount == 2)
        {
            var e = (points[1].W - points[0].W).Unit();
            var u = e.AnyPerpendicular();
            if (!Reach([u, e.Cross(u)], e))
            {
                return u;
            }
        }

        if (pointCount == 3)
        {
            var n = (points[1].W - points[0].W).Cross(points[2].W - points[0].W).Unit();
            if (!Reach([n], n))
            {
                return n;
            }
        }

        return null;
    }

    // Adds the support point, along one of the directions or against it, that stands farthest off what is there: a point, a line
    // along the unit vector, or a plane across it.
    private bool Reach(scoped ReadOnlySpan<Vec3> directions, Vec3 unit)
    {
        var most = plane;
        var from = points[0].W;
        var target = pointCount;
        foreach (var d in directions)
        {
            foreach (var signed in (ReadOnlySpan<Vec3>)[d, -d])
            {
                var w = difference.Support(signed, out var onA);
                var off = target == 3 ? Math.Abs((w - from).Dot(unit)) : (w - from).Across(unit).Length;
                if (off > most)
                {
                    most = off;
                    points[target] = new() { W = w, OnA = onA };
                    pointCount = target + 1;
                }
            }
        }

        return pointCount > target;
    }

    private Depth Grow()
    {
        var inward = (points[1].W - points[0].W).Cross(points[2].W - points[0].W).Dot(points[3].W - points[0].W) > 0;
        var (j, k) = inward ? (2, 1) : (1, 2);
        var whole = AddFace(0, j, k) && AddFace(0, k, 3) && AddFace(k, j, 3) && AddFace(j, 0, 3);
        var best = new Face { Height = double.PositiveInfinity };
        var lower = 0.0;
        var met = difference.IsPolytope ? FlatMetMm : CurvedMetMm;
        while (whole)
        {
            var nearest = Nearest();
            var face = faces[nearest];
            var w = difference.Support(face.Normal, out var onA);
            var height = face.Normal.Dot(w);
            lower = face.Height;
            if (height <= best.Height + plane)
            {
                // Of equal heights the later face is nearer the surface.
                best = face with { Height = height };
            }

            if (best.Height - lower <= met || pointCount == MostPoints)
            {
                break;
            }

            points[pointCount] = new() { W = w, OnA = onA };
            whole = Cover(pointCount++);
        }

        return new(best.Height, best.Normal, Witness(best), Math.Max(0, best.Height - lower));
    }

    private readonly int Nearest()
    {
        var nearest = 0;
        for (var i = 1; i < faceCount; i++)
        {
            if (faces[i].Height < faces[nearest].Height)
            {
                nearest = i;
            }
        }

        return nearest;
    }

    // Takes away the faces that the point sees and joins it to the rim of the opening; false when rounding left no face or a face of no area.
    private bool Cover(int point)
    {
        var w = points[point].W;
        var rim = 0;
        for (var i = faceCount - 1; i >= 0; i--)
        {
            var f = faces[i];
            if (f.Normal.Dot(w) - f.Height > -plane)
            {
                Toggle(f.A, f.B, ref rim);
                Toggle(f.B, f.C, ref rim);
                Toggle(f.C, f.A, ref rim);
                faces[i] = faces[--faceCount];
            }
        }

        for (var i = 0; i < rim; i++)
        {
            if (!AddFace(edges[i].From, edges[i].To, point))
            {
                return false;
            }
        }

        return rim >= 3;
    }

    private readonly void Toggle(int from, int to, ref int rim)
    {
        for (var i = 0; i < rim; i++)
        {
            if (edges[i] == (to, from))
            {
                edges[i] = edges[--rim];
                return;
            }
        }

        edges[rim++] = (from, to);
    }

    private bool AddFace(int a, int b, int c)
    {
        var normal = (points[b].W - points[a].W).Cross(points[c].W - points[a].W);
        var length = normal.Length;
        if (length == 0 || faceCount == MostFaces)
        {
            return false;
        }

        normal = (1 / length) * normal;
        faces[faceCount++] = new() { A = a, B = b, C = c, Normal = normal, Height = normal.Dot(points[a].W) };
        return true;
    }

    // The point of A under the origin's foot. A facet may be split into several faces: the one that holds the foot is wanted.
    private readonly Vec3 Witness(in Face best)
    {
        var (found, share) = (Foot(best, out var least), least);
        foreach (var f in faces[..faceCount])
        {
            if (share < 0 && f.Normal.Dot(best.Normal) >= 1 - OneFacet)
            {
                var other = Foot(f, out least);
                if (least > share)
                {
                    (found, share) = (other, least);
                }
            }
        }

        return found;
    }

    // Shares of the corners at the origin's foot, clamped to the face; least is the smallest before that.
    private readonly Vec3 Foot(in Face f, out double least)
    {
        var a = points[f.A].W;
        var ab = points[f.B].W - a;
        var ac = points[f.C].W - a;
        var n = ab.Cross(ac);
        var square = n.Dot(n);
        var b = n.Dot(ac.Cross(a)) / square;
        var c = n.Dot(a.Cross(ab)) / square;
        least = Math.Min(1 - b - c, Math.Min(b, c));
        var (la, lb, lc) = (Math.Max(0, 1 - b - c), Math.Max(0, b), Math.Max(0, c));
        return (1 / (la + lb + lc)) * (la * points[f.A].OnA + lb * points[f.B].OnA + lc * points[f.C].OnA);
    }

    /// <summary>The outcome: h of the best direction, that direction, the deepest point of A, and how far below the true depth may lie.</summary>
    internal readonly record struct Depth(double Height, Vec3 Normal, Vec3 OnA, double Gap);

    private struct Face
    {
        public int A;
        public int B;
        public int C;
        public Vec3 Normal;
        public double Height;
    }
}
