using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>A steady turn about a line together with a steady travel along it: a pivot, a slide, or the motion between two steps.</summary>
/// <remarks>
/// At u the start is turned by u angle about the line and moved by u travel along it. A point at the distance rho from the line has
/// the velocity travel a + angle a x r. Along a unit vector n that is
///   travel (n . a) + angle (n x a) . r_perp,  at most |travel| |n . a| + |angle| |n x a| rho.
/// </remarks>
public sealed class ScrewMotion : IRelativeMotion
{
    /// <summary>A turn below this, rad, is left out: it moves a point 1 m away by 1e-6 mm.</summary>
    private const double NoTurn = 1e-9;

    /// <summary>Below this sine a turn is too near half a turn for its axis to be read from the skew part of the matrix.</summary>
    private const double HalfTurnSine = 1e-3;

    private readonly Frame start;
    private readonly Point3 through;
    private readonly Vec3 axis;
    private readonly double angle;
    private readonly double travel;

    /// <summary>A turn and travel along a line.</summary>
    /// <param name="start">Frame of the second part at u = 0, seen from the first.</param>
    /// <param name="through">A point of the line, mm, in the first part's frame.</param>
    /// <param name="axis">Unit vector along the line.</param>
    /// <param name="angle">Turn over u from 0 to 1, rad, right-handed.</param>
    /// <param name="travel">Travel along the axis over u from 0 to 1, mm.</param>
    public ScrewMotion(Frame start, Point3 through, Vec3 axis, double angle, double travel)
    {
        (this.start, this.through, this.axis, this.angle, this.travel) = (start, through, axis, angle, travel);
    }

    /// <summary>The one screw that takes <paramref name="from"/> to <paramref name="to"/> by less than half a turn (M. Chasles's theorem).</summary>
    /// <remarks>
    /// With R the turn and t the displacement of the old origin, the line passes through t_perp / 2 + cot(angle/2) a x t_perp / 2.
    /// Both are frames of the second part as seen from the first.
    /// </remarks>
    public static ScrewMotion Between(in Frame from, in Frame to)
    {
        // The columns of R, to . from^-1 without the origins.
        var still = from.Inverse();
        var (x, y, z) = (to.Apply(still.X), to.Apply(still.Y), to.Apply(still.Z));
        var skew = new Vec3(0.5 * (y.Z - z.Y), 0.5 * (z.X - x.Z), 0.5 * (x.Y - y.X));
        var cosine = 0.5 * (x.X + y.Y + z.Z - 1);
        var angle = Math.Atan2(skew.Length, cosine);
        var moved = to.Origin - from.Origin;
        if (angle < NoTurn)
        {
            return new(from, from.Origin, moved == default ? new(0, 1, 0) : moved.Unit(), 0, moved.Length);
        }

        var axis = skew.Length > HalfTurnSine || cosine > 0 ? skew.Unit() : HalfTurnAxis(x, y, z, cosine, skew);
        var travel = moved.Dot(axis);
        var across = moved.Across(axis);
        return new(from, from.Origin + 0.5 * (across + (1 / Math.Tan(0.5 * angle)) * axis.Cross(across)), axis, angle, travel);
    }

    /// <inheritdoc/>
    public Frame At(double u)
    {
        var turn = Frame.Rotation(through, axis, u * angle);
        return (turn with { Origin = turn.Origin + u * travel * axis }).Compose(start);
    }

    /// <inheritdoc/>
    public double Speed(in Ball ball, double from, double to)
    {
        var round = angle * Reach(ball);
        return Math.Sqrt(travel * travel + round * round);
    }

    /// <inheritdoc/>
    public double SpeedAlong(in Vec3 normal, ConvexPiece first, ConvexPiece second, double from, double to)
    {
        // A piece that is round about the line looks the same however it is turned.
        var still = IsRoundAbout(first, through, axis) || IsRoundAbout(second, start.Undo(through), start.Undo(axis));
        var round = still ? 0 : Math.Abs(angle) * normal.Cross(axis).Length * Reach(second.Ball with { Radius = second.Ball.Radius - second.Margin });
        return Math.Abs(travel * normal.Dot(axis)) + round;
    }

    // Greatest distance of a point of the ball from the line, mm: the same at every u.
    private double Reach(in Ball ball) => (start.Apply(ball.Centre) - through).Across(axis).Length + ball.Radius;

    // Near half a turn the symmetric part holds the axis: (R + R^T)/2 = cos + (1 - cos) a a^T. Its largest column gives a.
    private static Vec3 HalfTurnAxis(Vec3 x, Vec3 y, Vec3 z, double cosine, Vec3 skew)
    {
        var (xx, yy, zz) = (x.X - cosine, y.Y - cosine, z.Z - cosine);
        var (xy, xz, yz) = (0.5 * (x.Y + y.X), 0.5 * (x.Z + z.X), 0.5 * (y.Z + z.Y));
        var column = xx >= yy && xx >= zz ? new Vec3(xx, xy, xz) : yy >= zz ? new Vec3(xy, yy, yz) : new Vec3(xz, yz, zz);
        var a = column.Unit();
        return a.Dot(skew) < 0 ? -a : a;
    }

    /// <summary>Distance below which a point counts as on a line, mm: rounding.</summary>
    private const double OnLineMm = 1e-11;

    // Whether turning about a line leaves the piece as it is.
    private static bool IsRoundAbout(ConvexPiece piece, Point3 through, Vec3 along)
    {
        if ((!piece.IsPolytope && piece.DiscAxis.Across(along).Length > OnLineMm) || piece.Sweep.Across(along).Length > OnLineMm)
        {
            return false;
        }

        foreach (var c in piece.Centres)
        {
            if ((default(Point3) + c - through).Across(along).Length > OnLineMm)
            {
                return false;
            }
        }

        return true;
    }
}
