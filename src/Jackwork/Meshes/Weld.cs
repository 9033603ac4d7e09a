using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>Makes points that lie together one.</summary>
/// <param name="together">Points within this distance, mm, are one; above 0.</param>
public sealed class Weld(double together)
{
    // The points of each cell as a chain: the newest, and for each point the one before it.
    private readonly Dictionary<(long X, long Y, long Z), int> newest = [];
    private readonly List<int> before = [];
    private readonly List<Point3> places = [];

    /// <summary>The points that were kept, each the first of those that lie with it.</summary>
    public IReadOnlyList<Point3> Places => places;

    /// <summary>Index of a point, or of an earlier one that it lies with.</summary>
    public int IndexOf(Point3 p)
    {
        // Cells as wide as the distance: what lies with p lies in one of the 27 round it.
        var (x, y, z) = ((long)Math.Floor(p.X / together), (long)Math.Floor(p.Y / together), (long)Math.Floor(p.Z / together));
        for (var k = 0; k < 27; k++)
        {
            if (newest.TryGetValue((x + k % 3 - 1, y + k / 3 % 3 - 1, z + k / 9 - 1), out var at))
            {
                for (; at >= 0; at = before[at])
                {
                    if (places[at].DistanceTo(p) <= together)
                    {
                        return at;
                    }
                }
            }
        }

        before.Add(newest.TryGetValue((x, y, z), out var last) ? last : -1);
        newest[(x, y, z)] = places.Count;
        places.Add(p);
        return places.Count - 1;
    }
}
