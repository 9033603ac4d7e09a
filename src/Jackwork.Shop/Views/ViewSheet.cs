using System.Globalization;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;

namespace Jackwork.Shop.Views;

/// <summary>A view of the assembly as a drawing on an A3 sheet: the lines, centre lines of shafts, overall dimensions, names, title block.</summary>
/// <remarks>
/// Lines follow ISO 128-2 (from memory): visible edges wide and continuous, centre lines narrow chain, dimension and leader lines narrow
/// continuous. Sheet and frame follow ISO 5457 (from memory): A3 is 420 by 297 mm, the frame 20 mm from the left edge and 10 mm from the others.
/// </remarks>
public static class ViewSheet
{
    /// <summary>Layer of the frame and title block.</summary>
    public const string Frame = "frame";

    /// <summary>Layer of the visible edges.</summary>
    public const string Edges = "edges";

    /// <summary>Layer of the centre lines.</summary>
    public const string Centres = "centre-lines";

    /// <summary>Layer of the dimensions.</summary>
    public const string Dimensions = "dimensions";

    /// <summary>Layer of names and leaders.</summary>
    public const string Names = "names";

    private const double Small = 2.5, Medium = 3.5;

    // Title block, and what is kept free of the view round it.
    private const double BlockWidth = 130, BlockHeight = 27, Inset = 4;

    // From the view to its dimension lines and to the names; from one name to the next; how far a centre line stands out.
    private const double DimensionOff = 11, NameOff = 12, NamePitch = 4.4, CentreOut = 4, DotRadius = 0.45;

    // Room for the names on either side; one that is longer is lettered smaller.
    private const double NameRoom = 44;

    // The least that must be seen of a part to be named, mm^2 on paper.
    private const double LeastNamed = 1.5;

    private static readonly Box Paper = new(default, new(420, 297));
    private static readonly Box Border = new(new(20, 10), new(410, 287));

    // Where views stand: the left margin also takes the height's dimension.
    private static readonly Box Room = new(
        new(Border.Min.X + NameRoom + NameOff + DimensionOff, Border.Min.Y + BlockHeight + DimensionOff + Inset),
        new(Border.Max.X - NameRoom - NameOff, Border.Max.Y - Inset));

    private static Pen Edge => new(Palette.Ink, LineWidths.Wide);

    private static Pen Narrow => new(Palette.Ink, LineWidths.Narrow);

    private static Pen Leader => new(Palette.Walnut, LineWidths.Narrow);

    private static Pen Centre => new(Palette.Brass, LineWidths.Narrow, LineKind.Chain);

    /// <summary>The scale at which all views of a piece of this size fit their sheets.</summary>
    /// <param name="size">Width, height and depth, mm.</param>
    public static ViewScale ScaleFor(Vec3 size) =>
        ViewScale.Fitting(Math.Max(size.X, size.Z), Math.Max(size.Y, size.Z), Room.Width, Room.Height);

    /// <summary>The sheet.</summary>
    /// <param name="view">The view.</param>
    /// <param name="title">What the piece is called.</param>
    /// <param name="scale">The scale, at which it must fit.</param>
    /// <param name="crankDeg">Crank angle that is shown, degrees.</param>
    /// <param name="named">Whether the parts are named.</param>
    public static Drawing Draw(AssemblyView view, string title, ViewScale scale, double crankDeg, bool named)
    {
        var sketch = new Sketch { Layer = Frame };
        sketch.Loop(Border.Outline(), new(Palette.Ink, LineWidths.ExtraWide));
        Block(sketch, view, title, scale, crankDeg);

        var middle = view.Bounds.Centre;
        Point2 OnPaper(Point2 p) => Room.Centre + scale.Factor * (p - middle);
        var box = new Box(OnPaper(view.Bounds.Min), OnPaper(view.Bounds.Max));

        sketch.Layer = Edges;
        foreach (var line in view.Lines)
        {
            sketch.Polyline([.. line.Points.Select(OnPaper)], Edge);
        }

        sketch.Layer = Centres;
        foreach (var (from, to, radius) in view.Axes())
        {
            CentreLine(sketch, OnPaper(from), OnPaper(to), radius * scale.Factor);
        }

        var left = named ? Name(sketch, view, OnPaper, scale, box) : 0;
        sketch.Layer = Dimensions;
        DimensionLine.Draw(sketch, box.Min, new(box.Max.X, box.Min.Y), new(0, -DimensionOff), view.Bounds.Width, Medium);
        DimensionLine.Draw(sketch, box.Min, new(box.Min.X, box.Max.Y), new(-DimensionOff - left, 0), view.Bounds.Height, Medium);
        return new($"{title}: {view.Side.Name}, {view.Side.Seen}, {scale}", Paper, Palette.Paper, sketch.Marks);
    }

