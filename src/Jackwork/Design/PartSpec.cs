using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A part that no drive asks for: the figure, its surroundings, brackets.</summary>
[Section("parts", "Parts of the figure and whatever else stands on the case or on a member, each under its name, where it stands as drawn. Each has exactly one of `box`, `rod`, `tube`, `ball`, `turned`, `carved`, `mesh`, `support`, `washer` and `screw`.", """
    parts:
      tower: {box: {at: [0, 190, -20], size: [40, 40, 30]}, material: limewood}
      nose: {on: head, ball: {at: [0, 165, 22], diameter: 6}, material: limewood}
      bell: {turned: {from: [60, 200, 0], along: -y, profile: [[0, 4], [4, 14], [16, 20]]}, material: brass, process: bought}
      flag: {box: {at: [0, 215, -20], size: [20, 10, 1]}, material: birch-plywood, process: routed, colour: "#B0302A"}
    """)]
public sealed record PartSpec
{
    /// <summary>What carries it.</summary>
    [Key("The member that it is fixed to; the case if not given.", Refers = Refers.Member)]
    public string? On { get; init; }

    /// <summary>A box.</summary>
    [Key("A block with its edges along x, y and z.")]
    public BoxSpec? Box { get; init; }

    /// <summary>A round rod.</summary>
    [Key("A round rod.")]
    public RodShapeSpec? Rod { get; init; }

    /// <summary>A tube.</summary>
    [Key("A tube.")]
    public TubeSpec? Tube { get; init; }

    /// <summary>A ball.</summary>
    [Key("A ball.")]
    public BallSpec? Ball { get; init; }

    /// <summary>A turned shape.</summary>
    [Key("A shape turned on the lathe.")]
    public TurnedSpec? Turned { get; init; }

    /// <summary>A carved block.</summary>
    [Key("A carved block: the smallest convex body round these points.", Unit = "mm")]
    public IReadOnlyList<Point3>? Carved { get; init; }

    /// <summary>A mesh.</summary>
    [Key("A shape modelled elsewhere and kept in a file.")]
    public MeshSpec? Mesh { get; init; }

    /// <summary>A post with a bearing.</summary>
    [Key("A post with a bearing for a shaft or axle.")]
    public SupportSpec? Support { get; init; }

    /// <summary>A washer.</summary>
    [Key("A washer or shim ring.")]
    public WasherSpec? Washer { get; init; }

    /// <summary>A screw.</summary>
    [Key("A screw.")]
    public ScrewSpec? Screw { get; init; }

    /// <summary>Material.</summary>
    [Key("Material, from the table of materials; limewood if not given, of a support beech, of a washer or screw steel.", Refers = Refers.Material)]
    public string? Material { get; init; }

    /// <summary>How it is made.</summary>
    [Key("How it is made, where the usual way of its shape doesn't suit: `routed` from sheet, `turned`, `cut` from bar, `bent` from wire, `carved`, `sawn` from board or block, `bought`.", Words = "routed turned cut bent carved sawn bought")]
    public string? Process { get; init; }

    /// <summary>Colour in models.</summary>
    [Key("Colour in models, `\"#rrggbb\"` in quotes; that of the material if not given.")]
    public string? Colour { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>A block with square corners, as sawn from the board.</summary>
[Section("box", "A block with its edges along x, y and z.", """
    parts:
      plinth: {box: {at: [0, 5, 0], size: [60, 10, 40]}}
    """)]
public sealed record BoxSpec
{
    /// <summary>Middle.</summary>
    [Key("Its middle.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Sizes along x, y, z.</summary>
    [Key("Its sizes along x, y and z.", Unit = "mm", Required = true, Count = 3, Min = 0.05, Max = 5000)]
    public IReadOnlyList<double> Size { get; init; } = [];
}

/// <summary>A round rod.</summary>
[Section("rod (a part)", "A round rod with flat ends.", """
    parts:
      mast: {rod: {from: [0, 0, 0], to: [0, 80, 0], diameter: 5}, material: steel}
    """)]
public sealed record RodShapeSpec
{
    /// <summary>One end.</summary>
    [Key("Middle of one end.", Unit = "mm", Required = true)]
    public Point3 From { get; init; }

    /// <summary>Other end.</summary>
    [Key("Middle of the other end.", Unit = "mm", Required = true)]
    public Point3 To { get; init; }

    /// <summary>Diameter, mm.</summary>
    [Key("Its diameter.", Unit = "mm", Required = true, Min = 0.1, Max = 1000)]
    public double Diameter { get; init; }
}

/// <summary>A round tube with flat ends, such as a neck or a spacer.</summary>
[Section("tube", "A round tube with flat ends.", """
    parts:
      neck: {tube: {from: [0, 150, 0], to: [0, 200, 0], diameter: 10, bore: 7}, material: brass}
    """)]
public sealed record TubeSpec
{
    /// <summary>One end.</summary>
    [Key("Middle of one end.", Unit = "mm", Required = true)]
    public Point3 From { get; init; }

    /// <summary>Other end.</summary>
    [Key("Middle of the other end.", Unit = "mm", Required = true)]
    public Point3 To { get; init; }

    /// <summary>Outside diameter, mm.</summary>
    [Key("Its outside diameter.", Unit = "mm", Required = true, Min = 0.1, Max = 1000)]
    public double Diameter { get; init; }

    /// <summary>Bore, mm.</summary>
    [Key("Its bore.", Unit = "mm", Required = true, Min = 0.1, Max = 1000)]
    public double Bore { get; init; }
}

/// <summary>A ball of one material, such as an eye or a knob.</summary>
[Section("ball", "A ball.", """
    parts:
      knob: {ball: {at: [0, 60, 0], diameter: 12}}
    """)]
public sealed record BallSpec
{
    /// <summary>Middle.</summary>
    [Key("Its middle.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Diameter, mm.</summary>
    [Key("Its diameter.", Unit = "mm", Required = true, Min = 0.1, Max = 1000)]
    public double Diameter { get; init; }
}

/// <summary>A turned shape.</summary>
[Section("turned", "A shape turned on the lathe: straight from one diameter to the next.", """
    parts:
      baluster: {turned: {from: [0, 0, 0], along: y, profile: [[0, 12], [6, 12], [20, 6], [40, 9]]}}
    """)]
public sealed record TurnedSpec
{
    /// <summary>A point of the axis.</summary>
    [Key("The point of its axis that the profile is measured from.", Unit = "mm", Required = true)]
    public Point3 From { get; init; }

    /// <summary>Direction of the axis.</summary>
    [Key("Direction of its axis.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>Distances and diameters.</summary>
    [Key("Pairs [distance along the axis, diameter], the distances rising.", Unit = "mm", Required = true)]
    public IReadOnlyList<IReadOnlyList<double>> Profile { get; init; } = [];
}
