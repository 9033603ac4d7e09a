namespace Jackwork;

/// <summary>What a part is made of.</summary>
/// <param name="Name">Name in design files.</param>
/// <param name="Density">Density, g/cm^3.</param>
/// <param name="Colour">Colour in pictures, 0xRRGGBB.</param>
/// <param name="Source">Where the density comes from.</param>
public sealed record Material(string Name, double Density, int Colour, string Source)
{
    /// <summary>The materials that designs may name.</summary>
    public static IReadOnlyList<Material> All { get; } =
    [
        new("birch-plywood", 0.68, 0xDDBE8C, "makers' data sheets of birch plywood, 0.66 to 0.71 by thickness"),
        new("beech", 0.717, 0xD2A679, "American beech at 12 % moisture, from specific gravity 0.64 (USDA Wood Handbook, table 5-3a)"),
        new("maple", 0.706, 0xE5CFA5, "hard maple at 12 % moisture, from specific gravity 0.63 (USDA Wood Handbook, table 5-3a)"),
        new("cherry", 0.56, 0xB06A3B, "black cherry at 12 % moisture, from specific gravity 0.50 (USDA Wood Handbook, table 5-3a)"),
        new("walnut", 0.616, 0x5A4030, "black walnut at 12 % moisture, from specific gravity 0.55 (USDA Wood Handbook, table 5-3a)"),
        new("limewood", 0.53, 0xE8D9B5, "European lime at 12 to 15 % moisture, DIN 68364 (from memory)"),
        new("brass", 8.47, 0xA97B22, "CuZn39Pb3 (CW614N), makers' data sheet; others give 8.4 to 8.5"),
        new("bronze", 8.8, 0x9A6A34, "CuSn8 (CW453K), EN 12163 (from memory)"),
        new("steel", 7.85, 0x8C9296, "carbon steel, makers' data sheets of wire; Shigley, table A-5, has 7.80"),
        new("stainless", 7.9, 0xA8ADB0, "1.4301, EN 10088-1 (from memory)"),
        new("aluminium", 2.7, 0xC4C8CB, "EN AW-6082 (from memory)"),
        new("acetal", 1.41, 0xF2F0EA, "POM-C (from memory)"),
        new("acrylic", 1.19, 0xCFE3EA, "PMMA, ISO 7823-1 (from memory)"),
        new("polyester", 1.38, 0x8A3B2E, "PET fibre (from memory); a braid of it holds some air"),
        new("polyurethane", 1.2, 0xE7DDBC, "thermoplastic polyurethane, 1.1 to 1.25 (from memory)"),
        new("leather", 0.9, 0x8A5A35, "vegetable-tanned belting, 0.86 to 1.0 (from memory)"),
        new("ptfe", 2.17, 0xEFEFEF, "PTFE, 2.14 to 2.20 (from memory)"),
    ];

    /// <summary>The material of that name, or null.</summary>
    public static Material? Find(string name) => All.FirstOrDefault(m => m.Name == name);

    /// <summary>The material of that name, which the design's reader has found to be known.</summary>
    internal static Material Named(string name) => Find(name) ?? throw new ArgumentOutOfRangeException(nameof(name), name, "The table of materials has no such name.");
}
