using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Drawings;
using Jackwork.Stacks;
using static System.FormattableString;
using Level = Jackwork.Shop.Drawings.Level;

namespace Jackwork.Shop.Stacks;

/// <summary>One stack drawn to scale: above its axis in section, below it in view, with its gaps, stations and names.</summary>
/// <remarks>Lines after ISO 128: visible edges wide, hatching, leaders and breaks narrow, the axis as a chain line; rods are not cut lengthwise. Every gap is lettered with its worst case.</remarks>
public sealed class StackSheet
{
    /// <summary>Longest picture, mm; the scale is the largest of <see cref="Scales"/> that keeps to it.</summary>
    private const double Longest = 240;

    /// <summary>Scales: ISO 5455 (from memory).</summary>
    private static readonly double[] Scales = [5, 2, 1, 0.5, 0.2, 0.1, 0.05];

    /// <summary>Height of lettering, distance of neighbouring labels, hatching, margin: mm on the sheet.</summary>
    private const double Letter = 2.5, Row = 4.2, Hatch = 2, Margin = 8;

    /// <summary>How far a board or a piece of the figure is shown beyond the widest thing beside it, and the length of a leader, mm on the sheet.</summary>
    private const double Beyond = 6, Leader = 9;

    private readonly Sketch sketch = new() { Layer = "stack" };
    private readonly Stack stack;
    private readonly double limit;
    private readonly double scale;
    private readonly double tallest;
    private readonly Pen edge = new(Palette.Ink, LineWidths.Wide);
    private readonly Pen thin = new(Palette.Ink, LineWidths.Narrow);

    private StackSheet(Stack stack, double limit)
    {
        (this.stack, this.limit) = (stack, limit);
        var all = stack.Items.Concat(stack.Cores).ToList();
        var length = all.Max(i => i.To) - all.Min(i => i.From);
        var radius = all.Where(i => i.Part.Kind is not (PartKind.Board or PartKind.Figure)).Max(i => i.Outside) / 2;
        scale = Scales.FirstOrDefault(s => s * Math.Max(length, 2 * radius) <= Longest, Scales[^1]);
        tallest = scale * radius + Beyond;
    }

    /// <summary>The sheet of a stack of a proof.</summary>
    public static Drawing Draw(Proof proof, Stack stack)
    {
        var sheet = new StackSheet(stack, proof.Limits.Play);
        sheet.Picture();
        sheet.Above();
        sheet.Below();
        sheet.Legend();
        var title = $"stack of {stack.Name}";
        var fitted = Drawing.Fitted(title, Margin, sheet.sketch.Marks);
        return new(title, fitted.Sheet, Palette.Paper, fitted.Primitives);
    }

    /// <summary>Name of its file: spaces become hyphens.</summary>
    public static string FileName(Stack stack) => stack.Name.Replace(' ', '-');

    private double X(double station) => scale * station;

    // Half the height at which a thing is shown.
    private double Height(StackItem i) => Math.Min(scale * i.Outside / 2, tallest);

    private void Picture()
    {
        foreach (var core in stack.Cores)
        {
            var rod = new Box(new(X(core.From), -scale * core.Outside / 2), new(X(core.To), scale * core.Outside / 2)).Outline();
            sketch.Region(Palette.Paper, rod);
            sketch.Loop(rod, edge);
        }

        // What is wider hides what it is round; neighbours are hatched the other way.
        foreach (var (item, k) in stack.Items.Select((item, k) => (item, k)).OrderBy(p => p.item.Outside))
        {
            Section(item, k % 2 == 0 ? 1 : -1);
        }

        foreach (var (a, b) in Overlaps())
        {
            var (from, to) = (X(Math.Max(a.From, b.From)), X(Math.Min(a.To, b.To)));
            var (low, high) = (scale * Math.Max(a.Bore, b.Bore) / 2, Math.Min(Height(a), Height(b)));
            sketch.Region(Palette.Fault, new Box(new(from, low), new(to, high)).Outline());
        }

        var all = stack.Items.Concat(stack.Cores).ToList();
        sketch.Line(new(X(all.Min(i => i.From)) - Beyond, 0), new(X(all.Max(i => i.To)) + Beyond, 0), thin with { Kind = LineKind.Chain });
    }

    private IEnumerable<(StackItem A, StackItem B)> Overlaps() =>
        stack.Items.SelectMany((a, i) => stack.Items.Skip(i + 1).Select(b => (a, b)))
            .Where(p => Math.Min(p.a.To, p.b.To) - Math.Max(p.a.From, p.b.From) > Stack.Same && p.a.Meets(p.b) && !p.a.IsOneWith(p.b));

