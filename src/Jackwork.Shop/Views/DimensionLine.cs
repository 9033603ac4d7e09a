using System.Globalization;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Views;

/// <summary>A dimension between two points: extension lines, a line with arrowheads, and the value along and above it.</summary>
/// <remarks>
/// ISO 129-1 (from memory): narrow lines; extension lines go a little beyond the dimension line; filled arrowheads; the value stands above
/// the line and is read from the bottom or from the right of the sheet.
/// </remarks>
internal static class DimensionLine
{
    private const double Gap = 1, Beyond = 2, Arrow = 3, ArrowWidth = 1, Lift = 0.8;

    private static Pen Line => new(Palette.Ink, LineWidths.Narrow);

    /// <summary>Draws it.</summary>
    /// <param name="sketch">Where to.</param>
    /// <param name="a">One point on paper, mm.</param>
    /// <param name="b">The other, to the right of or above the first.</param>
    /// <param name="off">From the points to the dimension line, mm, at right angles to it.</param>
    /// <param name="value">The value, mm, given to a tenth.</param>
    /// <param name="height">Height of the figures, mm.</param>
    public static void Draw(Sketch sketch, Point2 a, Point2 b, Vec2 off, double value, double height)
    {
        var along = (b - a).Unit();
        foreach (var p in (ReadOnlySpan<Point2>)[a, b])
        {
            sketch.Line(p + Gap * off.Unit(), p + off + Beyond * off.Unit(), Line);
        }

        var (from, to) = (a + off, b + off);
        sketch.Line(from, to, Line);
        foreach (var (tip, back) in (ReadOnlySpan<(Point2, Vec2)>)[(from, along), (to, -along)])
        {
            sketch.Region(Palette.Ink, Outline.Polygon([tip, tip + Arrow * back + ArrowWidth / 2 * back.Left, tip + Arrow * back - ArrowWidth / 2 * back.Left]));
        }

        sketch.Text(value.ToString("0.#", CultureInfo.InvariantCulture), from.Midpoint(to) + Lift * along.Left, height, Palette.Ink, Align.Centre, Level.Base, along.Angle);
    }
}
