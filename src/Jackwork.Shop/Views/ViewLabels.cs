using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Views;

/// <summary>Which parts of a view are named, and where each is pointed at.</summary>
internal static class ViewLabels
{
    /// <summary>Distance of the points at which the view is looked at, mm of the piece.</summary>
    private const double Pitch = 1;

    /// <summary>A name.</summary>
    /// <param name="Name">Name of the part.</param>
    /// <param name="At">A point at which it is seen, as far within what is seen of it as can be.</param>
    public readonly record struct Label(string Name, Point2 At);

    /// <summary>The parts of which most is seen, in no order.</summary>
    /// <param name="view">The view.</param>
    /// <param name="most">How many at the most.</param>
    /// <param name="leastArea">The least that must be seen of a part, mm^2.</param>
    public static IReadOnlyList<Label> Of(AssemblyView view, int most, double leastArea)
    {
        // The lengths of a cord are named once, by the name that they share.
        var parts = view.Parts.ToList();
        int[] named = [.. parts.Select((p, i) => p.Kind == PartKind.Cord ? parts.FindIndex(q => q.Kind == PartKind.Cord && q.Body.Member == p.Body.Member) : i)];
        var names = parts.Select(p => p.Kind == PartKind.Cord ? p.Name[..p.Name.LastIndexOf(' ')] : p.Name).ToList();
        var (nx, ny) = ((int)Math.Ceiling(view.Bounds.Width / Pitch), (int)Math.Ceiling(view.Bounds.Height / Pitch));
        var seen = new int?[nx + 2, ny + 2];
        Point2 At(int i, int j) => view.Bounds.Min + new Vec2((i - 0.5) * Pitch, (j - 0.5) * Pitch);
        var cells = new Dictionary<int, List<(int I, int J)>>();
        for (var i = 1; i <= nx; i++)
        {
            for (var j = 1; j <= ny; j++)
            {
                if ((seen[i, j] = view.PartAt(At(i, j)) is { } any ? named[any] : null) is { } part)
                {
                    if (!cells.TryGetValue(part, out var list))
                    {
                        cells[part] = list = [];
                    }

                    list.Add((i, j));
                }
            }
        }

        return [.. cells.Where(c => c.Value.Count * Pitch * Pitch >= leastArea).OrderByDescending(c => c.Value.Count).ThenBy(c => c.Key).Take(most)
            .Select(c => new Label(names[c.Key], Inside(c.Key, c.Value)))];

        // The cell with the widest surroundings of the same part; of several the nearest to their middle.
        Point2 Inside(int part, List<(int I, int J)> own)
        {
            var best = own.GroupBy(c => Depth(part, c)).MaxBy(g => g.Key)!.ToList();
            var (mi, mj) = (own.Average(c => c.I), own.Average(c => c.J));
            var (x, y) = best.MinBy(c => (c.I - mi) * (c.I - mi) + (c.J - mj) * (c.J - mj));
            return At(x, y);
        }

        int Depth(int part, (int I, int J) c)
        {
            const int deepest = 3;
            for (var d = 1; d <= deepest; d++)
            {
                for (var k = -d; k <= d; k++)
                {
                    if (!Is(c.I + k, c.J - d) || !Is(c.I + k, c.J + d) || !Is(c.I - d, c.J + k) || !Is(c.I + d, c.J + k))
                    {
                        return d;
                    }
                }
            }

            return deepest + 1;

            bool Is(int i, int j) => i >= 0 && j >= 0 && i < nx + 2 && j < ny + 2 && seen[i, j] == part;
        }
    }
}
