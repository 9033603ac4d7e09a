namespace Jackwork.Geometry;

/// <summary>A loop of lines and arcs, made by going along it.</summary>
/// <param name="start">Where it begins.</param>
internal sealed class LoopPath(Point2 start)
{
    /// <summary>A step shorter than this is none, mm: rounding noise.</summary>
    private const double NoLengthMm = 1e-9;

    /// <summary>The most that one arc turns by, rad: an arc is then well fixed by its ends.</summary>
    private const double MostSweep = 0.75 * Math.PI;

    private readonly List<Segment> segments = [];

    /// <summary>Where it has come to.</summary>
    public Point2 At { get; private set; } = start;

    /// <summary>Straight on to a point.</summary>
    public void Line(Point2 to) => Add(new(At, to, 0));

    /// <summary>Round a centre to a point as far from it, by less than half a turn, whichever way that is.</summary>
    public void Arc(Point2 centre, Point2 to) => Turn(centre, Math.Atan2((At - centre).Cross(to - centre), (At - centre).Dot(to - centre)), to);

    /// <summary>Counter-clockwise round a centre to a point as far from it.</summary>
    public void Round(Point2 centre, Point2 to)
    {
        var sweep = Math.Atan2((At - centre).Cross(to - centre), (At - centre).Dot(to - centre));
        Turn(centre, sweep < 0 ? sweep + 2 * Math.PI : sweep, to);
    }

    /// <summary>A segment from where it has come to, but for rounding.</summary>
    public void Add(Segment s)
    {
        if (At.DistanceTo(s.End) > NoLengthMm)
        {
            segments.Add(s with { Start = At });
            At = s.End;
        }
    }

    /// <summary>The loop; the last segment ends where the first begins.</summary>
    public Outline Close()
    {
        if (At.DistanceTo(segments[0].Start) > NoLengthMm)
        {
            Line(segments[0].Start);
        }

        segments[^1] = segments[^1] with { End = segments[0].Start };
        return new([.. segments]);
    }

    private void Turn(Point2 centre, double sweep, Point2 to)
    {
        var (from, n) = (At - centre, Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / MostSweep)));
        for (var i = 1; i <= n; i++)
        {
            Add(new(At, i == n ? to : centre + from.Turned(sweep * i / n), Math.Tan(sweep / n / 4)));
        }
    }
}
