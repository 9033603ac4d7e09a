namespace Jackwork.Geometry;

/// <summary>A straight line or a circular arc in a plane, from <see cref="Start"/> to <see cref="End"/>.</summary>
/// <remarks>
/// <see cref="Bulge"/> is tan(sweep/4), as in drawing exchange files: zero for a line, positive for an arc that
/// turns counter-clockwise, one for a half circle. Lengths mm, angles rad.
/// </remarks>
/// <param name="Start">First point.</param>
/// <param name="End">Last point.</param>
/// <param name="Bulge">tan(sweep/4).</param>
public readonly record struct Segment(Point2 Start, Point2 End, double Bulge)
{
    /// <summary>An arc about <paramref name="centre"/> from angle <paramref name="from"/>, turning by <paramref name="sweep"/> (signed, rad, less than a full turn).</summary>
    public static Segment Arc(Point2 centre, double radius, double from, double sweep) => new(
        centre + radius * Vec2.FromAngle(from),
        centre + radius * Vec2.FromAngle(from + sweep),
        Math.Tan(sweep / 4));

    /// <summary>True for a straight line.</summary>
    public bool IsLine => Bulge == 0;

    /// <summary>Signed angle turned from start to end, rad; positive counter-clockwise; zero for a line.</summary>
    public double Sweep => 4 * Math.Atan(Bulge);

    /// <summary>Radius of the arc, mm; infinite for a line.</summary>
    public double Radius => IsLine ? double.PositiveInfinity : (End - Start).Length * (1 + Bulge * Bulge) / (4 * Math.Abs(Bulge));

    /// <summary>Centre of the arc; meaningless (not finite) for a line.</summary>
    public Point2 Centre
    {
        get
        {
            var chord = End - Start;
            return Start.Midpoint(End) + (1 - Bulge * Bulge) / (4 * Bulge) * chord.Left;
        }
    }

    /// <summary>Length along the segment, mm.</summary>
    public double Length => IsLine ? (End - Start).Length : Radius * Math.Abs(Sweep);

    /// <summary>The segment run the other way.</summary>
    public Segment Reversed() => new(End, Start, -Bulge);

    /// <summary>The same segment turned about the origin by <paramref name="angle"/> radians.</summary>
    public Segment Turned(double angle) => new(Start.Turned(angle), End.Turned(angle), Bulge);

    /// <summary>The same segment displaced.</summary>
    public Segment Moved(Vec2 by) => new(Start + by, End + by, Bulge);

    /// <summary>The point a share <paramref name="t"/> (0 to 1) of the way along.</summary>
    public Point2 PointAt(double t)
    {
        if (IsLine)
        {
            return Start + t * (End - Start);
        }

        var c = Centre;
        return c + (Start - c).Turned(t * Sweep);
    }

    /// <summary>Unit tangent a share <paramref name="t"/> of the way along, in the sense of travel.</summary>
    public Vec2 TangentAt(double t)
    {
        var chord = (End - Start).Unit();
        return IsLine ? chord : chord.Turned((t - 0.5) * Sweep);
    }

    /// <summary>Distance from <paramref name="p"/> to the nearest point of the segment, mm.</summary>
    public double DistanceTo(Point2 p)
    {
        if (IsLine)
        {
            var d = End - Start;
            var t = Math.Clamp((p - Start).Dot(d) / d.Dot(d), 0, 1);
            return p.DistanceTo(Start + t * d);
        }

        var c = Centre;
        return Spans(p - c)
            ? Math.Abs(p.DistanceTo(c) - Radius)
            : Math.Min(p.DistanceTo(Start), p.DistanceTo(End));
    }

    /// <summary>Whether the direction <paramref name="fromCentre"/>, seen from the arc's centre, falls within the arc.</summary>
    public bool Spans(Vec2 fromCentre)
    {
        // Relative to the arc's middle direction, half a sweep either side.
        var middle = PointAt(0.5) - Centre;
        var off = Math.Atan2(middle.Cross(fromCentre), middle.Dot(fromCentre));
        return Math.Abs(off) <= Math.Abs(Sweep) / 2;
    }
}
