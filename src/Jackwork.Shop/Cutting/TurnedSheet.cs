using System.Globalization;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Views;

namespace Jackwork.Shop.Cutting;

/// <summary>A turned part at full size in section, with its sizes beside it.</summary>
/// <remarks>Lines after ISO 128: edges wide, the axis as a chain line. The section of part and hub stands on the cut layer, to make a template for the lathe by; the rest is engraved.</remarks>
internal static class TurnedSheet
{
    /// <summary>Paper kept clear round the sheet, mm.</summary>
    private const double Margin = 6;

    /// <summary>Height of the lettering, mm, from line to line, from the section to what is beside it, and how far the axis is drawn beyond the part.</summary>
    private const double Letter = 2.5, Row = 4.5, Beside = 14, Beyond = 4;

    /// <summary>The drawing.</summary>
    public static Drawing Draw(Turned turned)
    {
        var sketch = new Sketch { Layer = Layers.Cut };
        var edge = new Pen(Layers.ColourOf(Layers.Cut), LineWidths.Wide);
        var (from, to) = turned.Reach;
        Outline[] above = [turned.Section ?? Section(turned), .. Hub(turned) is { } hub ? [hub] : (Outline[])[]];
        foreach (var loop in above)
        {
            sketch.Loop(loop.Moved(new(-from, 0)), edge);
            sketch.Loop(new Outline([.. loop.Moved(new(-from, 0)).Segments.Select(s => new Segment(Below(s.Start), Below(s.End), -s.Bulge))]).Reversed(), edge);
        }

        sketch.Layer = Layers.Engrave;
        var ink = Layers.ColourOf(Layers.Engrave);
        var narrow = new Pen(ink, LineWidths.Narrow, LineKind.Chain);
        sketch.Line(new(-Beyond, 0), new(to - from + Beyond, 0), narrow);
        var radius = turned.Profile.Max(p => p.Radius);
        var widest = turned.Profile.First(p => p.Radius == radius).Station - from;
        DimensionLine.Draw(sketch, new(0, -radius), new(to - from, -radius), new(0, -Beside / 2), to - from, Letter);
        DimensionLine.Draw(sketch, new(widest, -radius), new(widest, radius), new(-widest - Beside / 2, 0), 2 * radius, Letter);

        // Names, values and units in three columns, right of the section.
        var rows = turned.Sizes.Rows;
        var (x, y) = (to - from + Beside, radius);
        sketch.Text($"{turned.Name}  {turned.Note}, {turned.Material.Name}", new(x, y), Letter + 1, ink);
        var column = x + rows.Max(r => r.What.Length) * Letter * 0.72 + 12;
        foreach (var (what, value, unit) in rows)
        {
            y -= Row;
            sketch.Text(what, new(x, y), Letter, ink);
            sketch.Text(value.ToString("0.###", CultureInfo.InvariantCulture), new(column, y), Letter, ink, Align.Right);
            sketch.Text(unit, new(column + 2, y), Letter, ink);
        }

        return Drawing.Fitted(turned.Name, Margin, sketch.Marks);
    }

    private static Point2 Below(Point2 p) => new(p.X, -p.Y);

    private static Outline Section(Turned t) => Outline.Polygon([
        new(t.Profile[0].Station, t.Bore / 2), new(t.Profile[^1].Station, t.Bore / 2), .. t.Profile.Reverse().Select(p => new Point2(p.Station, p.Radius))]);

    private static Outline? Hub(Turned t)
    {
        var (from, to) = t.Reach;
        return t.Hub is not { } hub || hub.Diameter <= t.Bore || to - from <= t.Profile[^1].Station - t.Profile[0].Station ? null
            : (hub.Above ? (t.Profile[^1].Station, to) : (from, t.Profile[0].Station)) is var (a, b)
                ? Outline.Polygon([new(a, t.Bore / 2), new(b, t.Bore / 2), new(b, hub.Diameter / 2), new(a, hub.Diameter / 2)])
                : null;
    }
}
