using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Barrels;

/// <summary>Where the roller of a barrel cam is stopped by a wall as cut, by a calculation that knows only the cut pattern.</summary>
/// <remarks>
/// The pattern's wall is wrapped back onto the drum as points close together. The roller touches the wall where the nearest of them lies at its
/// radius R from its axis: distance^2 = (v - vP)^2 + (w - s sin f)^2, f the point's angle past n. That place is found by the secant rule
/// from where the roller should be. Points 0.1 mm apart miss the nearest place by less than 0.1^2 / 8R.
/// </remarks>
internal sealed class BarrelContact
{
    /// <summary>Distance of the wall's points, mm.</summary>
    private const double Spacing = 0.1;

    /// <summary>Step of the first difference, mm of the roller's travel, and where the search has settled, mm.</summary>
    private const double First = 0.01, Settled = 1e-9;

    private readonly BarrelFollower follower;
    private readonly double surface;
    private readonly Point2[] points;

    /// <summary>A wall of a pattern.</summary>
    /// <param name="follower">The roller.</param>
    /// <param name="surface">Radius of the drum, mm.</param>
    /// <param name="band">The band whose wall it is; its straight edges round the pattern never come near the roller first.</param>
    /// <param name="from">Where along the shaft the drum begins, mm.</param>
    /// <param name="length">Length of the drum, mm.</param>
    public BarrelContact(BarrelFollower follower, double surface, Outline band, double from, double length)
    {
        (this.follower, this.surface) = (follower, surface);
        points = [.. band.Segments.Where(s => !IsEdge(s, length)).SelectMany(Points).Select(p => new Point2(p.X, p.Y + from)).OrderBy(p => p.X)];
    }

    // The straight edges along the ends of the drum and along the seam.
    private static bool IsEdge(Segment s, double length) =>
        s.IsLine && (Math.Abs(s.End.X - s.Start.X) < Settled || Lies(s, 0) || Lies(s, length));

    private static bool Lies(Segment s, double y) => Math.Abs(s.Start.Y - y) < Settled && Math.Abs(s.End.Y - y) < Settled;

    private static IEnumerable<Point2> Points(Segment s)
    {
        var n = (int)Math.Ceiling(s.Length / Spacing);
        return Enumerable.Range(0, n).Select(k => s.PointAt((k + 0.5) / n));
    }

    /// <summary>The follower's coordinate (rad or mm) where the wall stops it, near <paramref name="near"/>, with the shaft at <paramref name="t"/> rad; not-a-number where it stops it nowhere near.</summary>
    public double Stop(double t, double near)
    {
        var h = First / follower.Reach;
        var (a, b) = (near, near + h);
        var (da, db) = (Gap(t, a), Gap(t, b));
        for (var i = 0; i < 30; i++)
        {
            if (Math.Abs(db) < Settled)
            {
                return b;
            }

            if (da == db)
            {
                break;
            }

            (a, b, da) = (b, b - db * (b - a) / (db - da), db);
            db = Gap(t, b);
        }

        return Math.Abs(db) < 1000 * Settled ? b : double.NaN;
    }

    // Distance of the wall from the roller, mm; below zero where the roller lies in it.
    private double Gap(double t, double q)
    {
        // A wall that lies in the drum's end stops nothing.
        if (points.Length == 0)
        {
            return double.PositiveInfinity;
        }

        var (w, v) = follower.Place(Jet.Constant(q));
        var centre = Math.Asin(Math.Clamp(w.Value / surface, -1, 1)) - t;
        var reach = 2 * follower.Radius / surface + 0.1;
        var least = double.PositiveInfinity;
        var turn = 2 * Math.PI;
        var from = centre - reach;
        from -= turn * Math.Floor(from / turn);
        for (var i = FirstPast(from * surface); ; i++)
        {
            var p = points[i % points.Length];
            var angle = p.X / surface + (i >= points.Length ? turn : 0);
            if (angle > from + 2 * reach)
            {
                break;
            }

            var side = surface * Math.Sin(p.X / surface + t) - w.Value;
            var along = p.Y - v.Value;
            least = Math.Min(least, side * side + along * along);
        }

        return Math.Sqrt(least) - follower.Radius;
    }

    private int FirstPast(double u)
    {
        var (lo, hi) = (0, points.Length);
        while (lo < hi)
        {
            var middle = (lo + hi) / 2;
            (lo, hi) = points[middle].X < u ? (middle + 1, hi) : (lo, middle);
        }

        return lo;
    }
}
