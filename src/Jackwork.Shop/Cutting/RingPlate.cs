using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Cutting;

/// <summary>A ring: a round rim with a hole of any shape, such as inside teeth. Lengths mm, angles rad.</summary>
/// <param name="Name">Name engraved on it.</param>
/// <param name="Hole">The hole, counter-clockwise.</param>
/// <param name="HoleRadius">Largest radius of the hole.</param>
/// <param name="Outside">Radius of the rim.</param>
/// <param name="TimingMark">Direction of the radial mark.</param>
/// <param name="Note">A further line of lettering.</param>
public sealed record RingPlate(string Name, Outline Hole, double HoleRadius, double Outside, double TimingMark, string Note)
{
    /// <summary>Paper kept clear round the plate, mm.</summary>
    private const double SheetMargin = 5;

    /// <summary>Its outside.</summary>
    public Outline Rim => Outline.Circle(Point2.Origin, Outside);

    /// <summary>The cutting drawing at full size; both the rim and the hole are on the cut layer.</summary>
    public Drawing Draw()
    {
        var sketch = new Sketch { Layer = Layers.Cut };
        var cut = Pen(Layers.Cut);
        sketch.Loop(Rim, cut);
        sketch.Loop(Hole.Reversed(), cut);
        sketch.Layer = Layers.Engrave;
        var ray = Vec2.FromAngle(TimingMark);
        var land = Outside - HoleRadius;
        sketch.Line(Point2.Origin + (HoleRadius + 0.2 * land) * ray, Point2.Origin + (Outside - 0.2 * land) * ray, Pen(Layers.Engrave));

        // Lettered along the rim, opposite the mark, read from the middle.
        var height = Math.Min(3.5, 0.35 * land);
        var middle = HoleRadius + 0.5 * land;
        sketch.Text($"{Name}  {Note}", Point2.Origin - middle * ray, height, Layers.ColourOf(Layers.Engrave), Align.Centre, Level.Middle, TimingMark - Math.PI / 2, 1 / middle);
        return Drawing.Fitted(Name, SheetMargin, sketch.Marks);
    }

    private static Pen Pen(string layer) => new(Layers.ColourOf(layer), LineWidths.Wide);
}
