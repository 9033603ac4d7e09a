using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Shop.Model;

/// <summary>A surface of triangles with a normal at each corner.</summary>
/// <param name="Corners">Where the corners stand, mm, in the coordinates of the part; one place may come several times, once for each normal.</param>
/// <param name="Normals">Unit normals, outwards, one for each corner.</param>
/// <param name="Triangles">Three indices of corners for each triangle, counter-clockwise seen from outside.</param>
public sealed record Mesh(ImmutableArray<Point3> Corners, ImmutableArray<Vec3> Normals, ImmutableArray<int> Triangles);
