namespace Jackwork.Hardware;

/// <summary>The head of a machine screw, mm.</summary>
/// <remarks>Slots, sockets and the rounding of pan heads are left out: the solid is the outside of the head.</remarks>
/// <param name="Diameter">Greatest diameter.</param>
/// <param name="Height">Height; of a countersunk head the greatest, cone and rim.</param>
/// <param name="Sunk">Whether it is countersunk, at 90 degrees.</param>
public readonly record struct ScrewHead(double Diameter, double Height, bool Sunk)
{
    private static readonly string[] Sizes = ["M2", "M2.5", "M3", "M4"];

    private static readonly Dictionary<string, (double Diameter, double Height)[]> Heads = new()
    {
        // Slotted cheese head, ISO 1207.
        ["cheese"] = [(3.8, 1.4), (4.5, 1.8), (5.5, 2), (7, 2.6)],

        // Pan head with cross recess, ISO 7045.
        ["pan"] = [(4, 1.6), (5, 2.1), (5.6, 2.4), (8, 3.1)],

        // Countersunk: ISO 2009 has the heads of ISO 7721, as has ISO 7046-2, in whose makers' table they were seen.
        ["countersunk"] = [(3.8, 1.2), (4.7, 1.5), (5.5, 1.65), (8.4, 2.7)],

        // Hexagon socket cap head, ISO 4762 (from memory).
        ["socket"] = [(3.8, 2), (4.5, 2.5), (5.5, 3), (7, 4)],
    };

    /// <summary>The head of a kind (cheese, pan, countersunk, socket) and size (M2 to M4); null for a grub screw, which has none.</summary>
    public static ScrewHead? Of(string kind, string size) =>
        Heads.TryGetValue(kind, out var heads) ? new(heads[Array.IndexOf(Sizes, size)].Diameter, heads[Array.IndexOf(Sizes, size)].Height, kind == "countersunk") : null;

    /// <summary>Height of the cone of a countersunk head on a thread, mm; 0 for another head.</summary>
    /// <param name="thread">Diameter of the thread, mm.</param>
    public double Cone(double thread) => Sunk ? (Diameter - thread) / 2 : 0;

    /// <summary>Volume, mm^3: the rim a cylinder, the cone a frustum down to the thread.</summary>
    /// <param name="thread">Diameter of the thread, mm.</param>
    public double Volume(double thread)
    {
        var (r, s, cone) = (Diameter / 2, thread / 2, Cone(thread));
        return Math.PI * (r * r * (Height - cone) + (r * r + r * s + s * s) * cone / 3);
    }
}
