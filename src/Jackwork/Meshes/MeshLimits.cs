namespace Jackwork.Meshes;

/// <summary>What is taken of a mesh.</summary>
public static class MeshLimits
{
    /// <summary>Most triangles of one mesh: what a carving needs at half a millimetre a triangle, and what every check still gets through.</summary>
    public const int MostTriangles = 50_000;

    /// <summary>Largest file taken, bytes: the most triangles as text, with names and normals to spare.</summary>
    public const int MostBytes = 32_000_000;

    /// <summary>Greatest length, width or height of a mesh, mm, as for a box.</summary>
    public const double LargestMm = 5000;

    /// <summary>Least of the greatest of length, width and height, mm: less is no part but a file in another unit.</summary>
    public const double SmallestMm = 0.5;

    /// <summary>Farthest coordinate, mm: the largest number that a design may hold.</summary>
    public const double FarthestMm = Design.Binder.LargestNumber;

    /// <summary>Points within this distance, mm, are welded into one: a hundredth of what a router holds, and more than single precision loses at 5 m.</summary>
    public const double TogetherMm = 0.001;

    /// <summary>A triangle lower than this over its longest side, mm, has no area: its normal would be rounding.</summary>
    public const double ThinnestMm = 1e-6;
}
