using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Package;

/// <summary>One profile to cut.</summary>
/// <param name="Folder">Folder in the package: cams, gears or that of a mechanism.</param>
/// <param name="Name">Its name, engraved and in file names.</param>
/// <param name="On">The member that carries it.</param>
/// <param name="Rim">Its outside, mm.</param>
/// <param name="Bore">Its bore, mm; null for a ring, which has none of its own.</param>
/// <param name="Draw">Makes its cutting drawing.</param>
/// <param name="Refused">Why it can't be drawn, a sentence; null where it can.</param>
public sealed record Profile(string Folder, string Name, string On, Outline Rim, double? Bore, Func<Drawing> Draw, string? Refused)
{
    /// <summary>What is cut out of it beside its bore, each counter-clockwise.</summary>
    public ImmutableArray<Outline> Openings { get; init; } = [];
}
