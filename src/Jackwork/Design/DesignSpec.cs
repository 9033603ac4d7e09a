namespace Jackwork.Design;

/// <summary>The content of one design file, as written: lengths mm, angles degrees, masses g. Nothing here is worked out.</summary>
[Section("The design", "A design is one file, `design.yaml`, in a folder of its own. Lengths are millimetres, angles degrees. x runs to the viewer's right, y up, z to the viewer. Everything is written where it stands as drawn: with every member at its coordinate 0 and the crank at 0.", """
    jackwork: 1
    title: The nodding head
    crank: {turns: shaft, rpm: 30, radius: 35}
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lever:
        pivot: {through: [0, 70, -38], along: -x}
        cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: auto, hub: 12}
      head:
        pivot: {through: [0, 150, 8], along: x}
        rod: {from: lever, pins: [[0, 72, 12], [0, 150, 26]]}
    timing:
      head:
        over: shaft
        moves:
          - {from: 10, to: 130, beats: 2, reach: -14}
          - {from: 170, to: 240, reach: -24}
          - {from: 270, to: 345, reach: rest}
    """)]
public sealed record DesignSpec
{
    /// <summary>Version of the format.</summary>
    [Key("Version of the file format: 1.", Required = true, Min = 1, Max = 1)]
    public int Jackwork { get; init; } = 1;

    /// <summary>Title of the piece.</summary>
    [Key("Title of the piece, as it goes on drawings.", Required = true)]
    public string Title { get; init; } = "";

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>The handle.</summary>
    [Key("What the maker turns, and how fast.", Required = true)]
    public CrankSpec Crank { get; init; } = new();

    /// <summary>Router cutter diameter, mm.</summary>
    [Key("Diameter of the cutter that the profiles are cut with; 3 if not given.", Unit = "mm", Min = 0.1, Max = 20)]
    public double? Cutter { get; init; }

    /// <summary>Limits of the checks.</summary>
    [Key("Limits of the checks, where the usual ones don't suit.")]
    public LimitsSpec? Limits { get; init; }

    /// <summary>The moving parts by name.</summary>
    [Key("The moving parts, each under its name.", Required = true, Refers = Refers.Member)]
    public NamedMap<MemberSpec> Members { get; init; } = NamedMap<MemberSpec>.Empty;

    /// <summary>The timing charts by acted member.</summary>
    [Key("The timing chart: for each acted member, under its name, its moves over one turn of a shaft.", Refers = Refers.Member)]
    public NamedMap<TimingSpec>? Timing { get; init; }

    /// <summary>Interlocks.</summary>
    [Key("Interlocks between members.")]
    public IReadOnlyList<RuleSpec>? Rules { get; init; }

    /// <summary>The case.</summary>
    [Key("The case, as boards round an inside.")]
    public CaseSpec? Case { get; init; }

    /// <summary>Parts of the figure and its surroundings.</summary>
    [Key("Parts of the figure and whatever else no drive asks for, each under its name.")]
    public NamedMap<PartSpec>? Parts { get; init; }

    /// <summary>Parts made into one.</summary>
    [Key("Parts that are joined into one for good.")]
    public IReadOnlyList<JoinedSpec>? Joined { get; init; }

    /// <summary>Pairs that may touch.</summary>
    [Key("Pairs of parts, or of members, that are meant to touch or are made as one; they are left out of the clearance check.", Refers = Refers.Part)]
    public IReadOnlyList<IReadOnlyList<string>>? Touching { get; init; }

    /// <summary>Pairs with a clearance of their own.</summary>
    [Key("Pairs of parts, or of members, that have a clearance of their own.")]
    public IReadOnlyList<ApartSpec>? Apart { get; init; }
}
