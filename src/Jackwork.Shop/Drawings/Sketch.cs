using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Shop.Drawings;

/// <summary>Gathers the marks of a drawing, on one layer at a time.</summary>
public sealed class Sketch
{
    private readonly ImmutableArray<Primitive>.Builder marks = ImmutableArray.CreateBuilder<Primitive>();

    /// <summary>The layer that the next marks go on.</summary>
    public string Layer { get; set; } = Layers.Engrave;

    /// <summary>A straight line.</summary>
    public void Line(Point2 from, Point2 to, Pen pen) => marks.Add(new Primitive.Path(Layer, [new(from, to, 0)], false, pen));

    /// <summary>A circular arc about <paramref name="centre"/> from angle <paramref name="from"/> turning by <paramref name="sweep"/>, mm and rad, less than a full turn.</summary>
    public void Arc(Point2 centre, double radius, double from, double sweep, Pen pen) =>
        marks.Add(new Primitive.Path(Layer, [Segment.Arc(centre, radius, from, sweep)], false, pen));

    /// <summary>A circle, mm.</summary>
    public void Circle(Point2 centre, double radius, Pen pen) => marks.Add(new Primitive.Circle(Layer, centre, radius, pen));

    /// <summary>A closed loop.</summary>
    public void Loop(Outline outline, Pen pen) => marks.Add(new Primitive.Path(Layer, outline.Segments, true, pen));

    /// <summary>Straight lines through at least two points, left open.</summary>
    public void Polyline(IReadOnlyList<Point2> points, Pen pen) =>
        marks.Add(new Primitive.Path(Layer, [.. points.Skip(1).Select((p, i) => new Segment(points[i], p, 0))], false, pen));

    /// <summary>A flat tint between loops, even-odd.</summary>
    public void Region(Colour fill, params ImmutableArray<Outline> loops) => marks.Add(new Primitive.Region(Layer, loops, fill));

    /// <summary>A line of lettering; see <see cref="Primitive.Text"/>.</summary>
    public void Text(string value, Point2 at, double height, Colour colour, Align align = Align.Left, Level level = Level.Base, double turn = 0, double curvature = 0) =>
        marks.Add(new Primitive.Text(Layer, value, at, height, colour, align, level, turn, curvature));

    /// <summary>The marks made so far.</summary>
    public ImmutableArray<Primitive> Marks => marks.ToImmutable();
}
