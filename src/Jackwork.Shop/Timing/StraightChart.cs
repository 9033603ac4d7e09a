using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;

namespace Jackwork.Shop.Timing;

/// <summary>The straight timing chart: one strip a member, the performance from left to right, rules below. Lengths mm.</summary>
public static class StraightChart
{
    // The sheet is as wide as A4 lying down and as high as it needs; strips keep their height.
    private const double Width = 297;
    private const double NameWidth = 50;
    private const double LabelWidth = 17;
    private const double StripHeight = 18;
    private const double StripGap = 4;
    private const double Inset = 1.2;
    private const double Left = ChartLook.Margin + NameWidth + LabelWidth;
    private const double Right = Width - ChartLook.Margin;
    private const int MostLabels = 18;
    private const int LeastSteps = 360;

    /// <summary>Draws the chart.</summary>
    public static Drawing Draw(PerformanceChart chart)
    {
        // Layers are painted in the order in which they first appear, so tints come first.
        var sketch = new Sketch();
        var degrees = TurnScale.Degrees(chart, MostLabels);
        var crank = TurnScale.Crank(chart, MostLabels);
        var lanes = chart.Lanes.Select(l => (Bands: l.ToList(), Words: Wrapping.Lines(l.Key, ChartLook.Small, NameWidth + LabelWidth - 4))).ToList();

        var titled = new Sketch();
        var top = ChartLook.Title(titled, chart, new(ChartLook.Margin, -ChartLook.Margin), Width - 2 * ChartLook.Margin) - 9;
        var strips = chart.Rows.Select((_, i) => top - i * (StripHeight + StripGap)).ToList();
        var foot = strips[^1] - StripHeight;
        var laneTops = new List<double>();
        var below = foot - StripGap;
        foreach (var lane in lanes)
        {
            laneTops.Add(below);
            below -= LaneHeight(lane.Bands, lane.Words.Count);
        }

        var axis = lanes.Count == 0 ? foot : below;

        sketch.Layer = ChartLook.Tints;
        for (var i = 0; i < strips.Count; i++)
        {
            Tint(sketch, chart, chart.Rows[i], strips[i]);
        }

        sketch.Layer = ChartLook.Scales;
        foreach (var (at, _) in degrees.Major)
        {
            sketch.Line(new(X(at), top), new(X(at), axis), ChartLook.Grid);
        }

        for (var i = 0; i < strips.Count; i++)
        {
            MoveEnds(sketch, chart, chart.Rows[i], strips[i]);
        }

        foreach (var y in strips)
        {
            sketch.Line(new(Left, y - StripHeight), new(Right, y - StripHeight), ChartLook.Edge);
            sketch.Line(new(Left, y), new(Right, y), ChartLook.Grid);
        }

        sketch.Layer = ChartLook.Curves;
        for (var i = 0; i < strips.Count; i++)
        {
            sketch.Polyline(Curve(chart.Rows[i], strips[i]), ChartLook.Curve);
        }

        sketch.Layer = ChartLook.Rules;
        for (var i = 0; i < lanes.Count; i++)
        {
            Bands(sketch, chart, lanes[i].Bands, laneTops[i], LaneHeight(lanes[i].Bands, lanes[i].Words.Count), top, foot);
        }

        sketch.Layer = ChartLook.Lettering;
        for (var i = 0; i < strips.Count; i++)
        {
            Name(sketch, chart.Rows[i], strips[i]);
        }

        for (var i = 0; i < lanes.Count; i++)
        {
            var y = ChartLook.Lines(sketch, lanes[i].Words, new(ChartLook.Margin, laneTops[i] - 1.5), ChartLook.Small, Palette.Ink);
            if (lanes[i].Bands.Any(b => b.Broken))
            {
                sketch.Text("broken", new(ChartLook.Margin, y), ChartLook.Small, Palette.Fault, Align.Left, Level.Top);
            }
        }

        CrankScale(sketch, crank, top);
        var end = DegreeScale(sketch, degrees, chart.ShaftName, axis) - 5;
        sketch.Layer = ChartLook.Lettering;
        sketch.Text("Tinted ground: the member moves. Plain ground: it dwells.", new(ChartLook.Margin, end), ChartLook.Small, Palette.Walnut, Align.Left, Level.Top);

        var bottom = end - ChartLook.Small - ChartLook.Margin;
        return new(chart.Title + ", timing chart", new(new(0, bottom), new(Width, 0)), Palette.Paper, [.. sketch.Marks, .. titled.Marks]);
    }

    private static double X(double share) => double.Lerp(Left, Right, share);

    private static double LaneHeight(List<RuleBand> bands, int words)
    {
        var lines = words + (bands.Any(b => b.Broken) ? 1 : 0);
        return ChartLook.BlockHeight(lines, ChartLook.Small) + 4;
    }

    private static List<Point2> Curve(ChartRow row, double top)
    {
        var points = row.Curve(LeastSteps).Select(p => new Point2(X(p.Turn), double.Lerp(top - StripHeight + Inset, top - Inset, p.Height)));
        return [.. Thinning.Thin([.. points], Thinning.Tolerance)];
    }

