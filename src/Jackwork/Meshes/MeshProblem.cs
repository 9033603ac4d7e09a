using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>Why a mesh is refused.</summary>
public enum MeshFault
{
    /// <summary>The file does not follow its format, or uses what is not read.</summary>
    Unreadable,

    /// <summary>There are no triangles.</summary>
    Empty,

    /// <summary>There are more triangles than are taken.</summary>
    TooMany,

    /// <summary>A triangle names a point that there is not.</summary>
    NoSuchPoint,

    /// <summary>A coordinate is not a finite number.</summary>
    NotFinite,

    /// <summary>Larger than any part, or farther off.</summary>
    TooLarge,

    /// <summary>Smaller than any part.</summary>
    TooSmall,

    /// <summary>Triangles without area.</summary>
    NoArea,

    /// <summary>Edges with other than two triangles.</summary>
    NotClosed,

    /// <summary>Neighbouring triangles that look opposite ways.</summary>
    NotOneWay,

    /// <summary>A shell whose inside is outside.</summary>
    InsideOut,
}

/// <summary>One thing wrong with a mesh: what, with its numbers, and what would be right.</summary>
/// <param name="Fault">The kind of fault.</param>
/// <param name="What">What is wrong, a sentence without its full stop.</param>
/// <param name="Remedy">What to do about it.</param>
/// <param name="Count">How many triangles, points or edges are at fault; 0 where that says nothing.</param>
/// <param name="Where">One place of the fault, in the mesh's own coordinates; null where there is none.</param>
public sealed record MeshProblem(MeshFault Fault, string What, string Remedy, int Count = 0, Point3? Where = null);

/// <summary>What reading or checking a mesh gave: the mesh, or what is wrong with it; never half of each.</summary>
/// <param name="Mesh">The mesh, or null where there are problems.</param>
/// <param name="Problems">The problems; empty when there are none.</param>
public sealed record MeshReading(TriangleMesh? Mesh, IReadOnlyList<MeshProblem> Problems)
{
    internal static MeshReading Refused(params IReadOnlyList<MeshProblem> problems) => new(null, problems);
}

/// <summary>Ends the reading of a mesh file; never leaves <see cref="MeshFile"/>.</summary>
internal sealed class MeshRefusal(MeshProblem problem) : Exception(problem.What)
{
    public MeshRefusal(string what, string remedy)
        : this(new MeshProblem(MeshFault.Unreadable, what, remedy))
    {
    }

    public MeshProblem Problem { get; } = problem;
}
