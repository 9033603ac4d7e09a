using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Shop.Model;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>A closed mesh in a view: creases where its faces turn sharply, and its silhouette.</summary>
/// <remarks>A grid over the view leaves few triangles to ask for each line of sight; the top is always on one that looks to the viewer.</remarks>
internal sealed class MeshSolid : ViewSolid
{
    /// <summary>A point this far outside a triangle, as a share of it, still counts as on it, so that no line of sight slips between two.</summary>
    private const double Rim = 1e-9;

    private readonly TriangleMesh mesh;
    private readonly List<int>?[] cells;
    private readonly int side;

    /// <summary>Takes a mesh in view coordinates that bounds a solid.</summary>
    public MeshSolid(TriangleMesh mesh)
    {
        this.mesh = mesh;
        Bounds = mesh.Bounds;

        // About one triangle a cell.
        side = (int)Math.Ceiling(Math.Sqrt(mesh.Triangles.Length));
        cells = new List<int>?[side * side];
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            if (IsFront(mesh.Triangles[i]))
            {
                Place(i);
            }
        }
    }

    /// <inheritdoc/>
    public override Bounds Bounds { get; }

    /// <inheritdoc/>
    public override IEnumerable<ViewEdge> Edges
    {
        get
        {
            // As in a solid of flat faces, one seen edge on counts as turned away.
            var first = new Dictionary<(int, int), Triangle>();
            foreach (var t in mesh.Triangles)
            {
                foreach (var (a, b) in ((int, int)[])[(t.A, t.B), (t.B, t.C), (t.C, t.A)])
                {
                    if (!first.Remove((b, a), out var other))
                    {
                        first[(a, b)] = t;
                    }
                    else if (IsSeen(t, other))
                    {
                        yield return new(mesh.Points[a], mesh.Points[b]);
                    }
                }
            }
        }
    }

    /// <inheritdoc/>
    public override double Top(double x, double y)
    {
        var top = double.NegativeInfinity;
        foreach (var i in cells[Column(x) * side + Row(y)] ?? [])
        {
            var (a, b, c) = mesh.Corners(mesh.Triangles[i]);
            var whole = (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
            var v = ((x - a.X) * (c.Y - a.Y) - (y - a.Y) * (c.X - a.X)) / whole;
            var w = ((b.X - a.X) * (y - a.Y) - (b.Y - a.Y) * (x - a.X)) / whole;
            if (v >= -Rim && w >= -Rim && v + w <= 1 + Rim)
            {
                var z = a.Z + v * (b.Z - a.Z) + w * (c.Z - a.Z);
                top = Math.Max(top, Math.Clamp(z, Math.Min(a.Z, Math.Min(b.Z, c.Z)), Math.Max(a.Z, Math.Max(b.Z, c.Z))));
            }
        }

        return top;
    }

    // A silhouette, or a crease of which the viewer sees a side.
    private bool IsSeen(Triangle t, Triangle other)
    {
        var (front, back) = (IsFront(t), IsFront(other));
        return front != back || (front && mesh.DoubleArea(t).Unit().Dot(mesh.DoubleArea(other).Unit()) < Math.Cos(MeshMaker.Crease));
    }

    private bool IsFront(Triangle t) => mesh.DoubleArea(t) is var n && n.Z > Square * n.Length;

    private void Place(int triangle)
    {
        var (a, b, c) = mesh.Corners(mesh.Triangles[triangle]);
        var (left, right) = (Column(Math.Min(a.X, Math.Min(b.X, c.X))), Column(Math.Max(a.X, Math.Max(b.X, c.X))));
        var (low, high) = (Row(Math.Min(a.Y, Math.Min(b.Y, c.Y))), Row(Math.Max(a.Y, Math.Max(b.Y, c.Y))));
        for (var i = left; i <= right; i++)
        {
            for (var j = low; j <= high; j++)
            {
                (cells[i * side + j] ??= []).Add(triangle);
            }
        }
    }

    private int Column(double x) => Index(x, Bounds.Least.X, Bounds.Most.X, side);

    private int Row(double y) => Index(y, Bounds.Least.Y, Bounds.Most.Y, side);

    // Beyond the bounds the outermost cell, whose triangles are then missed.
    private static int Index(double at, double least, double most, int cells) => Math.Clamp((int)((at - least) / (most - least) * cells), 0, cells - 1);
}
