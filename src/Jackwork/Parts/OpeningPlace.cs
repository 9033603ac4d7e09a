using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Parts;

/// <summary>An opening on its board, and what keeps it from being cut.</summary>
/// <param name="Number">Its number in the design's list, from 1.</param>
/// <param name="Outline">Its outline in the board's plane, mm.</param>
/// <param name="Fault">Why it can't be cut; null where it can.</param>
internal sealed record OpeningPlace(int Number, Outline Outline, string? Fault)
{
    /// <summary>Least wood beside an opening, mm: less would break out in sawing (common practice, no source).</summary>
    public const double Wood = 1;

    /// <summary>The openings of one board in the design's order; those that leave the board or run into an earlier one carry their fault.</summary>
    public static IReadOnlyList<OpeningPlace> Cut(CaseSpec spec, BoardPlace side)
    {
        var all = new List<OpeningPlace>();
        foreach (var (o, i) in (spec.Openings ?? []).Select((o, i) => (o, i)).Where(o => o.o.In == side.Name))
        {
            var outline = side.Opening(o);
            var other = all.Find(p => p.Fault is null && Apart(p.Outline, outline) < Wood);
            var fault = !side.Holds(outline) ? "leaves its board" : other is null ? null : $"runs into opening {other.Number}";
            all.Add(new(i + 1, outline, fault));
        }

        return all;
    }

    // Distance of two openings, each a circle or a rectangle along the board's axes; below 0 where they overlap.
    private static double Apart(Outline a, Outline b)
    {
        var (ra, rb) = (Round(a), Round(b));
        var ((a0, a1), (b0, b1)) = (Core(a, ra), Core(b, rb));
        var x = Math.Max(b0.X - a1.X, a0.X - b1.X);
        var y = Math.Max(b0.Y - a1.Y, a0.Y - b1.Y);
        return (x > 0 && y > 0 ? Math.Sqrt(x * x + y * y) : Math.Max(x, y)) - ra - rb;
    }

    private static double Round(Outline o) => o.Segments[0].IsLine ? 0 : o.Segments[0].Radius;

    // A circle is its middle grown by its radius.
    private static (Point2 Min, Point2 Max) Core(Outline o, double radius)
    {
        var (min, max) = o.Bounds();
        var r = new Vec2(radius, radius);
        return (min + r, max + -1 * r);
    }
}
