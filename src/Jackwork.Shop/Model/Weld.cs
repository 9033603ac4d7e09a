using Jackwork.Geometry;

namespace Jackwork.Shop.Model;

/// <summary>Makes points that lie together one.</summary>
internal sealed class Weld
{
    /// <summary>Points within this distance, mm, are one: ten times what single precision tells apart 100 mm from the origin.</summary>
    private const double Together = 1e-4;

    private readonly Dictionary<(long X, long Y, long Z), int> cells = [];

    /// <summary>The points that were kept.</summary>
    public List<Point3> Places { get; } = [];

    /// <summary>Index of a point, or of an earlier one that it lies with.</summary>
    public int IndexOf(Point3 p)
    {
        // Cells as wide as the distance: what lies with p lies in one of the 27 round it.
        var (x, y, z) = ((long)Math.Floor(p.X / Together), (long)Math.Floor(p.Y / Together), (long)Math.Floor(p.Z / Together));
        for (var i = -1; i <= 1; i++)
        {
            for (var j = -1; j <= 1; j++)
            {
                for (var k = -1; k <= 1; k++)
                {
                    if (cells.TryGetValue((x + i, y + j, z + k), out var at) && Places[at].DistanceTo(p) <= Together)
                    {
                        return at;
                    }
                }
            }
        }

        cells.TryAdd((x, y, z), Places.Count);
        Places.Add(p);
        return Places.Count - 1;
    }
}
