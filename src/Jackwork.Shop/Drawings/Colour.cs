using System.Globalization;

namespace Jackwork.Shop.Drawings;

/// <summary>An opaque sRGB colour, each channel 0 to 255. <c>default</c> is black.</summary>
/// <param name="Red">Red channel.</param>
/// <param name="Green">Green channel.</param>
/// <param name="Blue">Blue channel.</param>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour as <c>#RRGGBB</c>.</summary>
    public string Hex => string.Create(CultureInfo.InvariantCulture, $"#{Red:X2}{Green:X2}{Blue:X2}");

    /// <summary>The colour 0xRRGGBB.</summary>
    public static Colour Rgb(int rgb) => new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);

    /// <summary>This colour laid over <paramref name="ground"/> at a strength of <paramref name="share"/> (0 none, 1 full).</summary>
    public Colour Over(Colour ground, double share)
    {
        byte Channel(byte ink, byte paper) => (byte)Math.Round(paper + share * (ink - paper));
        return new(Channel(Red, ground.Red), Channel(Green, ground.Green), Channel(Blue, ground.Blue));
    }
}
