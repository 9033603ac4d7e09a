namespace Jackwork.Hardware;

/// <summary>A washer or shim ring, mm.</summary>
/// <param name="Bore">Diameter of the hole.</param>
/// <param name="Outside">Outside diameter.</param>
/// <param name="Thickness">Thickness.</param>
public readonly record struct WasherSize(double Bore, double Outside, double Thickness)
{
    /// <summary>Plain washers of the normal series by the thread they are made for: ISO 7089 (M2 to M4 seen in makers' tables; M5 and above from memory).</summary>
    public static IReadOnlyDictionary<string, WasherSize> Plain { get; } = new Dictionary<string, WasherSize>
    {
        ["M2"] = new(2.2, 5, 0.3),
        ["M2.5"] = new(2.7, 6, 0.5),
        ["M3"] = new(3.2, 7, 0.5),
        ["M4"] = new(4.3, 9, 0.8),
        ["M5"] = new(5.3, 10, 1),
        ["M6"] = new(6.4, 12, 1.6),
        ["M8"] = new(8.4, 16, 1.6),
        ["M10"] = new(10.5, 20, 2),
    };

    /// <summary>Thicknesses in which shim rings are made, mm: DIN 988 (from memory).</summary>
    public static IReadOnlyList<double> ShimThicknesses { get; } = [0.1, 0.2, 0.3, 0.5, 1];

    /// <summary>Outside diameters of shim rings by the axle that they fit, mm: DIN 988 (from memory).</summary>
    public static IReadOnlyDictionary<double, double> ShimOutsides { get; } =
        new Dictionary<double, double> { [3] = 6, [4] = 8, [5] = 10, [6] = 12, [8] = 14, [10] = 16, [12] = 18 };

    /// <summary>Volume of the ring, mm^3.</summary>
    public double Volume => Math.PI / 4 * (Outside * Outside - Bore * Bore) * Thickness;
}