    private void Section(StackItem item, int alternate)
    {
        var (from, to, bore, height) = (X(item.From), X(item.To), scale * item.Bore / 2, Height(item));
        var cut = new Box(new(from, bore), new(to, height));
        var view = new Box(new(from, -height), new(to, 0));
        sketch.Region(Tint(item), cut.Outline());
        sketch.Region(Tint(item), view.Outline());
        Hatching(cut, alternate);
        if (item.Grub is { } grub)
        {
            var hole = new Box(new(X(item.Middle) - scale * grub.Diameter / 2, bore), new(X(item.Middle) + scale * grub.Diameter / 2, height));
            sketch.Region(Palette.Paper, hole.Outline());
            sketch.Loop(hole.Outline(), thin);
            sketch.Line(new(X(item.Middle), bore - 1), new(X(item.Middle), height + 2), thin with { Kind = LineKind.Chain });
        }

        foreach (var x in (ReadOnlySpan<double>)[from, to])
        {
            sketch.Line(new(x, bore), new(x, height), edge);
            sketch.Line(new(x, -height), new(x, 0), edge);
        }

        sketch.Line(new(from, bore), new(to, bore), edge);
        foreach (var y in (ReadOnlySpan<double>)[-height, height])
        {
            if (scale * item.Outside / 2 > tallest + Stack.Same)
            {
                Break(from, to, y);
            }
            else
            {
                sketch.Line(new(from, y), new(to, y), edge);
            }
        }
    }

    private static Colour Tint(StackItem item) => item.Role switch
    {
        StackRole.Fixed => Palette.Brass.Over(Palette.Paper, 0.3),
        StackRole.Loose => Palette.Verdigris.Over(Palette.Paper, 0.3),
        _ => Palette.Walnut.Over(Palette.Paper, 0.12),
    };

    // A zigzag where a thing goes on.
    private void Break(double from, double to, double y)
    {
        var m = (from + to) / 2;
        sketch.Polyline([new(from - 1, y), new(m - 0.8, y), new(m - 0.4, y + 1.5), new(m + 0.4, y - 1.5), new(m + 0.8, y), new(to + 1, y)], thin);
    }

    // Lines at 45 degrees, clipped to the box; neighbours slope the other way.
    private void Hatching(Box box, int slope)
    {
        var line = new Pen(Palette.Walnut, LineWidths.Narrow);
        for (var c = Hatch / 2; c < box.Width + box.Height; c += Hatch)
        {
            var (x0, x1) = (Math.Max(0, c - box.Height), Math.Min(c, box.Width));
            Point2 At(double x) => new(slope > 0 ? box.Max.X - x : box.Min.X + x, box.Max.Y - (c - x));
            if (x1 - x0 > Stack.Same)
            {
                sketch.Line(At(x0), At(x1), line);
            }
        }
    }

    // Names and gaps in one row of upright lettering, each with a leader.
    private void Above()
    {
        var labels = stack.Items.Select(i => (X: X(i.Middle), Y: Height(i), Text: i.Name, Colour: Palette.Ink)).ToList();
        foreach (var run in stack.Runs.Where(r => !r.IsOpen))
        {
            var (a, b, _) = run.Gaps.MaxBy(g => g.Gap);
            var middle = X((a.To + b.From) / 2);
            var (g, held) = (run.Range, run.Range.Nominal < 0 ? "overlap" : run.Held.Any() ? "play" : "gap");
            var wide = run.Held.Any() && run.Range.Nominal > limit && !stack.IsSteep;
            var y = Math.Min(Height(a), Height(b)) / 2 + scale * Math.Max(a.Bore, b.Bore) / 4;
            var colour = wide || g.Nominal < 0 ? Palette.Fault : Palette.Verdigris;
            labels.Add((middle, y, g.Nominal < 0 ? Invariant($"{held} {-g.Nominal:0.0#}") : Invariant($"{held} {g.Nominal:0.0#} ({g.Least:0.0#} to {g.Most:0.0#})"), colour));
            Arrows(Math.Min(X(a.To), X(b.From)), Math.Max(X(a.To), X(b.From)), y, colour);
        }

        labels.Sort((p, q) => p.X.CompareTo(q.X));
        var places = LabelRow.Spread([.. labels.Select(l => l.X)], Row);
        for (var k = 0; k < labels.Count; k++)
        {
            var (x, y, text, colour) = labels[k];
            sketch.Polyline([new(x, y), new(x, tallest + 1), new(places[k], tallest + Leader), new(places[k], tallest + Leader + 1)], new(colour, LineWidths.Narrow));
            sketch.Text(text, new(places[k], tallest + Leader + 2), Letter, colour, Align.Left, Level.Middle, Math.PI / 2);
        }
    }

