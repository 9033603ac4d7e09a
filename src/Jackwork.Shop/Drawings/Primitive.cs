using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Lettering;

namespace Jackwork.Shop.Drawings;

/// <summary>One mark on a drawing: a path, a circle, a filled region or a line of lettering. Lengths mm, angles rad, y up.</summary>
public abstract record Primitive
{
    private Primitive(string layer) => Layer = layer;

    /// <summary>Name of the layer the mark is on.</summary>
    public string Layer { get; init; }

    /// <summary>The smallest upright box about the mark's centre lines, mm; half the pen's width lies outside it.</summary>
    public abstract Box Bounds { get; }

    /// <summary>A run of lines and arcs, each starting where the one before ends.</summary>
    /// <param name="Layer">Name of its layer.</param>
    /// <param name="Segments">At least one.</param>
    /// <param name="Closed">Whether the last ends where the first begins, as one loop.</param>
    /// <param name="Pen">The line.</param>
    public sealed record Path(string Layer, ImmutableArray<Segment> Segments, bool Closed, Pen Pen) : Primitive(Layer)
    {
        /// <inheritdoc/>
        public override Box Bounds => Box.Around(Segments);
    }

    /// <summary>A full circle.</summary>
    /// <param name="Layer">Name of its layer.</param>
    /// <param name="Centre">Its centre.</param>
    /// <param name="Radius">Its radius, mm.</param>
    /// <param name="Pen">The line.</param>
    public sealed record Circle(string Layer, Point2 Centre, double Radius, Pen Pen) : Primitive(Layer)
    {
        /// <inheritdoc/>
        public override Box Bounds => Box.About(Centre, 2 * Radius, 2 * Radius);
    }

    /// <summary>A flat tint between closed loops, without an edge: inside an odd number of them is filled.</summary>
    /// <param name="Layer">Name of its layer.</param>
    /// <param name="Loops">At least one.</param>
    /// <param name="Fill">The tint.</param>
    public sealed record Region(string Layer, ImmutableArray<Outline> Loops, Colour Fill) : Primitive(Layer)
    {
        /// <inheritdoc/>
        public override Box Bounds => Box.Around(Loops.SelectMany(l => l.Segments));
    }

    /// <summary>One line of lettering, in strokes of a tenth of its height.</summary>
    /// <param name="Layer">Name of its layer.</param>
    /// <param name="Value">What it says.</param>
    /// <param name="At">Where its anchor sits.</param>
    /// <param name="Height">Height of the capitals, mm.</param>
    /// <param name="Colour">Colour of the strokes.</param>
    /// <param name="Align">Which part sits at the anchor.</param>
    /// <param name="Level">Which height sits at the anchor.</param>
    /// <param name="Turn">Reading direction at the anchor, rad, counter-clockwise from x.</param>
    /// <param name="Curvature">
    /// Curvature of the line through the anchor, 1/mm: zero for straight; positive bends to the left of the reading direction,
    /// negative to the right, as the lettering round the outside of a dial does.
    /// </param>
    public sealed record Text(
        string Layer,
        string Value,
        Point2 At,
        double Height,
        Colour Colour,
        Align Align = Align.Left,
        Level Level = Level.Base,
        double Turn = 0,
        double Curvature = 0) : Primitive(Layer)
    {
        /// <summary>The line the strokes are drawn with.</summary>
        public Pen Pen => new(Colour, Height * Letters.StrokeShare);

        /// <summary>The strokes in drawing coordinates, each a run of lines and arcs.</summary>
        public IEnumerable<ImmutableArray<Segment>> Strokes() => Letters.Strokes(this);

        /// <inheritdoc/>
        public override Box Bounds => Box.Around(Strokes().SelectMany(s => s).DefaultIfEmpty(new(At, At, 0)));
    }
}
