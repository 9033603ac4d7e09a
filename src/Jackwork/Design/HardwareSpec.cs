using Jackwork.Geometry;
using Jackwork.Hardware;

namespace Jackwork.Design;

/// <summary>A washer or shim ring.</summary>
[Section("washer", "A washer or shim ring: of a standard `size`, a `shim` for an axle, or any `bore`, `outside` and `thickness`. It lies loose on its line and takes up what gap it fills: put one where the stacks ask for it. It may touch whatever stands on that line.", """
    parts:
      foot-washer: {washer: {size: M4, at: [0, 20, 0], along: y}}
      lever-shim: {washer: {shim: 4, thickness: 0.5, at: [3, 70, -38], along: x}}
      felt-ring: {washer: {bore: 6.2, outside: 14, thickness: 1.5, at: [9, 40, 0], along: x}}
    """)]
public sealed record WasherSpec
{
    /// <summary>Middle of one face.</summary>
    [Key("Middle of the face that it begins at.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Direction of its axis.</summary>
    [Key("Direction in which its thickness runs from there.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>Standard size.</summary>
    [Key("A plain washer for this thread (ISO 7089).", Words = "M2 M2.5 M3 M4 M5 M6 M8 M10")]
    public string? Size { get; init; }

    /// <summary>Shim ring for an axle, mm.</summary>
    [Key("A shim ring for an axle of this diameter: 3, 4, 5, 6, 8, 10 or 12 (DIN 988); it needs a `thickness` of 0.1, 0.2, 0.3, 0.5 or 1.", Unit = "mm", Min = 3, Max = 12)]
    public double? Shim { get; init; }

    /// <summary>Bore, mm.</summary>
    [Key("Its bore, where it is of no standard size.", Unit = "mm", Min = 0.1, Max = 1000)]
    public double? Bore { get; init; }

    /// <summary>Outside diameter, mm.</summary>
    [Key("Its outside diameter, where it is of no standard size.", Unit = "mm", Min = 0.1, Max = 1000)]
    public double? Outside { get; init; }

    /// <summary>Thickness, mm.</summary>
    [Key("Its thickness, where it is no plain washer.", Unit = "mm", Min = 0.01, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Its measures, which the design's reader has found to be given in one way.</summary>
    internal WasherSize Measures => Size is not null ? WasherSize.Plain[Size]
        : Shim is { } axle ? new(axle, WasherSize.ShimOutsides[axle], Thickness!.Value)
        : new(Bore!.Value, Outside!.Value, Thickness!.Value);
}

/// <summary>A machine screw or grub screw.</summary>
[Section("screw", "A machine screw with a head, or a grub screw. Its solid has the outside of its thread and head; its mass is that of the metal in them.", """
    parts:
      foot-screw: {screw: {size: M3, length: 12, at: [0, 20, 0], along: -y}}
      plate-screw: {screw: {size: M3, length: 10, at: [10, 20, 0], along: -y, head: countersunk}, material: brass}
    """)]
public sealed record ScrewSpec
{
    /// <summary>Thread.</summary>
    [Key("Its thread.", Required = true, Words = "M2 M2.5 M3 M4")]
    public string Size { get; init; } = "";

    /// <summary>Length, mm.</summary>
    [Key("Its length: from under the head, of a countersunk or grub screw over all.", Unit = "mm", Required = true, Min = 2, Max = 200)]
    public double Length { get; init; }

    /// <summary>Where it begins.</summary>
    [Key("Where it begins: the middle of the face under its head, of a countersunk or grub screw that of its outer end.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Direction.</summary>
    [Key("Direction in which it points.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>Head.</summary>
    [Key("Its head: `cheese` (ISO 1207) if not given, `pan` (ISO 7045), `countersunk` (ISO 2009), `socket` (ISO 4762), or `grub` for none (ISO 4026).", Words = "cheese pan countersunk socket grub")]
    public string? Head { get; init; }
}