    // The width of a gap: arrows at its faces, from outside where it is narrow.
    private void Arrows(double from, double to, double y, Colour colour)
    {
        const double head = 1.6;
        var inside = to - from > 4 * head;
        var pen = new Pen(colour, LineWidths.Narrow);
        sketch.Line(new(inside ? from : from - 2 * head, y), new(inside ? to : to + 2 * head, y), pen);
        foreach (var (x, way) in (ReadOnlySpan<(double, double)>)[(from, inside ? 1 : -1), (to, inside ? -1 : 1)])
        {
            sketch.Region(colour, Outline.Polygon(way > 0 ? [new(x, y), new(x + head, y - 0.3), new(x + head, y + 0.3)] : [new(x, y), new(x - head, y + 0.3), new(x - head, y - 0.3)]));
        }
    }

    // Stations of all faces: running dimensions.
    private void Below()
    {
        var faces = stack.Items.Concat(stack.Cores).SelectMany(i => new[] { (At: i.From, i), (At: i.To, i) })
            .GroupBy(f => Math.Round(f.At, 3)).OrderBy(g => g.Key).Select(g => (At: g.Key, Y: g.Max(f => f.i.Role == StackRole.Core ? scale * f.i.Outside / 2 : Height(f.i)))).ToList();
        var places = LabelRow.Spread([.. faces.Select(f => X(f.At))], Row);
        for (var k = 0; k < faces.Count; k++)
        {
            sketch.Polyline([new(X(faces[k].At), -faces[k].Y - 0.8), new(X(faces[k].At), -tallest - 1), new(places[k], -tallest - Leader), new(places[k], -tallest - Leader - 1)], thin);
            sketch.Text(Invariant($"{faces[k].At:0.0#}"), new(places[k], -tallest - Leader - 2), Letter, Palette.Ink, Align.Right, Level.Middle, Math.PI / 2);
        }
    }

    private void Legend()
    {
        var all = stack.Items.Concat(stack.Cores).ToList();
        var (x, y) = (X(all.Min(i => i.From)), -tallest - Leader - 18);
        var (p, d) = (stack.Axis.Through, stack.Axis.Along);
        var ratio = scale >= 1 ? Invariant($"{scale:0.##}:1") : Invariant($"1:{1 / scale:0.##}");
        Line(stack.Name, 1.4 * Letter, Palette.Ink);
        Line(Invariant($"Scale {ratio}, mm. Stations from ({p.X:0.##}, {p.Y:0.##}, {p.Z:0.##}) along ({d.X:0.###}, {d.Y:0.###}, {d.Z:0.###}). Gaps as drawn; in brackets the worst case of the thicknesses"), Letter, Palette.Walnut);
        Line("Upper half in section, lower half in view", Letter, Palette.Walnut);
        foreach (var core in stack.Cores)
        {
            Line(Invariant($"{core.Name}: {core.Outside:0.##} mm thick, {core.Length:0.##} mm long"), Letter, Palette.Walnut);
        }

        if (stack.Float is { } play && !stack.IsSteep)
        {
            Line(Invariant($"End float {play:0.0#} mm"), Letter, play > limit ? Palette.Fault : Palette.Walnut);
        }

        foreach (var grub in stack.Grubs)
        {
            var open = string.Join(", ", grub.Open.Take(3).Select(o => Invariant($"{Proof.Deg(o.From):0}° to {Proof.Deg(o.To):0}°")));
            var more = grub.Open.Count > 3 ? Invariant($" and {grub.Open.Count - 3} more") : "";
            Line(Invariant($"{grub.Hub.Name}: {grub.Hub.Grub!.Name}, key {grub.Hub.Grub.Key:0.#} mm, ") + (grub.IsReachable ? $"reached at crank {open}{more}" : $"never reached, {grub.InTheWay} is in the way"), Letter, grub.IsReachable ? Palette.Walnut : Palette.Fault);
        }

        void Line(string text, double height, Colour colour)
        {
            sketch.Text(text, new(x, y), height, colour, Align.Left, Level.Top);
            y -= 1.8 * height;
        }
    }
}
