using System.Runtime.CompilerServices;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>A roller, or a round end of the same radius, on a lever or a stem.</summary>
/// <remarks>
/// <para>Centre in the ground plane: lever C(q) = P + L (cos b, sin b), b = b0 + e q, e = +1 or -1 as the axes agree;
/// stem C(q) = C0 + d q. Seen from the cam, X = Rot(-t) C: the pitch curve, with X', X'' from jets.</para>
/// <para>Unit normal out of the cam n = +-Left(X')/|X'|, taken so that the cam lies to the inner side; radius of
/// curvature of the pitch curve r = |X'|^3 / (X'' x X') with the same sign; outline X - R n with radius r - R
/// (envelope of a circle of radius R). A convex stretch with r &lt; R is undercut.</para>
/// <para>Pressure angle: cos p = |n . u|, u the direction in which the centre moves with q.</para>
/// <para>Base circle: for a lever at distance c from the shaft, |X|^2 = c^2 + L^2 - 2 c L cos d, d the angle at P
/// between the arm and the line to the shaft.</para>
/// </remarks>
internal abstract class RollerFollower(double radius) : Follower
{
    /// <summary>Radius of the roller or round end, mm.</summary>
    public double Radius { get; } = radius;

    public override bool EntersHollows => true;

    /// <summary>The same follower with a roller of another radius, mm; below zero for the outside of the band that a roller sweeps, outline X + |R| n.</summary>
    public abstract RollerFollower WithRadius(double radius);

    /// <summary>Finishes a sample from the pitch curve's jets and the direction in which the centre moves, both seen from the cam.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected CamSample FromPitch(Jet x, Jet y, Vec2 u, double turning)
    {
        // As the shaft turns forward the roller goes clockwise round the cam, and the outside lies to its left.
        var sense = Math.Sign(turning);
        var v2 = x.First * x.First + y.First * y.First;
        var v = Math.Sqrt(v2);
        var n = new Vec2(-y.First * sense / v, x.First * sense / v);
        var bend = sense * (x.Second * y.First - y.Second * x.First);
        var r = v2 * v / bend;
        var p = Math.Acos(Math.Min(1, Math.Abs(n.Dot(u))));
        return new(new(x.Value - Radius * n.X, y.Value - Radius * n.Y), n, r - Radius, r, p, 0);
    }
}

/// <summary>A roller or round end on a lever that turns about an axis parallel to the shaft.</summary>
/// <param name="pivot">The lever's axis P, in the cam's plane, mm.</param>
/// <param name="arm">Length L of the arm, mm.</param>
/// <param name="drawn">Direction of the arm at coordinate 0 as drawn, rad.</param>
/// <param name="setOver">Angle by which it is set over, rad.</param>
/// <param name="sense">+1 where the lever's axis points as the shaft's, else -1.</param>
/// <param name="radius">Radius R, mm.</param>
internal sealed class ArmRoller(Point2 pivot, double arm, double drawn, double setOver, double sense, double radius) : RollerFollower(radius)
{
    public Point2 Pivot { get; } = pivot;

    public double Arm { get; } = arm;

    public double Sense { get; } = sense;

    /// <summary>Direction of the arm at coordinate 0, rad.</summary>
    public double Zero { get; } = drawn + setOver;

    public override bool Turns => true;

    public override double SetOver { get; } = setOver;

    public override double Reach => Arm;

    // The angle at P from the line to the shaft to the arm, signed.
    private double Opening(double q) => Math.IEEERemainder(Zero + Sense * q - (Point2.Origin - Pivot).Angle, 2 * Math.PI);

    public override double BaseRadius(double least, double most) => CentreDistance(Nearest(least, most)) - Radius;

