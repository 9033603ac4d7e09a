using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>A line or arc on which the roller's centre lies while it touches one piece of the loop.</summary>
/// <param name="IsLine">Line or arc.</param>
/// <param name="Origin">Centre of the arc, or start of the line.</param>
/// <param name="Along">Unit direction of the line, or towards the middle of the arc.</param>
/// <param name="Size">Radius of the arc, or length of the line, mm.</param>
/// <param name="Half">Half the angle that the arc spans, rad.</param>
internal readonly record struct Track(bool IsLine, Point2 Origin, Vec2 Along, double Size, double Half)
{
    /// <summary>Slack at the ends, rad or share of the radius.</summary>
    private const double Slack = 1e-6;

    /// <summary>The track beside a segment of a loop that runs counter-clockwise; null where the roller is too big for a hollow.</summary>
    public static Track? Beside(Segment s, double radius)
    {
        if (s.IsLine)
        {
            var d = (s.End - s.Start).Unit();
            return new(true, s.Start - radius * d.Left, d, (s.End - s.Start).Length, 0);
        }

        var size = s.Bulge > 0 ? s.Radius + radius : s.Radius - radius;
        return size <= 0 ? null : new(false, s.Centre, (s.PointAt(0.5) - s.Centre).Unit(), size, Math.Abs(s.Sweep) / 2);
    }

    /// <summary>The track round a corner, kept whole: beyond the corner's own angle the roller touches a neighbour sooner.</summary>
    public static Track Round(Point2 corner, double radius) => new(false, corner, new(1, 0), radius, Math.PI);

    /// <summary>Whether a point of the track's line or circle lies on the track itself.</summary>
    public bool Holds(Point2 p)
    {
        var v = p - Origin;
        if (IsLine)
        {
            var a = v.Dot(Along);
            return a >= -Slack * Size && a <= Size * (1 + Slack);
        }

        return Half >= Math.PI || v.Dot(Along) >= Size * Math.Cos(Math.Min(Math.PI, Half + Slack)) - Slack * Size * Slack;
    }

    /// <summary>Where the track's line or circle meets the circle about <paramref name="p"/> of radius <paramref name="l"/>; count 0 or 2.</summary>
    public int MeetCircle(Point2 p, double l, out Point2 first, out Point2 second)
    {
        (first, second) = (default, default);
        if (IsLine)
        {
            var off = (p - Origin).Cross(Along);
            var foot = (p - Origin).Dot(Along);
            var square = l * l - off * off;
            if (square < 0)
            {
                return 0;
            }

            var h = Math.Sqrt(square);
            (first, second) = (Origin + (foot - h) * Along, Origin + (foot + h) * Along);
            return 2;
        }

        var d = p - Origin;
        var d2 = d.Dot(d);
        var a = (Size * Size - l * l + d2) / (2 * d2);
        var s2 = Size * Size / d2 - a * a;
        if (s2 < 0)
        {
            return 0;
        }

        var k = Math.Sqrt(s2);
        (first, second) = (Origin + a * d + k * d.Left, Origin + a * d - k * d.Left);
        return 2;
    }

    /// <summary>Where the track's line or circle meets the line through <paramref name="p"/> along <paramref name="u"/>; count 0, 1 or 2.</summary>
    public int MeetLine(Point2 p, Vec2 u, out Point2 first, out Point2 second)
    {
        (first, second) = (default, default);
        if (IsLine)
        {
            var den = u.Cross(Along);
            if (Math.Abs(den) < Slack)
            {
                return 0;
            }

            first = p + (Origin - p).Cross(Along) / den * u;
            return 1;
        }

        var foot = (Origin - p).Dot(u);
        var off = (Origin - p).Cross(u);
        var square = Size * Size - off * off;
        if (square < 0)
        {
            return 0;
        }

        var h = Math.Sqrt(square);
        (first, second) = (p + (foot + h) * u, p + (foot - h) * u);
        return 2;
    }
}
