using System.Globalization;

namespace Jackwork;

/// <summary>Colours as designs write them.</summary>
internal static class Colours
{
    /// <summary>The colour 0xRRGGBB of a text <c>#rrggbb</c>; null where there is no text or it is no such.</summary>
    public static int? Read(string? text) =>
        text is { Length: 7 } && text[0] == '#' && text.Skip(1).All(char.IsAsciiHexDigit)
            ? int.Parse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)
            : null;
}