    public override Follower? WithBase(double radius, double least, double most)
    {
        var c = Pivot.FromOrigin.Length;
        var cos = (c * c + Arm * Arm - (radius + Radius) * (radius + Radius)) / (2 * c * Arm);
        if (Math.Abs(cos) >= 1)
        {
            return null;
        }

        var now = Nearest(least, most);
        var side = Math.Sign(Opening((least + most) / 2));
        return new ArmRoller(Pivot, Arm, Zero - SetOver, SetOver + side * Math.Acos(cos) - now, Sense, Radius);
    }

    public override int Outward(double q) => double.IsNaN(q) ? 0 : Math.Sign(Opening(q)) * Math.Sign(Sense);

    public override RollerFollower WithRadius(double radius) => new ArmRoller(Pivot, Arm, Zero - SetOver, SetOver, Sense, radius);

    // The opening nearest to the shaft over the motion.
    private double Nearest(double least, double most)
    {
        var (a, b) = (Opening(least), Opening(most));
        return Math.Abs(a) < Math.Abs(b) ? a : b;
    }

    private double CentreDistance(double opening)
    {
        var c = Pivot.FromOrigin.Length;
        return Math.Sqrt(c * c + Arm * Arm - 2 * c * Arm * Math.Cos(opening));
    }

    public override CamSample Sample(Jet q, Jet t)
    {
        var (st, ct) = Jet.SinCos(t);
        var (sb, cb) = Jet.SinCos(Sense * q + Zero - t);
        var x = Pivot.X * ct + Pivot.Y * st + Arm * cb;
        var y = Pivot.Y * ct - Pivot.X * st + Arm * sb;
        return FromPitch(x, y, new(-sb.Value, cb.Value), t.First);
    }
}

/// <summary>A roller or round end on a stem that slides in the plane of the cam.</summary>
/// <param name="centre">Centre of the roller at coordinate 0 as drawn, mm.</param>
/// <param name="travel">Unit direction of positive travel.</param>
/// <param name="setOver">Distance by which it is set over along the travel, mm.</param>
/// <param name="radius">Radius R, mm.</param>
internal sealed class StemRoller(Point2 centre, Vec2 travel, double setOver, double radius) : RollerFollower(radius)
{
    /// <summary>Centre of the roller at coordinate 0, mm.</summary>
    public Point2 Zero { get; } = centre + setOver * travel;

    public Vec2 Travel { get; } = travel;

    public override bool Turns => false;

    public override double SetOver { get; } = setOver;

    public override double Reach => 1;

    public override double BaseRadius(double least, double most) => (Zero + Nearest(least, most) * Travel).FromOrigin.Length - Radius;

    public override Follower? WithBase(double radius, double least, double most)
    {
        var q = Nearest(least, most);
        var along = (Zero + q * Travel).FromOrigin.Dot(Travel);
        var offset = Zero.FromOrigin.Cross(Travel);
        var square = (radius + Radius) * (radius + Radius) - offset * offset;
        return square <= 0 ? null : new StemRoller(Zero - SetOver * Travel, Travel, SetOver + Math.CopySign(Math.Sqrt(square), along) - along, Radius);
    }

    public override int Outward(double q) => double.IsNaN(q) ? 0 : Math.Sign((Zero + q * Travel).FromOrigin.Dot(Travel));

    public override RollerFollower WithRadius(double radius) => new StemRoller(Zero - SetOver * Travel, Travel, SetOver, radius);

    private double Nearest(double least, double most) =>
        (Zero + least * Travel).FromOrigin.Length < (Zero + most * Travel).FromOrigin.Length ? least : most;

    public override CamSample Sample(Jet q, Jet t)
    {
        var (s, c) = Jet.SinCos(t);
        var x0 = Travel.X * q + Zero.X;
        var y0 = Travel.Y * q + Zero.Y;
        var u = new Vec2(c.Value * Travel.X + s.Value * Travel.Y, c.Value * Travel.Y - s.Value * Travel.X);
        return FromPitch(x0 * c + y0 * s, y0 * c - x0 * s, u, t.First);
    }
}
