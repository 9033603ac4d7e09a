using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Timing;

/// <summary>The small crank in the middle of the turn ring, at the start of the performance, with the way it is turned. Lengths mm.</summary>
internal static class CrankHandle
{
    // Sizes as shares of the radius of the middle.
    private const double Throw = 0.56;
    private const double HubRadius = 0.19;
    private const double KnobRadius = 0.135;
    private const double ArmAtHub = 0.125;
    private const double ArmAtKnob = 0.09;
    private const double ArrowRadius = 0.75;
    private const double ShaftSquare = 0.135;
    private const double ScrewRadius = 0.037;

    /// <summary>Draws it about the origin, in a free circle of radius <paramref name="middle"/>.</summary>
    public static void Draw(Sketch sketch, PerformanceChart chart, double middle)
    {
        var (reach, hubRadius, knobRadius, arrow) = (Throw * middle, HubRadius * middle, KnobRadius * middle, ArrowRadius * middle);
        var (armAtHub, armAtKnob) = (ArmAtHub * middle, ArmAtKnob * middle);
        var (hub, knob) = (Point2.Origin, new Point2(0, reach));
        var brass = Palette.Brass.Over(Palette.Paper, 0.35);
        sketch.Layer = ChartLook.Curves;

        // The arm's sides touch both of its end circles; seen from the middle they lean by the difference of the radii.
        var lean = Math.Asin((armAtHub - armAtKnob) / reach);
        var arm = new Outline(
        [
            Segment.Arc(hub, armAtHub, Math.PI - lean, Math.PI + 2 * lean),
            new(hub + armAtHub * Vec2.FromAngle(lean), knob + armAtKnob * Vec2.FromAngle(lean), 0),
            Segment.Arc(knob, armAtKnob, lean, Math.PI - 2 * lean),
            new(knob + armAtKnob * Vec2.FromAngle(Math.PI - lean), hub + armAtHub * Vec2.FromAngle(Math.PI - lean), 0),
        ]);
        sketch.Region(brass, arm);
        sketch.Loop(arm, ChartLook.Edge);
        foreach (var (centre, radius, fill) in new[] { (hub, hubRadius, brass), (knob, knobRadius, Palette.Walnut.Over(Palette.Paper, 0.45)) })
        {
            sketch.Region(fill, Outline.Circle(centre, radius));
            sketch.Circle(centre, radius, ChartLook.Edge);
        }

        // The end of the shaft: a square, and the screw that holds the knob.
        sketch.Loop(Box.About(hub, ShaftSquare * middle, ShaftSquare * middle).Outline(), ChartLook.Edge);
        sketch.Circle(knob, ScrewRadius * middle, ChartLook.Tick);

        // Clockwise from beside the knob, with a filled head.
        var (from, sweep) = (TurnRing.Direction(0.06), -0.14 * 2 * Math.PI);
        sketch.Arc(hub, arrow, from, sweep, new(Palette.Brass, LineWidths.ExtraWide));
        var tip = hub + arrow * Vec2.FromAngle(from + sweep);
        var ahead = Vec2.FromAngle(from + sweep - Math.PI / 2);
        sketch.Region(Palette.Brass, Outline.Polygon([tip + 2.6 * ahead, tip + 1.1 * ahead.Left, tip - 1.1 * ahead.Left]));

        sketch.Layer = ChartLook.Lettering;
        sketch.Text(PerformanceChart.Turns(chart.CrankTurns), new(0, -hubRadius - 5), ChartLook.Medium, Palette.Ink, Align.Centre, Level.Top);
    }
}
