using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;
using static System.FormattableString;

namespace Jackwork.Shop.Cutting;

/// <summary>A flat part to be cut: a cam, gear or lever with its bore about the origin. Lengths mm, angles rad, seen from its engraved face.</summary>
/// <param name="Name">Name engraved on it.</param>
/// <param name="Outline">Its rim as it shall be cut, running once round the origin.</param>
/// <param name="BoreDiameter">Diameter of the hole for the shaft, at the origin, mm; null for none.</param>
/// <param name="TimingMark">Direction of the radial mark by which it is set on its shaft, rad counter-clockwise from x; none leaves it out.</param>
/// <param name="Holes">Further holes.</param>
/// <param name="Notes">Further lines of lettering, such as module and number of teeth.</param>
public sealed record ProfilePlate(
    string Name,
    Outline Outline,
    double? BoreDiameter,
    double? TimingMark,
    ImmutableArray<Hole> Holes,
    ImmutableArray<string> Notes)
{
    /// <summary>What is cut out of it besides round holes, each counter-clockwise.</summary>
    public ImmutableArray<Outline> Openings { get; init; } = [];

    // Heights of engraved capitals tried, mm: the nominal heights of ISO 3098-0:1997 (from memory), each the one before over root 2.
    private static readonly double[] Heights = [5, 3.5, 2.5, 1.8];

    // Half the length of the crossed lines at the middle of a hole, mm; and the most of the hole's radius they take.
    private const double CentreMark = 1.5;
    private const double CentreMarkShare = 0.6;

    // What a timing mark stops short of bore and rim, mm; and the most of the land between them.
    private const double MarkStop = 1;
    private const double MarkStopShare = 0.15;

    // Paper kept clear round the plate, mm.
    private const double SheetMargin = 5;

    /// <summary>The cutting drawing at full size.</summary>
    /// <exception cref="ArgumentException">The bore or a hole has no size, or breaks through the outline.</exception>
    public PlateDrawing Draw()
    {
        ImmutableArray<Hole> all = [.. BoreDiameter is { } bore ? [new(Point2.Origin, bore)] : (Hole[])[], .. Holes];
        foreach (var hole in all)
        {
            Check(hole);
        }

        var sketch = new Sketch { Layer = Layers.Cut };
        sketch.Loop(Outline, PenOf(Layers.Cut));
        foreach (var opening in Openings)
        {
            sketch.Loop(opening.Reversed(), PenOf(Layers.Cut));
        }

        sketch.Layer = Layers.Drill;
        foreach (var hole in all)
        {
            sketch.Circle(hole.Centre, hole.Diameter / 2, PenOf(Layers.Drill));
        }

        sketch.Layer = Layers.Engrave;
        foreach (var hole in all)
        {
            var arm = Math.Min(CentreMark, CentreMarkShare * hole.Diameter / 2);
            sketch.Line(hole.Centre - new Vec2(arm, 0), hole.Centre + new Vec2(arm, 0), PenOf(Layers.Engrave));
            sketch.Line(hole.Centre - new Vec2(0, arm), hole.Centre + new Vec2(0, arm), PenOf(Layers.Engrave));
        }

        ImmutableArray<Segment> marks = TimingMark is { } angle && BoreDiameter is { } across ? [MarkAt(angle, across / 2)] : [];
        foreach (var mark in marks)
        {
            sketch.Line(mark.Start, mark.End, PenOf(Layers.Engrave));
        }

        var leftOff = Letter(sketch, new(Outline, BoreDiameter / 2 ?? 0, all, Openings, marks));
        return new(Drawing.Fitted(Name, SheetMargin, sketch.Marks), leftOff);
    }

    private void Check(Hole hole)
    {
        var radius = hole.Diameter / 2;
        var where = Invariant($"The hole of {hole.Diameter} mm at ({hole.Centre.X}, {hole.Centre.Y}) mm in '{Name}'");
        if (!(radius > 0 && double.IsFinite(radius)))
        {
            throw new ArgumentException(Invariant($"{where} must have a diameter of more than 0 mm."));
        }

        var edge = Outline.DistanceTo(hole.Centre);
        if (!(edge > radius) || Math.Abs(Crossing.Winding(Outline, hole.Centre, edge)) != 1)
        {
            throw new ArgumentException(Invariant($"{where} lies {edge:0.###} mm from the outline; its middle must be inside and more than {radius} mm away."));
        }
    }

    private Segment MarkAt(double angle, double bore)
    {
        var rim = Openings.Select(o => Crossing.AlongRay(o, angle)).Append(Crossing.AlongRay(Outline, angle)).Min();
        var stop = Math.Min(MarkStop, MarkStopShare * (rim - bore));
        var ray = Vec2.FromAngle(angle);
        return new(Point2.Origin + (bore + stop) * ray, Point2.Origin + (rim - stop) * ray, 0);
    }

    // All lines as one block if there is room at any height; otherwise each line where it finds room.
    private ImmutableArray<string> Letter(Sketch sketch, PlateRoom room)
    {
        ImmutableArray<string> lines = [Name, .. Notes];
        lines = lines.RemoveAll(string.IsNullOrWhiteSpace);
        if (lines.IsEmpty || PlaceBlock(sketch, room, lines))
        {
            return [];
        }

        return [.. lines.Where(line => !PlaceBlock(sketch, room, [line]))];
    }

    private static bool PlaceBlock(Sketch sketch, PlateRoom room, ImmutableArray<string> lines)
    {
        foreach (var height in Heights)
        {
            // Further lines stand one nominal height lower than the first.
            var small = Heights.FirstOrDefault(h => h < height, height);
            double HeightOf(int i) => i == 0 ? height : small;
            var width = lines.Select((l, i) => Letters.Width(l, HeightOf(i))).Max();

            // Feet of the lines below the top of the block; each leaves room for the tails above it.
            var feet = new double[lines.Length];
            for (var i = 0; i < lines.Length; i++)
            {
                feet[i] = i == 0 ? height : feet[i - 1] + Letters.TailShare * HeightOf(i - 1) + (Letters.LineShare - Letters.TailShare) * HeightOf(i);
            }

            var depth = feet[^1] + Letters.TailShare * HeightOf(lines.Length - 1);
            if (room.Find(width, depth) is not { } patch)
            {
                continue;
            }

            room.Take(patch);
            for (var i = 0; i < lines.Length; i++)
            {
                var foot = patch.Centre + new Vec2(0, depth / 2 - feet[i]).Turned(patch.Turn);
                sketch.Text(lines[i], foot, HeightOf(i), Layers.ColourOf(Layers.Engrave), Align.Centre, Level.Base, patch.Turn);
            }

            return true;
        }

        return false;
    }

    private static Pen PenOf(string layer) => new(Layers.ColourOf(layer), LineWidths.Wide);
}

/// <summary>A plate's cutting drawing, and the lines of lettering it had no room for at the smallest height.</summary>
/// <param name="Drawing">The drawing, the middle of the shaft at its origin.</param>
/// <param name="LeftOff">Lines that are not on it; empty when all are.</param>
public sealed record PlateDrawing(Drawing Drawing, ImmutableArray<string> LeftOff);
