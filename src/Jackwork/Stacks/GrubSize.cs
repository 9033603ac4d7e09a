namespace Jackwork.Stacks;

/// <summary>A grub screw and the hexagon key that turns it.</summary>
/// <param name="Name">Thread.</param>
/// <param name="Diameter">Diameter of the thread, mm.</param>
/// <param name="Key">Width across flats of its key, mm: ISO 4026 to 4029.</param>
/// <param name="Reach">Length of the key's long arm, mm: ISO 2936 (from memory).</param>
public sealed record GrubSize(string Name, double Diameter, double Key, double Reach)
{
    /// <summary>The sizes that designs may name.</summary>
    public static IReadOnlyList<GrubSize> All { get; } = [new("M2", 2, 0.9, 33), new("M2.5", 2.5, 1.3, 41), new("M3", 3, 1.5, 46.5), new("M4", 4, 2, 52)];

    /// <summary>Radius of the key across its corners, mm.</summary>
    public double KeyRadius => Key / Math.Sqrt(3);

    /// <summary>The size a design names, M3 where it names none.</summary>
    internal static GrubSize Named(string? name) => All.First(g => g.Name == (name ?? "M3"));
}
