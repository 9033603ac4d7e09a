namespace Jackwork.Design;

/// <summary>A belt or chain.</summary>
[Section("belt", "A belt or chain between parallel shafts. A chain or toothed belt is given by `teeth` and keeps time; a smooth belt by `diameters` and slips.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      main:
        pivot: {through: [0, 130, -30], along: x}
        belt: {with: shaft, teeth: [10, 30], note: a chain}
      fan:
        pivot: {through: [0, 170, 20], along: x}
        belt: {with: main, diameters: [40, 12.5], crossed: true}
    """)]
public sealed record BeltSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string With { get; init; } = "";

    /// <summary>Teeth of the two wheels.</summary>
    [Key("Teeth of the driver's wheel and of this member's.", Count = 2, Min = 4, Max = 500)]
    public IReadOnlyList<int>? Teeth { get; init; }

    /// <summary>Working diameters, mm.</summary>
    [Key("Working diameters of the driver's pulley and of this member's, to a tenth of a millimetre.", Unit = "mm", Count = 2, Min = 1, Max = 2000)]
    public IReadOnlyList<double>? Diameters { get; init; }

    /// <summary>Crossed belt.</summary>
    [Key("Whether the belt is crossed, so that the shafts turn opposite ways.")]
    public bool Crossed { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
