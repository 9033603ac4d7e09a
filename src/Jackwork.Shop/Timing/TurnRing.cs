using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;

namespace Jackwork.Shop.Timing;

/// <summary>
/// The turn ring: the whole performance once round, clockwise from the top, as rings about the crank, one a member. The height of a curve
/// above the foot of its ring is the member's position. Lengths mm.
/// </summary>
public static class TurnRing
{
    // Radius of the middle where the crank is drawn; with few rings the middle grows, so that the picture keeps its proportions.
    private const double Middle = 26;
    private const double MiddlePerMissingRing = 7;
    private const int FullRings = 5;

    // All rings together take about this much, but no ring is thinner or thicker than the two limits.
    private const double AllRings = 80;
    private const double ThinnestRing = 10;
    private const double ThickestRing = 16;

    // From the foot of a ring: its name, then its curve.
    private const double NameLane = 4.6;
    private const double NameFoot = 1.3;
    private const double CurveGap = 1;
    private const double RuleInset = 0.9;
    private const double RuleLane = 5.2;

    // From the rim outwards: ticks, degrees, crank turns.
    private const double DegreeAt = 7;
    private const double CrankTick = 12;
    private const double CrankAt = 16.5;
    private const double Outside = 19.6;

    private const int MostLabels = 36;
    private const int LeastSteps = 1440;

    // A name takes at most this share of its ring's circumference.
    private const double NameShare = 0.9;

    /// <summary>Draws the ring.</summary>
    public static Drawing Draw(PerformanceChart chart)
    {
        var rings = chart.Rows.Length;
        var thickness = Math.Clamp(AllRings / rings, ThinnestRing, ThickestRing);
        var middle = Middle + MiddlePerMissingRing * Math.Max(0, FullRings - rings);
        var lanes = chart.Lanes;
        var rim = middle + rings * thickness;
        var edge = rim + lanes.Count * RuleLane;
        var degrees = TurnScale.Degrees(chart, MostLabels);
        var crank = TurnScale.Crank(chart, MostLabels);
        var sketch = new Sketch();
        double FootOf(int ring) => middle + ring * thickness;

        sketch.Layer = ChartLook.Tints;
        for (var i = 0; i < rings; i++)
        {
            Tint(sketch, chart, chart.Rows[i], FootOf(i) + NameLane, FootOf(i) + thickness);
        }

        sketch.Layer = ChartLook.Scales;
        for (var i = 0; i < rings; i++)
        {
            sketch.Circle(Point2.Origin, FootOf(i) + NameLane, ChartLook.Tick);
            foreach (var (at, _) in degrees.Major)
            {
                Spoke(sketch, at, FootOf(i) + NameLane, FootOf(i) + thickness, ChartLook.Grid);
            }
        }

        for (var i = 0; i < rings; i++)
        {
            foreach (var (from, to) in chart.Rows[i].Moves.Select(m => m.Share(chart.CrankTurns)).Where(s => s.To - s.From < 1))
            {
                Spoke(sketch, from, FootOf(i) + NameLane, FootOf(i) + thickness, ChartLook.MoveEnd);
                Spoke(sketch, to, FootOf(i) + NameLane, FootOf(i) + thickness, ChartLook.MoveEnd);
            }
        }

        for (var i = 0; i <= rings; i++)
        {
            sketch.Circle(Point2.Origin, middle + i * thickness, ChartLook.Edge);
        }

        Scales(sketch, degrees, crank, edge);

        sketch.Layer = ChartLook.Curves;
        for (var i = 0; i < rings; i++)
        {
            sketch.Loop(Curve(chart.Rows[i], FootOf(i) + NameLane, FootOf(i) + thickness), ChartLook.Curve);
        }

        sketch.Layer = ChartLook.Rules;
        for (var i = 0; i < lanes.Count; i++)
        {
            Lane(sketch, chart, lanes[i], i, rim + i * RuleLane);
        }

        CrankHandle.Draw(sketch, chart, middle);
        sketch.Layer = ChartLook.Lettering;
        for (var i = 0; i < rings; i++)
        {
            Name(sketch, chart.Rows[i], FootOf(i) + NameFoot);
        }

        return Mount(sketch, chart, edge + Outside);
    }

    /// <summary>The direction of a share of the performance: clockwise from the top, rad.</summary>
    internal static double Direction(double share) => Math.PI / 2 - 2 * Math.PI * share;

    private static Point2 At(double share, double radius) => Point2.Origin + radius * Vec2.FromAngle(Direction(share));

    private static void Spoke(Sketch sketch, double share, double from, double to, Pen pen) => sketch.Line(At(share, from), At(share, to), pen);

    // The stretch of a ring between two shares, as loops for an even-odd fill.
    private static ImmutableArray<Outline> Sector(double from, double to, double inner, double outer)
    {
        if (to - from >= 1)
        {
            return [Outline.Circle(Point2.Origin, outer), Outline.Circle(Point2.Origin, inner)];
        }

        // Each arc in two halves, so that none is near a full turn.
        var (start, half) = (Direction(from), -Math.PI * (to - from));
        return
        [
            new([
                Segment.Arc(Point2.Origin, outer, start, half),
                Segment.Arc(Point2.Origin, outer, start + half, half),
                new(At(to, outer), At(to, inner), 0),
                Segment.Arc(Point2.Origin, inner, start + 2 * half, -half),
                Segment.Arc(Point2.Origin, inner, start + half, -half),
                new(At(from, inner), At(from, outer), 0),
            ]),
        ];
    }

    private static Outline Curve(ChartRow row, double foot, double top) =>
        Outline.Polygon(Thinning.Thin([.. row.Curve(LeastSteps).Select(p => At(p.Turn, double.Lerp(foot, top - CurveGap, p.Height)))], Thinning.Tolerance));

