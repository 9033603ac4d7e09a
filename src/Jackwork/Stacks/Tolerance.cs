namespace Jackwork.Stacks;

/// <summary>How far a thickness or length may come out from its nominal value, mm, both 0 or more. <c>default</c> is none.</summary>
/// <param name="Plus">How much thicker it may be.</param>
/// <param name="Minus">How much thinner.</param>
/// <param name="Source">Where the figures come from.</param>
public readonly record struct Tolerance(double Plus, double Minus, string Source)
{
    /// <summary>What turned, sawn and filed metal is held to, mm (common practice, no source).</summary>
    private const double Metal = 0.1;

    /// <summary>What planed or sawn wood is held to, mm (common practice, no source).</summary>
    private const double Wood = 0.2;

    /// <summary>Thickest sheet, mm; what is longer along the axis was sawn to length.</summary>
    private const double ThickestSheet = 30;

    /// <summary>The tolerance of sanded plywood of a nominal thickness t, mm.</summary>
    /// <remarks>EN 315, Plywood: tolerances for dimensions (from memory): +(0.2 + 0.03 t), -(0.4 + 0.03 t) mm at 10 +- 2 % moisture.</remarks>
    public static Tolerance Plywood(double thickness)
    {
        if (!(thickness > 0 && double.IsFinite(thickness)))
        {
            throw new ArgumentOutOfRangeException(nameof(thickness), thickness, FormattableString.Invariant($"The thickness is {thickness} mm; allowed: above 0 and finite."));
        }

        return new(0.2 + 0.03 * thickness, 0.4 + 0.03 * thickness, "EN 315, sanded plywood (from memory)");
    }

    /// <summary>The tolerance of a part of a material, of a nominal thickness along the axis, mm.</summary>
    public static Tolerance Of(Material material, double thickness) => material.Name switch
    {
        "birch-plywood" when thickness <= ThickestSheet => Plywood(thickness),
        "brass" or "bronze" or "steel" or "stainless" or "aluminium" or "acetal" or "acrylic" or "ptfe" => new(Metal, Metal, "turned or cut to length, common practice, no source"),
        _ => new(Wood, Wood, "wood planed or sawn to length, common practice, no source"),
    };

    /// <summary>This tolerance as it counts where only a share of the thickness does.</summary>
    public Tolerance Share(double share) => this with { Plus = share * Plus, Minus = share * Minus };
}
