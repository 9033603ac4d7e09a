namespace Jackwork.Shop.Model;

/// <summary>How a material looks: colour in linear light, and how a surface throws it back.</summary>
/// <param name="Red">Red, 0 to 1, linear.</param>
/// <param name="Green">Green.</param>
/// <param name="Blue">Blue.</param>
/// <param name="Metallic">1 for a metal, 0 for anything else.</param>
/// <param name="Roughness">0 for a mirror, 1 for chalk.</param>
internal readonly record struct Finish(double Red, double Green, double Blue, double Metallic, double Roughness)
{
    /// <summary>What is denser than this, g/cm^3, is a metal: among workshop materials the lightest metal has 2.7, the heaviest plastic 2.2.</summary>
    private const double LightestMetal = 2.5;

    /// <summary>Roughness of drawn or turned metal and of oiled wood (common practice, no source).</summary>
    private const double Metal = 0.4, Wood = 0.75;

    /// <summary>The look of a material, in a colour of its own (0xRRGGBB) where given.</summary>
    public static Finish Of(Material material, int? colour)
    {
        var metal = material.Density > LightestMetal;
        var c = colour ?? material.Colour;
        return new(Linear(c >> 16), Linear((c >> 8) & 0xFF), Linear(c & 0xFF), metal ? 1 : 0, metal ? Metal : Wood);
    }

    // IEC 61966-2-1:1999 (sRGB), from memory.
    private static double Linear(int level)
    {
        var v = level / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
    }
}
