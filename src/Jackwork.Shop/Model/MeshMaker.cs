using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Meshes;

namespace Jackwork.Shop.Model;

/// <summary>Makes one mesh of the flat faces of a part's convex pieces.</summary>
/// <remarks>
/// Where two pieces share a whole face, it stands there twice, once each way round, and both go: what is left is the outside of the
/// part. Every edge is still run as often one way as the other, so the surface stays closed. A corner's normal is the sum of the
/// normals of its face and of those faces at the same place that turn from it by no more than <see cref="Crease"/>, each weighted by its
/// angle there (G. Thuermer, C. Wuethrich, Computing vertex normals from polygonal facets, 1998, from memory).
/// </remarks>
internal sealed class MeshMaker
{
    /// <summary>Faces that turn by more than this from one to the next meet in a sharp edge, rad: 40 degrees.</summary>
    public const double Crease = 40 * Math.PI / 180;

    /// <summary>Points within this distance, mm, are one: ten times what single precision tells apart 100 mm from the origin.</summary>
    private const double Together = 1e-4;

    /// <summary>Doubled area below which a face is too narrow to say which way it looks, mm^2.</summary>
    private const double Sliver = 1e-9;

    private readonly Weld weld = new(Together);
    private readonly List<int[]> faces = [];
    private readonly List<Vec3> normals = [];
    private readonly Dictionary<int, List<(int Face, double Angle)>> around = [];

    private MeshMaker(IReadOnlyList<ImmutableArray<Point3>> polygons)
    {
        faces = Outside([.. polygons.Select(Welded).Where(f => f.Length >= 3)]);
        for (var f = 0; f < faces.Count; f++)
        {
            normals.Add(Normal(faces[f]));
            for (var i = 0; i < faces[f].Length; i++)
            {
                if (!around.TryGetValue(faces[f][i], out var list))
                {
                    around.Add(faces[f][i], list = []);
                }

                list.Add((f, AngleAt(faces[f], i)));
            }
        }
    }

    /// <summary>The mesh of convex polygons, corners counter-clockwise seen from outside.</summary>
    public static Mesh Of(IReadOnlyList<ImmutableArray<Point3>> polygons) => new MeshMaker(polygons).Mesh();

    private Mesh Mesh()
    {
        var corners = new Dictionary<(int Place, Vec3 Normal), int>();
        var triangles = ImmutableArray.CreateBuilder<int>();
        for (var f = 0; f < faces.Count; f++)
        {
            var ring = new int[faces[f].Length];
            for (var i = 0; i < ring.Length; i++)
            {
                var key = (faces[f][i], Shade(f, faces[f][i]));
                if (!corners.TryGetValue(key, out ring[i]))
                {
                    corners.Add(key, ring[i] = corners.Count);
                }
            }

            for (var i = 2; i < ring.Length; i++)
            {
                triangles.AddRange(ring[0], ring[i - 1], ring[i]);
            }
        }

        var order = corners.OrderBy(c => c.Value).Select(c => c.Key).ToList();
        return new([.. order.Select(c => weld.Places[c.Place])], [.. order.Select(c => c.Normal)], triangles.ToImmutable());
    }

    private int[] Welded(ImmutableArray<Point3> polygon)
    {
        var ring = polygon.Select(weld.IndexOf).ToArray();
        return [.. ring.Where((p, i) => p != ring[(i + 1) % ring.Length])];
    }

    // Leaves out the pairs of faces that run through the same corners opposite ways.
    private static List<int[]> Outside(List<int[]> all)
    {
        var open = new Dictionary<string, Stack<int>>();
        var gone = new HashSet<int>();
        for (var f = 0; f < all.Count; f++)
        {
            if (open.TryGetValue(Key([.. all[f].Reverse()]), out var partners) && partners.TryPop(out var partner))
            {
                gone.Add(f);
                gone.Add(partner);
                continue;
            }

            var key = Key(all[f]);
            if (!open.TryGetValue(key, out var same))
            {
                open.Add(key, same = []);
            }

            same.Push(f);
        }

        return [.. all.Where((_, f) => !gone.Contains(f))];
    }

    // The corners in order from the smallest index on.
    private static string Key(int[] ring)
    {
        var first = Array.IndexOf(ring, ring.Min());
        return string.Join(',', ring[first..].Concat(ring[..first]));
    }

    // By the corners' cross products (M. E. Newell's method), from the first corner so that small faces far out keep their digits.
    private Vec3 Normal(int[] face)
    {
        var sum = default(Vec3);
        for (var i = 2; i < face.Length; i++)
        {
            sum += (At(face[i - 1]) - At(face[0])).Cross(At(face[i]) - At(face[0]));
        }

        return sum.Length > Sliver ? sum.Unit() : default;
    }

    private double AngleAt(int[] face, int i)
    {
        var (a, b) = (At(face[(i + face.Length - 1) % face.Length]) - At(face[i]), At(face[(i + 1) % face.Length]) - At(face[i]));
        return Math.Atan2(a.Cross(b).Length, a.Dot(b));
    }

    // A sliver takes the normal of all faces round the place.
    private Vec3 Shade(int face, int place)
    {
        var own = normals[face];
        var sum = default(Vec3);
        foreach (var (f, angle) in around[place])
        {
            if (own == default || own.Dot(normals[f]) >= Math.Cos(Crease))
            {
                sum += angle * normals[f];
            }
        }

        return sum.Length > Sliver ? sum.Unit() : new(0, 1, 0);
    }

    private Point3 At(int place) => weld.Places[place];
}
