using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Worms;

/// <summary>The gaps of a worm's thread on its outside, rolled out flat.</summary>
internal static class ThreadWrap
{
    /// <summary>The gaps, x along the circumference, y along the worm, mm. Half way round, where the worm faces its wheel as drawn, a thread stands in the middle of the length.</summary>
    /// <param name="pair">The worm.</param>
    /// <param name="length">Length of the thread, mm.</param>
    /// <param name="gap">Width of a gap along the worm at its outside, mm.</param>
    /// <param name="isRight">Whether the thread is a right-hand one, which rises to the right.</param>
    public static ImmutableArray<Outline> Gaps(WormPair pair, double length, double gap, bool isRight)
    {
        var (round, lead) = (2 * Math.PI * pair.TipRadius, isRight ? pair.Lead : -pair.Lead);
        var most = (int)Math.Ceiling((length + pair.Lead) / pair.Pitch) + 1;
        var gaps = ImmutableArray.CreateBuilder<Outline>();
        for (var k = -most; k <= most; k++)
        {
            // Gaps lie half a pitch off the thread in the middle.
            var (left, right) = (length / 2 + (k + 0.5) * pair.Pitch - lead / 2, length / 2 + (k + 0.5) * pair.Pitch + lead / 2);
            var band = Below(Above([new(0, left - gap / 2), new(round, right - gap / 2), new(round, right + gap / 2), new(0, left + gap / 2)], 0), length);
            if (band.Count >= 3 && Outline.Polygon(band) is { SignedArea: > 0 } outline)
            {
                gaps.Add(outline);
            }
        }

        return gaps.ToImmutable();
    }

    private static List<Point2> Above(List<Point2> ring, double y) => Clipped(ring, p => p.Y - y);

    private static List<Point2> Below(List<Point2> ring, double y) => Clipped(ring, p => y - p.Y);

    // I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping (1974), against one line.
    private static List<Point2> Clipped(List<Point2> ring, Func<Point2, double> inside)
    {
        var kept = new List<Point2>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var (f, g) = (inside(a), inside(b));
            if (f >= 0)
            {
                kept.Add(a);
            }

            if (f * g < 0)
            {
                kept.Add(a + f / (f - g) * (b - a));
            }
        }

        return kept;
    }
}
