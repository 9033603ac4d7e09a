using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>A roller riding down over the tip of a cam, a sharp corner that turns with the shaft: the lowest it can be while the tip is under it.</summary>
/// <remarks>
/// The tip stands at Z(t) = Rot(t) Z0 with r = |Z0|, the roller's centre at C(q), and |C - Z| = R. On a lever (axis P, arm L, direction
/// b = b0 + e q), with d = Z - P:
///   b = arg d + s g,   cos g = (d.d + L^2 - R^2)/(2 L |d|),   s = +1 or -1 the side that is outward;
/// on a stem C = C0 + q u, with d = Z - C0:
///   q = d.u + s sqrt(R^2 - (d x u)^2).
/// The tip is past when it stands beside the roller, R across its path: |d| = L - R or L + R, or d x u = +-R; then cos g = 1 or the root
/// is 0. From |Z - P|^2 = r^2 + p^2 - 2 r p cos(arg Z - arg P), p = |P|, and Z x u = r sin(arg u - arg Z), the angle follows in closed form.
/// </remarks>
internal abstract class TipRide(Point2 tip, double radius)
{
    /// <summary>The tip, seen from the cam, mm.</summary>
    public Point2 Tip => tip;

    /// <summary>Radius of the roller or round end, mm.</summary>
    protected double Radius => radius;

    /// <summary>The ride of a roller over a tip.</summary>
    /// <param name="follower">The roller.</param>
    /// <param name="tip">The tip, seen from the cam, mm.</param>
    /// <param name="q">The follower's coordinate as the ride begins, rad or mm.</param>
    public static TipRide Of(RollerFollower follower, Point2 tip, double q) => follower switch
    {
        ArmRoller f => new ArmRide(f, tip, q),
        StemRoller f => new StemRide(f, tip, q),
        _ => throw new ArgumentOutOfRangeException(nameof(follower), follower.GetType().Name, "No ride is known for this kind of roller."),
    };

    /// <summary>The follower's coordinate with the tip under its roller; not-a-number where the tip does not reach it.</summary>
    /// <param name="t">The shaft's coordinate, rad.</param>
    public abstract Jet At(Jet t);

    /// <summary>Middle of the roller in the ground, mm.</summary>
    /// <param name="q">The follower's coordinate.</param>
    public abstract Point2 Centre(double q);

    /// <summary>How far the shaft turns on from <paramref name="t"/> until the tip is past the roller, rad, 0 up to a turn; infinite if it never is.</summary>
    /// <param name="t">The shaft's coordinate, rad.</param>
    /// <param name="sense">+1 where its coordinate grows, else -1.</param>
    public abstract double Passed(double t, int sense);

    /// <summary>How far the shaft turns on from <paramref name="t"/> until the roller, the tip still under it, is down at <paramref name="q"/>, rad; infinite if it never is.</summary>
    public double Down(double t, int sense, double q)
    {
        var centre = Centre(q).FromOrigin;
        var (r, c) = (tip.FromOrigin.Length, centre.Length);
        var cosine = (r * r + c * c - radius * radius) / (2 * r * c);

        // The tip comes under the roller before it stands in line with its middle, and leaves it after that.
        return Math.Abs(cosine) <= 1 ? On(sense * (centre.Angle - tip.FromOrigin.Angle - t) + Math.Acos(cosine)) : double.PositiveInfinity;
    }

    /// <summary>How far on the tip's direction first stands at an angle from <paramref name="about"/> whose cosine is given, rad.</summary>
    protected double First(double t, int sense, double about, double cosine)
    {
        if (!(Math.Abs(cosine) <= 1))
        {
            return double.PositiveInfinity;
        }

        var off = Math.Acos(cosine);
        var now = tip.FromOrigin.Angle + t;
        return Math.Min(On(sense * (about + off - now)), On(sense * (about - off - now)));
    }

    private static double On(double angle) => angle - 2 * Math.PI * Math.Floor(angle / (2 * Math.PI));
}

/// <summary>The ride of a roller on a lever.</summary>
internal sealed class ArmRide(ArmRoller follower, Point2 tip, double start) : TipRide(tip, follower.Radius)
{
    private readonly double side = follower.Outward(start) * follower.Sense;

    public override Jet At(Jet t)
    {
        var (s, c) = Jet.SinCos(t);
        var x = Tip.X * c - Tip.Y * s + -follower.Pivot.X;
        var y = Tip.Y * c + Tip.X * s + -follower.Pivot.Y;
        var d2 = Jet.Square(x) + Jet.Square(y);
        var cos = (d2 + (follower.Arm * follower.Arm - Radius * Radius)) / (2 * follower.Arm * Jet.Sqrt(d2));
        var b = Jet.Atan2(y, x) + side * Jet.Atan2(Jet.Sqrt(Jet.Constant(1) - Jet.Square(cos)), cos);
        var q = follower.Sense * (b + -follower.Zero);
        return q with { Value = start + Math.IEEERemainder(q.Value - start, 2 * Math.PI) };
    }

    public override Point2 Centre(double q) => follower.Pivot + follower.Arm * Vec2.FromAngle(follower.Zero + follower.Sense * q);

    public override double Passed(double t, int sense) => Math.Min(Passed(t, sense, follower.Arm - Radius), Passed(t, sense, follower.Arm + Radius));

    private double Passed(double t, int sense, double distance)
    {
        var pivot = follower.Pivot.FromOrigin;
        var (r, p) = (Tip.FromOrigin.Length, pivot.Length);
        return First(t, sense, pivot.Angle, (r * r + p * p - distance * distance) / (2 * r * p));
    }
}

/// <summary>The ride of a roller on a stem.</summary>
internal sealed class StemRide(StemRoller follower, Point2 tip, double start) : TipRide(tip, follower.Radius)
{
    private readonly double side = follower.Outward(start);

    public override Jet At(Jet t)
    {
        var (s, c) = Jet.SinCos(t);
        var x = Tip.X * c - Tip.Y * s + -follower.Zero.X;
        var y = Tip.Y * c + Tip.X * s + -follower.Zero.Y;
        var along = follower.Travel.X * x + follower.Travel.Y * y;
        var across = follower.Travel.Y * x - follower.Travel.X * y;
        return along + side * Jet.Sqrt(Jet.Constant(Radius * Radius) - Jet.Square(across));
    }

    public override Point2 Centre(double q) => follower.Zero + q * follower.Travel;

    public override double Passed(double t, int sense)
    {
        var line = follower.Zero.FromOrigin.Cross(follower.Travel);
        var r = Tip.FromOrigin.Length;
        return Math.Min(Beside((line + Radius) / r), Beside((line - Radius) / r));

        // Z x u = r sin(arg u - arg Z) = r cos(arg Z - (arg u - pi/2)).
        double Beside(double sine) => First(t, sense, follower.Travel.Angle - Math.PI / 2, sine);
    }
}
