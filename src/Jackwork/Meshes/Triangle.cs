namespace Jackwork.Meshes;

/// <summary>A triangle of a mesh: indices of three points, counter-clockwise seen from outside. <c>default</c> is no triangle.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
public readonly record struct Triangle(int A, int B, int C);
