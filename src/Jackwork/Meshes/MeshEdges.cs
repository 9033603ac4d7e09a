namespace Jackwork.Meshes;

/// <summary>The edges of a mesh and the triangles that run along them.</summary>
internal sealed class MeshEdges
{
    private readonly Dictionary<(int Low, int High), Use> all = [];

    /// <summary>Looks at all triangles; sides from a point to itself, as of triangles without area, are passed over.</summary>
    public MeshEdges(TriangleMesh mesh)
    {
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            var t = mesh.Triangles[i];
            if (t.A != t.B && t.B != t.C && t.C != t.A)
            {
                Add(t.A, t.B, i);
                Add(t.B, t.C, i);
                Add(t.C, t.A, i);
            }
        }
    }

    /// <summary>How often an edge is run from its lower to its higher point and back, and the first and last triangle that do so.</summary>
    public readonly record struct Use(int Forth, int Back, int First, int Last);

    /// <summary>The edges by their points, in the order of the triangles.</summary>
    public IReadOnlyDictionary<(int Low, int High), Use> All => all;

    private void Add(int a, int b, int triangle)
    {
        var key = (Math.Min(a, b), Math.Max(a, b));
        var use = all.TryGetValue(key, out var known) ? known with { Last = triangle } : new(0, 0, triangle, triangle);
        all[key] = a < b ? use with { Forth = use.Forth + 1 } : use with { Back = use.Back + 1 };
    }
}
