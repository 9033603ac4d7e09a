using Jackwork.Geometry;

namespace Jackwork.Shop.Views;

/// <summary>Lines of a drawing, none over another: of what is added only the stretches that no earlier line covers are kept.</summary>
internal sealed class LineSet
{
    /// <summary>Lines nearer to each other than this, mm, are one: a quarter of a line's width at full size, more than a bearing's play.</summary>
    private const double Coincident = 0.06;

    /// <summary>What is left of a line must be longer than this, mm, to be drawn.</summary>
    private const double Shortest = 0.05;

    /// <summary>Size of a cell of the grid, mm.</summary>
    private const double Cell = 5;

    private readonly Dictionary<(int, int), List<int>> cells = [];
    private readonly List<(Point2 From, Point2 To)> lines = [];
    private readonly HashSet<int> near = [];

    /// <summary>Adds a line and gives back what of it was new, in order.</summary>
    public IReadOnlyList<(Point2 From, Point2 To)> Add(Point2 from, Point2 to)
    {
        var length = from.DistanceTo(to);
        if (length == 0)
        {
            return [];
        }

        var along = (to - from) / length;
        List<(double From, double To)> open = [(0, length)];
        near.Clear();
        foreach (var cell in CellsOf(from, to))
        {
            near.UnionWith(cells.GetValueOrDefault(cell, []));
        }

        foreach (var k in near)
        {
            if (Covered(from, along, length, lines[k]) is { } c)
            {
                open = [.. open.SelectMany(o => ((double From, double To)[])[(o.From, Math.Min(o.To, c.From)), (Math.Max(o.From, c.To), o.To)]).Where(o => o.To > o.From)];
            }
        }

        var kept = new List<(Point2 From, Point2 To)>();
        foreach (var o in open.Where(o => o.To - o.From > Math.Min(Shortest, length / 2)))
        {
            var line = (from + o.From * along, from + o.To * along);
            kept.Add(line);
            foreach (var cell in CellsOf(line.Item1, line.Item2))
            {
                if (!cells.TryGetValue(cell, out var here))
                {
                    cells[cell] = here = [];
                }

                here.Add(lines.Count);
            }

            lines.Add(line);
        }

        return kept;
    }

    /// <summary>Whether a line runs through a point, within the tolerance.</summary>
    public bool IsOn(Point2 p) => CellsOf(p, p).SelectMany(c => cells.GetValueOrDefault(c, [])).Any(k => new Segment(lines[k].From, lines[k].To, 0).DistanceTo(p) < Coincident);

    // The stretch of a line, mm from its start, along which another runs within the tolerance; null for none.
    private static (double From, double To)? Covered(Point2 start, Vec2 along, double length, (Point2 From, Point2 To) other)
    {
        var (a, b) = ((other.From - start).Dot(along), (other.To - start).Dot(along));
        var (p, q) = ((other.From - start).Cross(along), (other.To - start).Cross(along));
        if (a > b)
        {
            (a, b, p, q) = (b, a, q, p);
        }

        var (from, to) = (Math.Max(0, a), Math.Min(length, b));
        if (to <= from)
        {
            return null;
        }

        double Off(double t) => Math.Abs(p + (q - p) * (t - a) / (b - a));
        return Off(from) < Coincident && Off(to) < Coincident ? (from, to) : null;
    }

    // All cells within the line's box grown by the tolerance; for a slanting line more than it crosses, which is no harm.
    private static IEnumerable<(int, int)> CellsOf(Point2 a, Point2 b)
    {
        int At(double mm) => (int)Math.Floor(mm / Cell);
        for (var i = At(Math.Min(a.X, b.X) - Coincident); i <= At(Math.Max(a.X, b.X) + Coincident); i++)
        {
            for (var j = At(Math.Min(a.Y, b.Y) - Coincident); j <= At(Math.Max(a.Y, b.Y) + Coincident); j++)
            {
                yield return (i, j);
            }
        }
    }
}
