namespace Jackwork.Hardware;

/// <summary>A metric thread of the coarse series.</summary>
/// <param name="Name">Its name, such as M3.</param>
/// <param name="Diameter">Nominal diameter, mm.</param>
/// <param name="Pitch">Pitch, mm: ISO 261 (M5 and above from memory).</param>
public sealed record MetricThread(string Name, double Diameter, double Pitch)
{
    /// <summary>The threads that screws and washers are named after.</summary>
    public static IReadOnlyList<MetricThread> All { get; } =
    [
        new("M2", 2, 0.4), new("M2.5", 2.5, 0.45), new("M3", 3, 0.5), new("M4", 4, 0.7),
        new("M5", 5, 0.8), new("M6", 6, 1), new("M8", 8, 1.25), new("M10", 10, 1.5),
    ];

    /// <summary>Area that carries load, mm^2: pi / 4 (d - 0.938194 P)^2, the mean of pitch and root circle (ISO 898-1). A threaded bar weighs about as much as a plain one of this area.</summary>
    public double StressArea => Math.PI / 4 * Math.Pow(Diameter - 0.938194 * Pitch, 2);

    /// <summary>The thread of a name that the design's reader has found to be known.</summary>
    internal static MetricThread Named(string name) => All.First(t => t.Name == name);
}
