namespace Jackwork.Shop.Drawings;

/// <summary>How a line is drawn. Line ends and corners are round.</summary>
/// <param name="Colour">Colour of the line.</param>
/// <param name="Width">Width of the line, mm, more than zero.</param>
/// <param name="Kind">Continuous, dashed or chain.</param>
public readonly record struct Pen(Colour Colour, double Width, LineKind Kind = LineKind.Continuous)
{
    /// <summary>Lengths of dash, gap, dash, gap ... between the round ends, mm; empty for a continuous line.</summary>
    /// <remarks>
    /// ISO 128-20:1996, table of line elements (from memory): dash 12 d, long dash 24 d, gap 3 d, point at most 0.5 d, with d the
    /// line width. A round end adds half a width at either side, so a dash is drawn one width shorter and a gap one width longer.
    /// </remarks>
    public ReadOnlySpan<double> Dashes => Kind switch
    {
        LineKind.Dashed => new[] { 11 * Width, 4 * Width },
        LineKind.Chain => new[] { 23 * Width, 4 * Width, 0, 4 * Width },
        _ => [],
    };
}

/// <summary>The kinds of line of ISO 128 that the drawings use.</summary>
public enum LineKind
{
    /// <summary>Visible edges, curves, scales.</summary>
    Continuous,

    /// <summary>Hidden edges.</summary>
    Dashed,

    /// <summary>Centre lines, pitch circles.</summary>
    Chain,
}

/// <summary>Line widths of a drawing, mm.</summary>
/// <remarks>ISO 128-20:1996 (from memory): extra-wide, wide and narrow lines stand as 4 : 2 : 1, from the series 0.13, 0.18, 0.25, 0.35, 0.5 ...</remarks>
public static class LineWidths
{
    /// <summary>What the picture is about.</summary>
    public const double ExtraWide = 0.5;

    /// <summary>Frames and edges.</summary>
    public const double Wide = 0.25;

    /// <summary>Grids, ticks, leaders.</summary>
    public const double Narrow = 0.13;
}
