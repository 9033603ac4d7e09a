using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>What a part is for.</summary>
public enum PartKind
{
    /// <summary>A plate cam.</summary>
    Cam,

    /// <summary>A toothed wheel.</summary>
    Wheel,

    /// <summary>A plate of a mechanism, such as that of a Geneva wheel.</summary>
    Plate,

    /// <summary>A turned part of a mechanism, such as a bevel wheel or a worm.</summary>
    Turned,

    /// <summary>A belt or chain.</summary>
    Belt,

    /// <summary>A hub or collet beside a plate.</summary>
    Hub,

    /// <summary>A shaft that turns.</summary>
    Shaft,

    /// <summary>An axle fixed in the carrier of what turns on it.</summary>
    Axle,

    /// <summary>A lever's bar or boss.</summary>
    Lever,

    /// <summary>A roller, round end or face that touches a cam.</summary>
    Roller,

    /// <summary>A pin.</summary>
    Pin,

    /// <summary>A rod or wire between two pins.</summary>
    Rod,

    /// <summary>A straight piece of a cord.</summary>
    Cord,

    /// <summary>The rod of a slide.</summary>
    Slide,

    /// <summary>The handle's arm or grip.</summary>
    Handle,

    /// <summary>A board of the case.</summary>
    Board,

    /// <summary>The grub screw of a hub.</summary>
    Grub,

    /// <summary>A bush in a board or support.</summary>
    Bush,

    /// <summary>What a slide runs in.</summary>
    Guide,

    /// <summary>A post with a bearing.</summary>
    Support,

    /// <summary>A washer or shim ring.</summary>
    Washer,

    /// <summary>A screw.</summary>
    Screw,

    /// <summary>Anything that the design adds.</summary>
    Figure,
}

/// <summary>What a part moves with: the case, a member, or what floats between members: a rod between two pins, a length of a cord.</summary>
/// <param name="Member">Index of the member, or <see cref="Jackwork.Motion.Member.Case"/>; for a rod or cord the member that it drives.</param>
/// <param name="IsRod">Whether it is the rod, floating bar or cord that drives that member.</param>
/// <param name="Piece">For a cord, which of its straight lengths (see <see cref="CordPieces"/>); else 0.</param>
public readonly record struct Body(int Member, bool IsRod = false, int Piece = 0)
{
    /// <summary>The fixed frame.</summary>
    public static Body Case => new(Jackwork.Motion.Member.Case);
}

/// <summary>The mechanism that a part belongs to.</summary>
/// <param name="Member">Index of the member whose drive or joint it serves.</param>
/// <param name="Word">The trade's words for it.</param>
public readonly record struct Serving(int Member, string Word);

/// <summary>A physical piece: convex solids fixed to one body. Coordinates as drawn; those of a rod lie along x from the driver's pin.</summary>
/// <param name="Name">Its name, unique in the piece.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Body">What it moves with.</param>
/// <param name="Pieces">Its solid, cut into convex pieces.</param>
/// <param name="Volume">Its volume, mm^3.</param>
/// <param name="Material">What it is made of.</param>
public sealed record Part(string Name, PartKind Kind, Body Body, ImmutableArray<ConvexPiece> Pieces, double Volume, Material Material)
{
    private PieceSet? set;

    private readonly double? filled;
    private readonly Process? process;

    /// <summary>The true plates, bores and arcs included, of a part whose pieces were cut from plates; empty where the pieces are the true shape.</summary>
    public ImmutableArray<PlateShape> Plates { get; init; } = [];

    /// <summary>The closed surface of a part that is a mesh, as drawn; null for all others. Its pieces are then its triangles, which nothing touches that lies wholly inside: ask <see cref="TriangleMesh.Contains"/> for that.</summary>
    public TriangleMesh? Mesh { get; init; }

    /// <summary>The true closed surface, as drawn, of a part whose pieces only bound it, such as a drum with a groove; null for all others.</summary>
    public TriangleMesh? Surface { get; init; }

    /// <summary>For an axle: the member that turns on it; else null.</summary>
    public int? Bears { get; init; }

    /// <summary>For a part that is round about a line: a point of that line and its unit direction, as drawn; else null.</summary>
    public (Point3 Through, Vec3 Along)? RoundAbout { get; init; }

    /// <summary>The pieces, gathered for measuring distances.</summary>
    public PieceSet Set
    {
        get => set ??= new(Pieces.AsSpan());
        init => set = value;
    }

    /// <summary>The box round the part as drawn, along the axes of its coordinates.</summary>
    public Bounds Box => Set.Box;

    /// <summary>For a washer, bush, guide or support: the line of its bore; what is round about that line may touch it. Else null.</summary>
    public (Point3 Through, Vec3 Along)? RunsOn { get; init; }

    /// <summary>How much of the volume the material fills, mm^3, where the solid is only the outside: a screw's thread, a hub with its screw's hole.</summary>
    public double Filled
    {
        get => filled ?? Volume;
        init => filled = value;
    }

    /// <summary>How it is made.</summary>
    public Process Process
    {
        get => process ?? Processes.Usual(Kind);
        init => process = value;
    }

    /// <summary>Colour in models, 0xRRGGBB, in place of the material's; else null.</summary>
    public int? Colour { get; init; }

    /// <summary>Name of what it is joined into for good; else null.</summary>
    public string? PartOf { get; init; }

    /// <summary>The mechanism that it belongs to; else null.</summary>
    public Serving? Serves { get; init; }

    /// <summary>Mass, g.</summary>
    public double Mass => Filled * Material.Density / 1000;
}
