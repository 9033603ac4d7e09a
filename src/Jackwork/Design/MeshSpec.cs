using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A carved or modelled shape, kept as a mesh in a file of its own.</summary>
[Section("mesh", "A shape modelled elsewhere: a closed surface of triangles in a file in the design's folder, as STL (`.stl`), Wavefront OBJ (`.obj`) or glTF 2.0 (`.glb`, `.gltf`). It is scaled, then turned about the origin of its file, then that origin is set to `at`. The surface must be closed and look outwards everywhere; a mesh that does not is refused, with how many edges or triangles are wrong and where one of them is. At most 50,000 triangles are taken; some thousands are plenty.", """
    parts:
      head-carving: {on: head, mesh: {file: head.stl, unit: mm, at: [0, 150, 0], turn: [0, 90, 0], scale: 1.5}, material: limewood}
    """)]
public sealed record MeshSpec
{
    /// <summary>Path of the file from the design's folder.</summary>
    [Key("The file: its path from the design's folder, with forward strokes.", Required = true)]
    public string File { get; init; } = "";

    /// <summary>Unit of the file's numbers.</summary>
    [Key("The unit of the file's numbers. Needed for STL and OBJ, which do not say it; glTF is in m if not given.", Words = "mm cm m in")]
    public string? Unit { get; init; }

    /// <summary>Where the origin of the file stands.</summary>
    [Key("Where the origin of the file stands; [0, 0, 0] if not given.", Unit = "mm")]
    public Point3? At { get; init; }

    /// <summary>Turned about x, then about y, then about z.</summary>
    [Key("How it is turned about its origin: about x, then about y, then about z, by the right-hand rule; not at all if not given.", Unit = "deg", Count = 3, Min = -360, Max = 360)]
    public IReadOnlyList<double>? Turn { get; init; }

    /// <summary>How many times larger than in the file.</summary>
    [Key("How many times larger than in the file; 1 if not given.", Min = 0.001, Max = 1000)]
    public double? Scale { get; init; }
}
