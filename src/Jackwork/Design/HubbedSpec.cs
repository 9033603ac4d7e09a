namespace Jackwork.Design;

/// <summary>What any disc or drum on a shaft has: a bore, and a hub with a grub screw.</summary>
public abstract record HubbedSpec
{
    /// <summary>Bore unless given, mm: that of the usual shaft.</summary>
    public const double UsualBore = 6;

    /// <summary>Bore, mm.</summary>
    [Key("Bore for the shaft; 6 if not given.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Bore { get; init; }

    /// <summary>Hub diameter, mm.</summary>
    [Key("Diameter of the hub; twice the bore if not given.", Unit = "mm", Min = 1, Max = 500)]
    public double? Hub { get; init; }

    /// <summary>Length of the hub, mm.</summary>
    [Key("How far the hub stands out from one side; 8 if not given, 0 for no hub.", Unit = "mm", Min = 0, Max = 200)]
    public double? HubLength { get; init; }

    /// <summary>Size of the grub screw.</summary>
    [Key("Size of the grub screw in the middle of the hub; M3 if not given.", Words = "M2 M2.5 M3 M4")]
    public string? Grub { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>Bore as it is made, mm.</summary>
    internal double BoreDiameter => Bore ?? UsualBore;

    /// <summary>Diameter of the hub as it is made, mm.</summary>
    internal double HubDiameter => Hub ?? 2 * BoreDiameter;
}
