using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Views;

/// <summary>The lines along which two solids that run into each other meet, where they are seen.</summary>
/// <remarks>
/// Neither solid has an edge there: a pin in a cone, an arm in a ball. The view is looked at on a grid. Where two neighbouring points show
/// different pieces of stuff, the change between them is closed in by halving; when both are equally far there, it is a seam and
/// not the outline of the nearer. The changes on the sides of a cell are joined straight: a curve of radius R is missed by Pitch^2 / 8R at the most.
/// </remarks>
internal sealed class Seams(HiddenLines hidden, IReadOnlyList<HiddenLines.Placed> solids)
{
    /// <summary>Distance of the grid's points, mm; a seam shorter than this may be missed.</summary>
    private const double Pitch = 0.5;

    /// <summary>Distance to which a change is closed in, mm.</summary>
    private const double Closeness = 0.0005;

    /// <summary>Difference of z, mm, within which two faces meet: what a face forty times as steep as wide rises over the closeness.</summary>
    private const double Level = 0.02;

    /// <summary>All seams, in pieces that each cross one cell of the grid, with one of the solids that meet there.</summary>
    public IEnumerable<(int Solid, Point2 From, Point2 To)> Of(Box bounds)
    {
        var (nx, ny) = ((int)Math.Ceiling(bounds.Width / Pitch), (int)Math.Ceiling(bounds.Height / Pitch));
        Point2 At(int i, int j) => bounds.Min + new Vec2((i + 0.5) * Pitch, (j + 0.5) * Pitch);
        (int Solid, double Z)?[] Column(int i) => [.. Enumerable.Range(0, ny).Select(j => hidden.At(At(i, j)))];
        var left = Column(0);
        for (var i = 1; i < nx; i++)
        {
            var right = Column(i);
            for (var j = 1; j < ny; j++)
            {
                if (Stuff(left[j - 1]) == Stuff(left[j]) && Stuff(left[j]) == Stuff(right[j]) && Stuff(right[j]) == Stuff(right[j - 1]))
                {
                    continue;
                }

                var (a, b, c, d) = (At(i - 1, j - 1), At(i, j - 1), At(i, j), At(i - 1, j));
                Meeting?[] ends = [Between(a, left[j - 1], b, right[j - 1]), Between(b, right[j - 1], c, right[j]), Between(d, left[j], c, right[j]), Between(a, left[j - 1], d, left[j])];
                foreach (var pair in ends.OfType<Meeting>().GroupBy(m => (m.Low, m.High)).Where(g => g.Count() == 2))
                {
                    yield return (pair.First().Solid, pair.First().At, pair.Last().At);
                }
            }

            left = right;
        }
    }

    private readonly record struct Meeting(int Low, int High, int Solid, Point2 At);

    private int? Stuff((int Solid, double Z)? seen) => seen is { } s ? solids[s.Solid].Stuff : null;

    // Where two neighbouring points show two pieces of stuff: the place between them where these meet; null when one stands before the other.
    private Meeting? Between(Point2 a, (int Solid, double Z)? seenA, Point2 b, (int Solid, double Z)? seenB)
    {
        if (Stuff(seenA) == Stuff(seenB))
        {
            return null;
        }

        while (a.DistanceTo(b) > Closeness)
        {
            var middle = a.Midpoint(b);
            var seen = hidden.At(middle);
            if (Stuff(seen) == Stuff(seenA))
            {
                (a, seenA) = (middle, seen);
            }
            else
            {
                (b, seenB) = (middle, seen);
            }
        }

        return seenA is { } p && seenB is { } q && Math.Abs(p.Z - q.Z) < Level
            ? new(Math.Min(solids[p.Solid].Stuff, solids[q.Solid].Stuff), Math.Max(solids[p.Solid].Stuff, solids[q.Solid].Stuff), p.Solid, a.Midpoint(b))
            : null;
    }
}
