namespace Jackwork.Design;

/// <summary>What any two wheels on two shafts have: bores, and hubs with grub screws; the driver's is the first, this member's the second.</summary>
public abstract record HubbedPairSpec
{
    /// <summary>Bores, mm.</summary>
    [Key("Bores for the driver's shaft and for this member's; 6 and 6 if not given.", Unit = "mm", Count = 2, Min = 0.5, Max = 200)]
    public IReadOnlyList<double>? Bores { get; init; }

    /// <summary>Hub diameters, mm.</summary>
    [Key("Diameters of the hubs on the driver and on this member; twice the bores if not given.", Unit = "mm", Count = 2, Min = 1, Max = 500)]
    public IReadOnlyList<double>? Hubs { get; init; }

    /// <summary>Length of the hubs, mm.</summary>
    [Key("How far the hubs stand out; 8 if not given, 0 for no hubs.", Unit = "mm", Min = 0, Max = 200)]
    public double? HubLength { get; init; }

    /// <summary>Size of the grub screws.</summary>
    [Key("Size of the grub screws in the middle of the hubs; M3 if not given.", Words = "M2 M2.5 M3 M4")]
    public string? Grub { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>A bore as it is made, mm: the driver's (0) or this member's (1).</summary>
    internal double BoreOf(int wheel) => Bores?[wheel] ?? HubbedSpec.UsualBore;

    /// <summary>Diameter of a hub as it is made, mm: the driver's (0) or this member's (1).</summary>
    internal double HubOf(int wheel) => Hubs?[wheel] ?? 2 * BoreOf(wheel);
}