    private static void Tint(Sketch sketch, PerformanceChart chart, ChartRow row, double foot, double top)
    {
        foreach (var (from, to) in row.Moves.Select(m => m.Share(chart.CrankTurns)))
        {
            sketch.Region(ChartLook.MoveTint, Sector(from, to, foot, top));
        }

        if (!row.IsConstant)
        {
            sketch.Region(ChartLook.CurveTint, Curve(row, foot, top), Outline.Circle(Point2.Origin, foot));
        }
    }

    private static void Name(Sketch sketch, ChartRow row, double radius)
    {
        var range = row.IsConstant ? row.Label(row.Min) : $"{ChartRow.Number(row.Min)} – {row.Label(row.Max)}";
        var (name, height) = (row.Name, ChartLook.Small);
        for (var kept = name.Length - 1; Letters.Width($"{name}   {range}", height) > NameShare * 2 * Math.PI * radius && kept > 0; kept--)
        {
            name = row.Name[..kept] + "...";
        }

        // Lettering starts just past the top and follows the ring, bending to the right.
        double Round(string words, double from, Colour colour)
        {
            var share = from / (2 * Math.PI * radius);
            sketch.Text(words, At(share, radius), height, colour, Align.Left, Level.Base, Direction(share) - Math.PI / 2, -1 / radius);
            return from + Letters.Width(words, height);
        }

        var end = Round(name, 1.5, Palette.Ink);
        Round(range, end + 2 * height, Palette.Walnut);
    }

    private static void Lane(Sketch sketch, PerformanceChart chart, IGrouping<string, RuleBand> lane, int index, double foot)
    {
        var (inner, outer) = (foot + RuleInset, foot + RuleLane - RuleInset);
        foreach (var band in lane)
        {
            var (from, to) = band.Span.Share(chart.CrankTurns);
            var loops = Sector(from, to, inner, outer);
            sketch.Region(ChartLook.RuleTint(band.Broken), loops);
            foreach (var loop in loops)
            {
                sketch.Loop(loop, ChartLook.RuleEdge(band.Broken));
            }

            // The rule's letter sits in its band where the band is long enough to hold it.
            var height = outer - inner - 1;
            if ((to - from) * 2 * Math.PI * inner > 2 * height)
            {
                var share = (from + to) / 2;
                sketch.Text(RuleLetter(index), At(share, (inner + outer) / 2), height, Palette.Ink, Align.Centre, Level.Middle, Upright(Direction(share) - Math.PI / 2));
            }
        }
    }

    private static double Upright(double turn) => Math.IEEERemainder(turn, Math.PI);

    private static string RuleLetter(int index) => ((char)('A' + index % 26)).ToString() + (index < 26 ? "" : $"{index / 26}");

    private static void Scales(Sketch sketch, TurnScale degrees, TurnScale crank, double edge)
    {
        sketch.Circle(Point2.Origin, edge, ChartLook.Edge);
        foreach (var at in degrees.Minor)
        {
            Spoke(sketch, at, edge, edge + 1.3, ChartLook.Tick);
        }

        foreach (var (at, _) in degrees.Major)
        {
            Spoke(sketch, at, edge, edge + 2.6, ChartLook.Edge);
        }

        foreach (var at in crank.Minor.Concat(crank.Major.Select(m => m.At)))
        {
            Spoke(sketch, at, edge + CrankTick, edge + CrankTick + 1.5, new(Palette.Brass, LineWidths.ExtraWide));
        }

        sketch.Layer = ChartLook.Lettering;
        foreach (var (at, label) in degrees.Major.Where(m => m.At < 1))
        {
            sketch.Text(label, At(at, edge + DegreeAt), ChartLook.Small, Palette.Ink, Align.Centre, Level.Middle);
        }

        foreach (var (at, label) in crank.Major.Where(m => m.At < 1))
        {
            sketch.Text(label, At(at, edge + CrankAt), ChartLook.Medium, Palette.Walnut, Align.Centre, Level.Middle);
        }
    }

    // Title above, what the letters and scales mean below.
    private static Drawing Mount(Sketch sketch, PerformanceChart chart, double radius)
    {
        var half = Math.Max(radius, 75) + ChartLook.Margin;
        var width = 2 * (half - ChartLook.Margin);
        var left = ChartLook.Margin - half;
        var trial = new Sketch();
        var titleDepth = -ChartLook.Title(trial, chart, Point2.Origin, width);
        var top = radius + titleDepth + ChartLook.Margin;
        ChartLook.Title(sketch, chart, new(left, top - ChartLook.Margin), width);

        sketch.Layer = ChartLook.Lettering;
        var y = -radius - 4;
        foreach (var (lane, i) in chart.Lanes.Select((l, i) => (l, i)))
        {
            var broken = lane.Any(b => b.Broken);
            sketch.Text(RuleLetter(i), new(left, y), ChartLook.Small, broken ? Palette.Fault : Palette.Ink, Align.Left, Level.Top);
            y = ChartLook.Lines(sketch, Wrapping.Lines(lane.Key + (broken ? " (broken)" : ""), ChartLook.Small, width - 6), new(left + 6, y), ChartLook.Small, broken ? Palette.Fault : Palette.Ink) - 0.8;
        }

        var key = $"Clockwise from the top. Inner scale: degrees of {chart.ShaftName}; outer scale: turns of the crank. Tinted ground: the member moves.";
        y = ChartLook.Lines(sketch, Wrapping.Lines(key, ChartLook.Small, width), new(left, y - 1), ChartLook.Small, Palette.Walnut);
        return new(chart.Title + ", turn ring", new(new(-half, y - ChartLook.Margin + ChartLook.Small), new(half, top)), Palette.Paper, sketch.Marks);
    }
}
