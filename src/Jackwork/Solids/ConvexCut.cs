using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Temporary.</summary>
public static class ConvexCut
{
    /// <summary>Temporary.</summary>
    public static IEnumerable<Point2[]> Plate(Outline rim, IReadOnlyList<Outline> holes, double sagitta)
    {
        _ = holes;
        var pts = rim.Flatten(sagitta).ToArray();
        if (pts.Length == 4)
        {
            return [pts];
        }

        return Enumerable.Range(0, pts.Length).Select(i => new[] { Point2.Origin, pts[i], pts[(i + 1) % pts.Length] });
    }
}
