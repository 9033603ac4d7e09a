using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Meshes;

/// <summary>A surface of triangles. It bounds a solid when <see cref="MeshCheck"/> finds nothing wrong; volume, centre and inside have a meaning only then.</summary>
/// <remarks>
/// Each triangle a, b, c with any fixed point O makes a tetrahedron of the signed volume v = (a - O) . ((b - O) x (c - O))/6, with
/// its centre at O + (a - O + b - O + c - O)/4. By the divergence theorem the solid's
///   volume V = sum v,   centre of mass = (sum v times centre)/V
/// (C. Zhang, T. Chen, Efficient feature extraction for 2D/3D objects in mesh representation, 2001, from memory). Stuff within
/// several shells counts once for each. Seen from a point p, with a, b, c from p, a triangle spans the solid angle
///   tan(W/2) = a . (b x c) / (|a||b||c| + a . b |c| + b . c |a| + c . a |b|)
/// (A. van Oosterom, J. Strackee, The solid angle of a plane triangle, 1983, from memory); the sum over 4 pi is how often the
/// surface winds round p: 1 inside, 0 outside, and nothing in between but for rounding, whatever the triangles' shapes. Immutable.
/// </remarks>
/// <param name="Points">The corners, in whatever unit the mesh is given in; mm once it is part of a piece.</param>
/// <param name="Triangles">The triangles.</param>
public sealed record TriangleMesh(ImmutableArray<Point3> Points, ImmutableArray<Triangle> Triangles)
{
    /// <summary>Volume, mm^3; below zero where the surface is inside out.</summary>
    public double Volume => Triangles.Sum(SixVolumes) / 6;

    /// <summary>Centre of mass of the solid, evenly filled, mm.</summary>
    public Point3 CentreOfMass
    {
        get
        {
            var (sum, six) = (default(Vec3), 0.0);
            foreach (var t in Triangles)
            {
                var v = SixVolumes(t);
                six += v;
                sum += v / 4 * (Points[t.A] - Points[0] + (Points[t.B] - Points[0]) + (Points[t.C] - Points[0]));
            }

            return Points[0] + 1 / six * sum;
        }
    }

    /// <summary>The smallest box along the axes round all points.</summary>
    public Bounds Bounds => Points.Aggregate(new Bounds(Points[0], Points[0]), (box, p) => box.Around(new(p, p)));

    /// <summary>Whether a point lies in the solid; on the surface itself either answer may come.</summary>
    /// <param name="p">The point, in the unit of the mesh.</param>
    public bool Contains(Point3 p) => Winding(p, Triangles.AsSpan()) > 0.5;

    /// <summary>The three corners of a triangle.</summary>
    public (Point3 A, Point3 B, Point3 C) Corners(Triangle t) => (Points[t.A], Points[t.B], Points[t.C]);

    /// <summary>The vector along a triangle's outward normal whose length is twice its area.</summary>
    public Vec3 DoubleArea(Triangle t) => (Points[t.B] - Points[t.A]).Cross(Points[t.C] - Points[t.A]);

    /// <summary>The mesh, each point moved.</summary>
    public TriangleMesh Moved(Func<Point3, Point3> to) => this with { Points = [.. Points.Select(to)] };

    /// <summary>How often some of the triangles wind round a point, as a share of the full solid angle.</summary>
    internal double Winding(Point3 p, ReadOnlySpan<Triangle> triangles)
    {
        var half = 0.0;
        foreach (var t in triangles)
        {
            var (a, b, c) = (Points[t.A] - p, Points[t.B] - p, Points[t.C] - p);
            var (la, lb, lc) = (a.Length, b.Length, c.Length);
            half += Math.Atan2(a.Dot(b.Cross(c)), la * lb * lc + a.Dot(b) * lc + b.Dot(c) * la + c.Dot(a) * lb);
        }

        return half / (2 * Math.PI);
    }

    /// <summary>Six times the signed volume between a triangle and the first point.</summary>
    internal double SixVolumes(Triangle t) => (Points[t.A] - Points[0]).Dot((Points[t.B] - Points[0]).Cross(Points[t.C] - Points[0]));
}