    private static void Block(Sketch sketch, AssemblyView view, string title, ViewScale scale, double crankDeg)
    {
        var corner = new Point2(Border.Max.X - BlockWidth, Border.Min.Y);
        sketch.Loop(new Box(corner, corner + new Vec2(BlockWidth, BlockHeight)).Outline(), Edge);
        foreach (var y in (ReadOnlySpan<double>)[BlockHeight / 3, 2 * BlockHeight / 3])
        {
            sketch.Line(corner + new Vec2(0, y), corner + new Vec2(BlockWidth, y), Narrow);
        }

        void Put(string text, double x, double row, double height) =>
            sketch.Text(text, corner + new Vec2(x, (row + 0.5) * BlockHeight / 3), height, Palette.Ink, Align.Left, Level.Middle);
        var (size, lines) = Wrapping.Fit(title, BlockWidth - 2 * Inset, 1, 5, Medium, Small, 1.8);
        Put(lines.Count > 1 ? lines[0] + "..." : lines[0], Inset, 2, size);
        Put($"{char.ToUpperInvariant(view.Side.Name[0])}{view.Side.Name[1..]}, {view.Side.Seen}", Inset, 1, Medium);
        Put($"Scale {scale}", Inset, 0, Medium);
        Put($"Crank {crankDeg.ToString("0.#", CultureInfo.InvariantCulture)}°", BlockWidth * 0.32, 0, Medium);
        Put("Lengths in mm", BlockWidth * 0.57, 0, Medium);
        Put("A3", BlockWidth * 0.9, 0, Medium);
    }

    private static void CentreLine(Sketch sketch, Point2 from, Point2 to, double radius)
    {
        if (from != to)
        {
            var along = (to - from).Unit();
            sketch.Line(from - CentreOut * along, to + CentreOut * along, Centre);
            return;
        }

        foreach (var half in (ReadOnlySpan<Vec2>)[new(radius + CentreOut, 0), new(0, radius + CentreOut)])
        {
            sketch.Line(from - half, from + half, Centre);
        }
    }

    // Names in two columns beside the view, those of the left half of what is pointed at on the left. Gives back how wide the left column is, mm.
    private static double Name(Sketch sketch, AssemblyView view, Func<Point2, Point2> onPaper, ViewScale scale, Box box)
    {
        var (from, to) = (box.Min.Y + Small, box.Max.Y - Small);
        var most = Math.Max(1, (int)((to - from) / NamePitch));
        var labels = ViewLabels.Of(view, 2 * most, LeastNamed / scale.Factor / scale.Factor)
            .Select(l => l with { At = onPaper(l.At) }).OrderBy(l => l.At.X).ToList();
        sketch.Layer = Names;
        var half = (labels.Count + 1) / 2;
        Column(sketch, labels.Take(half), box.Min.X - NameOff, Align.Right, from, to);
        Column(sketch, labels.Skip(half), box.Max.X + NameOff, Align.Left, from, to);
        return NameOff + labels.Take(half).Select(l => Letters.Width(l.Name, HeightOf(l.Name))).DefaultIfEmpty(0).Max();
    }

    private static double HeightOf(string name) => Small * Math.Min(1, NameRoom / Letters.Width(name, Small));

    private static void Column(Sketch sketch, IEnumerable<ViewLabels.Label> labels, double x, Align align, double from, double to)
    {
        var inward = align == Align.Right ? 1 : -1;
        foreach (var (label, y) in LabelColumn.Place(labels, x, from, to, NamePitch))
        {
            sketch.Text(label.Name, new(x - inward, y), HeightOf(label.Name), Palette.Ink, align, Level.Middle);
            sketch.Line(new(x, y), label.At, Leader);
            sketch.Region(Palette.Walnut, Outline.Circle(label.At, DotRadius));
        }
    }
}
