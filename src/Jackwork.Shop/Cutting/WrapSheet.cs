using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Cutting;

/// <summary>What is cut into a cylinder, rolled out at full size, to wrap round it or to cut by a turning table.</summary>
internal static class WrapSheet
{
    /// <summary>Paper kept clear round the sheet, mm.</summary>
    private const double Margin = 5;

    /// <summary>Height of the lettering, mm, and its distance from the sheet's lower edge.</summary>
    private const double Letter = 3.5, Below = 3;

    /// <summary>The drawing: the cylinder's ends and the line where the edges meet are engraved, what is cut out is on the cut layer, holes on the drill layer.</summary>
    public static Drawing Draw(Wrap wrap)
    {
        var sketch = new Sketch { Layer = Layers.Engrave };
        sketch.Loop(Outline.Polygon([Point2.Origin, new(wrap.Width, 0), new(wrap.Width, wrap.Length), new(0, wrap.Length)]), Pen(Layers.Engrave));
        sketch.Text(FormattableString.Invariant($"{wrap.Name}  {wrap.Note}  round {2 * wrap.Radius:0.###} mm, {wrap.Width:0.##} x {wrap.Length:0.##} mm"), new(0, -Below - Letter), Letter, Layers.ColourOf(Layers.Engrave), Align.Left, Level.Base, 0);
        sketch.Layer = Layers.Cut;
        foreach (var cut in wrap.Cut)
        {
            sketch.Loop(cut.Reversed(), Pen(Layers.Cut));
        }

        sketch.Layer = Layers.Drill;
        foreach (var hole in wrap.Holes)
        {
            sketch.Circle(hole.Centre, hole.Diameter / 2, Pen(Layers.Drill));
        }

        return Drawing.Fitted(wrap.Name, Margin, sketch.Marks);
    }

    private static Pen Pen(string layer) => new(Layers.ColourOf(layer), LineWidths.Wide);
}