    private static void Tint(Sketch sketch, PerformanceChart chart, ChartRow row, double top)
    {
        foreach (var (from, to) in row.Moves.SelectMany(m => m.Shares(chart.CrankTurns)))
        {
            sketch.Region(ChartLook.MoveTint, new Box(new(X(from), top - StripHeight), new(X(to), top)).Outline());
        }

        if (!row.IsConstant)
        {
            sketch.Region(ChartLook.CurveTint, Outline.Polygon([.. Curve(row, top), new(Right, top - StripHeight), new(Left, top - StripHeight)]));
        }
    }

    private static void MoveEnds(Sketch sketch, PerformanceChart chart, ChartRow row, double top)
    {
        foreach (var (from, to) in row.Moves.Select(m => m.Share(chart.CrankTurns)).Where(s => s.To - s.From < 1))
        {
            sketch.Line(new(X(from), top), new(X(from), top - StripHeight), ChartLook.MoveEnd);
            sketch.Line(new(X(to <= 1 ? to : to - 1), top), new(X(to <= 1 ? to : to - 1), top - StripHeight), ChartLook.MoveEnd);
        }
    }

    private static void Name(Sketch sketch, ChartRow row, double top)
    {
        var (height, lines) = Wrapping.Fit(row.Name, NameWidth - 2, 3, ChartLook.Medium, ChartLook.Small);
        var middle = top - StripHeight / 2;
        ChartLook.Lines(sketch, lines, new(ChartLook.Margin, middle + ChartLook.BlockHeight(lines.Count, height) / 2), height, Palette.Ink);
        if (row.IsConstant)
        {
            sketch.Text(row.Label(row.Min), new(Left - 2, middle), ChartLook.Small, Palette.Walnut, Align.Right, Level.Middle);
            return;
        }

        sketch.Text(row.Label(row.Max), new(Left - 2, top - Inset), ChartLook.Small, Palette.Walnut, Align.Right, Level.Top);
        sketch.Text(row.Label(row.Min), new(Left - 2, top - StripHeight), ChartLook.Small, Palette.Walnut, Align.Right);
    }

    // A broken rule's stretch is marked through the strips as well, so the eye finds the members concerned.
    private static void Bands(Sketch sketch, PerformanceChart chart, List<RuleBand> bands, double top, double height, double stripsTop, double stripsFoot)
    {
        foreach (var band in bands)
        {
            foreach (var (from, to) in band.Span.Shares(chart.CrankTurns))
            {
                var box = new Box(new(X(from), top - height + 1), new(X(to), top - 1)).Outline();
                sketch.Region(ChartLook.RuleTint(band.Broken), box);
                sketch.Loop(box, ChartLook.RuleEdge(band.Broken));
                foreach (var x in band.Broken ? new[] { X(from), X(to) } : [])
                {
                    sketch.Line(new(x, stripsTop), new(x, stripsFoot), new(Palette.Fault, LineWidths.Wide, LineKind.Dashed));
                }
            }
        }
    }

    private static void CrankScale(Sketch sketch, TurnScale crank, double top)
    {
        sketch.Layer = ChartLook.Scales;
        foreach (var at in crank.Minor.Concat(crank.Major.Select(m => m.At)))
        {
            sketch.Line(new(X(at), top), new(X(at), top + 2), ChartLook.Tick);
        }

        sketch.Layer = ChartLook.Lettering;
        foreach (var (at, label) in crank.Major)
        {
            sketch.Text(label, new(X(at), top + 3), ChartLook.Small, Palette.Ink, Align.Centre);
        }

        sketch.Text("turns of the crank", new(Left - 6, top + 3), ChartLook.Small, Palette.Walnut, Align.Right);
    }

    // Returns the foot of what it wrote.
    private static double DegreeScale(Sketch sketch, TurnScale degrees, string shaft, double axis)
    {
        sketch.Layer = ChartLook.Scales;
        sketch.Line(new(Left, axis), new(Right, axis), ChartLook.Edge);
        foreach (var at in degrees.Minor)
        {
            sketch.Line(new(X(at), axis), new(X(at), axis - 1.2), ChartLook.Tick);
        }

        sketch.Layer = ChartLook.Lettering;
        foreach (var (at, label) in degrees.Major)
        {
            sketch.Text(label, new(X(at), axis - 3), ChartLook.Small, Palette.Ink, Align.Centre, Level.Top);
        }

        sketch.Layer = ChartLook.Scales;
        foreach (var (at, _) in degrees.Major)
        {
            sketch.Line(new(X(at), axis), new(X(at), axis - 2.2), ChartLook.Tick);
        }

        sketch.Layer = ChartLook.Lettering;
        var words = Wrapping.Lines("degrees of " + shaft, ChartLook.Small, NameWidth + LabelWidth - 8);
        foreach (var (line, i) in words.Select((w, i) => (w, i)))
        {
            sketch.Text(line, new(Left - 6, axis - 3 - i * Letters.LineShare * ChartLook.Small), ChartLook.Small, Palette.Walnut, Align.Right, Level.Top);
        }

        return axis - 3 - ChartLook.BlockHeight(words.Count, ChartLook.Small);
    }
}
