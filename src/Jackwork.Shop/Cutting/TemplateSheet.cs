using Jackwork.Mechanisms;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Cutting;

/// <summary>A template at full size: its outline on the cut layer, lines to work by on the engrave layer.</summary>
internal static class TemplateSheet
{
    /// <summary>Paper kept clear round the sheet, mm.</summary>
    private const double Margin = 5;

    /// <summary>Height of the lettering, mm, and the distance from line to line.</summary>
    private const double Letter = 3, Row = 5;

    /// <summary>The drawing.</summary>
    public static Drawing Draw(Template template)
    {
        var sketch = new Sketch { Layer = Layers.Cut };
        sketch.Loop(template.Rim, new(Layers.ColourOf(Layers.Cut), LineWidths.Wide));
        sketch.Layer = Layers.Engrave;
        foreach (var line in template.Lines)
        {
            sketch.Line(line.Start, line.End, new(Layers.ColourOf(Layers.Engrave), LineWidths.Wide));
        }

        var (least, _) = template.Rim.Bounds();
        var y = least.Y - Row;
        foreach (var words in template.Note.Split(", ").Prepend(template.Name))
        {
            sketch.Text(words, new(least.X, y), Letter, Layers.ColourOf(Layers.Engrave));
            y -= Row;
        }

        return Drawing.Fitted(template.Name, Margin, sketch.Marks);
    }
}
