using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>What a round cutter leaves of a loop when it runs round the outside: the wood it can't reach stays in the hollows.</summary>
/// <remarks>
/// The cutter's centre runs at its radius c outside the loop. A point of the loop is reached when the disc that touches
/// it there holds nothing of the loop inside. Between two reached points either side of a hollow, the last good disc
/// touches both and its rim is what stands (the closing of the plate by the disc; J. Serra, Image Analysis and
/// Mathematical Morphology, 1982, chapter 2).
/// </remarks>
/// <param name="AsCut">The loop as it comes out.</param>
/// <param name="Left">Largest thickness left standing, mm; zero where the cutter reaches everywhere.</param>
internal sealed record CutterReach(Outline AsCut, double Left)
{
    /// <summary>Spacing of the points that are tried along the loop, mm; hollows narrower than this stay unseen.</summary>
    private const double Spacing = 0.25;

    /// <summary>Longest loop looked at, mm: a cam of 800 mm radius, more than any board or router holds; the work grows with the length.</summary>
    public const double MostLength = 5000;

    /// <summary>Depth (mm) to which a disc may dip into the loop and still count as touching: far below what can be cut or measured.</summary>
    private const double Dip = 1e-6;

    /// <summary>What a cutter of radius <paramref name="c"/> mm leaves of <paramref name="loop"/>, which runs counter-clockwise; of a loop longer than <see cref="MostLength"/>, nothing.</summary>
    public static CutterReach Of(Outline loop, double c)
    {
        if (loop.Length > MostLength || (!loop.Segments.Any(s => MayStop(s, c)) && !HasHollowCorner(loop)))
        {
            return new(loop, 0);
        }

        var places = Places(loop);
        var ok = places.Select(p => IsReached(loop, p, c)).ToArray();
        if (Array.TrueForAll(ok, x => x) || !ok.Contains(true))
        {
            return new(loop, 0);
        }

        return Bridged(loop, c, places, ok);
    }

    private static bool MayStop(Segment s, double c) => s.Bulge < 0 && s.Radius < c;

    private static bool HasHollowCorner(Outline loop)
    {
        for (var i = 0; i < loop.Segments.Length; i++)
        {
            if (loop.Segments[i].TangentAt(1).Cross(loop.Segments[(i + 1) % loop.Segments.Length].TangentAt(0)) < -Dip)
            {
                return true;
            }
        }

        return false;
    }

    private static List<(int Segment, double Share)> Places(Outline loop)
    {
        var list = new List<(int, double)>();
        for (var i = 0; i < loop.Segments.Length; i++)
        {
            var n = Math.Max(2, (int)Math.Ceiling(loop.Segments[i].Length / Spacing));
            list.AddRange(Enumerable.Range(0, n).Select(k => (i, (k + 0.5) / n)));
        }

        return list;
    }

    private static Point2 Centre(Outline loop, (int Segment, double Share) place, double c)
    {
        var s = loop.Segments[place.Segment];
        return s.PointAt(place.Share) - c * s.TangentAt(place.Share).Left;
    }

    private static bool IsReached(Outline loop, (int Segment, double Share) place, double c) =>
        loop.DistanceTo(Centre(loop, place, c)) >= c - Dip;

    private static CutterReach Bridged(Outline loop, double c, List<(int Segment, double Share)> places, bool[] ok)
    {
        var n = places.Count;
        var start = Enumerable.Range(0, n).First(i => ok[i] && !ok[(i + 1) % n]);
        var result = new List<Segment>();
        var left = 0.0;
        var from = default((int Segment, double Share)?);
        for (var k = 0; k < n;)
        {
            // From the last reached place, over the hollow, to the first reached one beyond it.
            var a = (start + k) % n;
            var hollow = 1;
            while (!ok[(a + hollow) % n])
            {
                hollow++;
            }

            var b = (a + hollow) % n;
            var last = Edge(loop, places[a], places[(a + 1) % n], c);
            var first = Edge(loop, places[b], places[(b - 1 + n) % n], c);
            if (from is { } f)
            {
                Copy(loop, f, last, result);
            }

            var (p, q) = (Point(loop, last), Point(loop, first));
            var disc = Centre(loop, last, c);
            var sweep = Math.IEEERemainder((q - disc).Angle - (p - disc).Angle, 2 * Math.PI);
            result.Add(new(p, q, Math.Tan(Math.Min(0, sweep) / 4)));
            for (var h = 1; h < hollow; h++)
            {
                var deep = loop.Segments[places[(a + h) % n].Segment].PointAt(places[(a + h) % n].Share);
                left = Math.Max(left, deep.DistanceTo(disc) - c);
            }

            from = first;
            k += hollow;
            while (k < n && !(ok[(start + k) % n] && !ok[(start + k + 1) % n]))
            {
                k++;
            }
        }

        Copy(loop, from!.Value, (places[start].Segment, Edge(loop, places[start], places[(start + 1) % n], c).Share), result);
        result[^1] = result[^1] with { End = result[0].Start };
        return new(new([.. result]), left);
    }

    private static Point2 Point(Outline loop, (int Segment, double Share) place) => loop.Segments[place.Segment].PointAt(place.Share);

    // The place nearest to the unreached one that is still reached, by halving; both lie on one segment or on neighbours.
    private static (int Segment, double Share) Edge(Outline loop, (int Segment, double Share) good, (int Segment, double Share) bad, double c)
    {
        if (good.Segment != bad.Segment)
        {
            var forward = bad.Segment == (good.Segment + 1) % loop.Segments.Length;
            var end = (good.Segment, forward ? 1.0 : 0.0);
            if (IsReached(loop, end, c))
            {
                good = (bad.Segment, forward ? 0.0 : 1.0);
            }
            else
            {
                bad = end;
            }
        }

        for (var i = 0; i < 40; i++)
        {
            var middle = (good.Segment, (good.Share + bad.Share) / 2);
            (good, bad) = IsReached(loop, middle, c) ? (middle, bad) : (good, middle);
        }

        return good;
    }

    // Copies the loop from one place forward to another.
    private static void Copy(Outline loop, (int Segment, double Share) from, (int Segment, double Share) to, List<Segment> into)
    {
        var n = loop.Segments.Length;
        var i = from.Segment;
        var share = from.Share;
        while (true)
        {
            var isLast = i == to.Segment && to.Share >= share;
            var part = Part(loop.Segments[i], share, isLast ? to.Share : 1);
            if (part.Length > 0)
            {
                into.Add(into.Count > 0 ? part with { Start = into[^1].End } : part);
            }

            if (isLast)
            {
                return;
            }

            (i, share) = ((i + 1) % n, 0);
        }
    }

    private static Segment Part(Segment s, double from, double to) => from == 0 && to == 1
        ? s
        : new(s.PointAt(from), s.PointAt(to), s.IsLine ? 0 : Math.Tan(s.Sweep * (to - from) / 4));
}
