using System.Runtime.CompilerServices;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>How a file's mesh is asked for.</summary>
/// <param name="Ending">The file's ending, which says how it is read.</param>
/// <param name="Unit">Unit of its numbers.</param>
/// <param name="Scale">How many times larger.</param>
/// <param name="At">Where its origin stands, mm.</param>
/// <param name="Turn">How it is turned about x, y and z, deg.</param>
internal sealed record Placing(string Ending, string Unit, double Scale, Point3? At, (double X, double Y, double Z)? Turn);

/// <summary>
/// Meshes already read and found sound, for as long as the very bytes that they were read from are held by somebody: a piece worked out
/// again and again reads none of them twice. It never changes an answer. The bytes of a file must not be changed by whoever gives them.
/// </summary>
internal static class MeshesRead
{
    /// <summary>Most places that a file's mesh is kept in: more than the parts that are made from one file.</summary>
    private const int MostPlaces = 16;

    private static readonly ConditionalWeakTable<byte[], Dictionary<Placing, TriangleMesh>> Read = [];

    /// <summary>The mesh, if it was read from these bytes before.</summary>
    public static TriangleMesh? Find(byte[] bytes, Placing asked)
    {
        if (!Read.TryGetValue(bytes, out var known))
        {
            return null;
        }

        lock (known)
        {
            return known.GetValueOrDefault(asked);
        }
    }

    /// <summary>Keeps a mesh.</summary>
    public static void Keep(byte[] bytes, Placing asked, TriangleMesh mesh)
    {
        var known = Read.GetOrCreateValue(bytes);
        lock (known)
        {
            // A mesh that is dragged about leaves its earlier places behind.
            if (known.Count >= MostPlaces)
            {
                known.Clear();
            }

            known[asked] = mesh;
        }
    }
}
