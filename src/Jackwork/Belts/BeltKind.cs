using Jackwork.Design;

namespace Jackwork.Belts;

/// <summary>What a belt is made of, and its sizes across.</summary>
/// <param name="Word">The trade's word: "round belt", "flat belt", "toothed belt", "chain".</param>
/// <param name="Width">Width along the shafts, mm.</param>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Material">What it is of.</param>
public sealed record BeltKind(string Word, double Width, double Thickness, Material Material)
{
    /// <summary>Width of a toothed belt unless given, mm, and of a chain between its plates, pitches (05B of ISO 606, from memory).</summary>
    private const double ToothedWidth = 6, ChainWidth = 0.375;

    /// <summary>Whether it keeps time.</summary>
    public bool IsToothed => Word is "toothed belt" or "chain";

    /// <summary>Whether it is a chain.</summary>
    public bool IsChain => Word == "chain";

    /// <summary>Whether it is round.</summary>
    public bool IsRound => Word == "round belt";

    /// <summary>Width of a chain between its inner plates, mm.</summary>
    public double Inner { get; init; }

    /// <summary>The kind that a design asks for, of those that are made.</summary>
    /// <remarks>A chain is taken to be as wide over its rivets as thrice its inner width, and as high as nine tenths of its pitch (common practice, no source); a toothed belt as thick as a third of its pitch.</remarks>
    public static BeltKind Of(BeltSpec spec) =>
        spec.Round is { } d ? new("round belt", d, d, Material.Named("leather"))
        : spec.Flat is { } f ? new("flat belt", f[0], f[1], Material.Named("leather"))
        : spec.Roller is not null ? new("chain", 3 * (spec.Width ?? ChainWidth * spec.Pitch!.Value), 0.9 * spec.Pitch!.Value, Material.Named("steel")) { Inner = spec.Width ?? ChainWidth * spec.Pitch!.Value }
        : new("toothed belt", spec.Width ?? ToothedWidth, spec.Pitch!.Value / 3, Material.Named("polyurethane"));
}
