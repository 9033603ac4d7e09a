using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;

namespace Jackwork.Shop.Timing;

/// <summary>Pens, tints, sizes and the title block that both timing pictures share. Lengths mm.</summary>
internal static class ChartLook
{
    /// <summary>Layer of the tints.</summary>
    public const string Tints = "tints";

    /// <summary>Layer of grids and frames.</summary>
    public const string Scales = "scales";

    /// <summary>Layer of the curves.</summary>
    public const string Curves = "curves";

    /// <summary>Layer of rules.</summary>
    public const string Rules = "rules";

    /// <summary>Layer of the lettering.</summary>
    public const string Lettering = "lettering";

    /// <summary>Clear paper round the picture.</summary>
    public const double Margin = 12;

    /// <summary>Height of small lettering.</summary>
    public const double Small = 2.5;

    /// <summary>Height of names.</summary>
    public const double Medium = 3.5;

    /// <summary>The curve of a member.</summary>
    public static Pen Curve => new(Palette.Brass, LineWidths.ExtraWide);

    /// <summary>Edges and frames.</summary>
    public static Pen Edge => new(Palette.Ink, LineWidths.Wide);

    /// <summary>Ticks.</summary>
    public static Pen Tick => new(Palette.Ink, LineWidths.Narrow);

    /// <summary>The grid over the turn.</summary>
    public static Pen Grid => new(Palette.Walnut.Over(Palette.Paper, 0.3), LineWidths.Narrow);

    /// <summary>Ground of a stretch in which a member moves.</summary>
    public static Colour MoveTint => Palette.Brass.Over(Palette.Paper, 0.14);

    /// <summary>Where a move begins and ends.</summary>
    public static Pen MoveEnd => new(Palette.Brass, LineWidths.Narrow);

    /// <summary>Between a curve and its foot.</summary>
    public static Colour CurveTint => Palette.Brass.Over(Palette.Paper, 0.42);

    /// <summary>The edge of a rule's band.</summary>
    public static Pen RuleEdge(bool broken) => new(broken ? Palette.Fault : Palette.Verdigris, LineWidths.Wide);

    /// <summary>The tint of a rule's band.</summary>
    public static Colour RuleTint(bool broken) => (broken ? Palette.Fault : Palette.Verdigris).Over(Palette.Paper, 0.3);

    /// <summary>Draws title and extent below <paramref name="topLeft"/> and returns the y below them.</summary>
    public static double Title(Sketch sketch, PerformanceChart chart, Point2 topLeft, double width)
    {
        sketch.Layer = Lettering;
        var (height, lines) = Wrapping.Fit(chart.Title, width, 2, 7, 5, Medium);
        var y = Lines(sketch, lines, topLeft, height, Palette.Ink);
        var extent = Wrapping.Lines(chart.Extent, Medium, width);
        return Lines(sketch, extent, new(topLeft.X, y - 0.5), Medium, Palette.Walnut);
    }

    /// <summary>Draws lines of lettering, the first one's capitals topped at <paramref name="topLeft"/>, and returns the y below the tails of the last.</summary>
    public static double Lines(Sketch sketch, IReadOnlyList<string> lines, Point2 topLeft, double height, Colour colour)
    {
        var y = topLeft.Y;
        foreach (var line in lines)
        {
            sketch.Text(line, new(topLeft.X, y), height, colour, Align.Left, Level.Top);
            y -= Letters.LineShare * height;
        }

        return y;
    }

    /// <summary>Height of a block of lines from the top of the first capitals to the foot of the last.</summary>
    public static double BlockHeight(int lines, double height) => height * (1 + Letters.LineShare * (lines - 1));
}
