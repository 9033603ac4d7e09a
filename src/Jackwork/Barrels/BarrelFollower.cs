using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Barrels;

/// <summary>The roller of a barrel cam and how it moves over the drum.</summary>
/// <remarks>
/// <para>Frame on the shaft's axis: v along it, n the direction of the roller's axis, square to the shaft, w = v x n round the
/// drum in the sense in which the shaft turns forward. At coordinate q the roller's axis stands at (w, v): on a slide
/// along the shaft w = 0, v = v0 + e q; on a lever that turns about n, w = wP + L cos b, v = vP + L sin b, b = b0 + e q (the true
/// arc), e = +1 or -1 as the directions agree. The shaft stands at angle t.</para>
/// <para>Drum unrolled at radius s, seen from outside: u = s f, f the angle of a point in the drum from n in the sense of w. The roller's axis
/// meets that surface at u = s (asin(w / s) - t), which with v is the pitch curve; its radius of curvature is
/// (u'^2 + v'^2)^(3/2) / (u' v'' - v' u'').</para>
/// <para>Walls: at the height r along n the drum passes the roller with the relative velocity d = (w' - t' r, v') in (w, v); it touches
/// where the roller's normal m is square to it, m = +-Left(d)/|d|, at (w + R mw, v + R mv). The point lies on the
/// surface of radius s where r^2 + (w + R mw)^2 = s^2; since m hardly changes with r, r is set to that and m taken again until it
/// settles. Unrolled: u = s (atan2(w + R mw, r) - t).</para>
/// <para>Pressure angle p between m and the motion of the roller's axis (wq, vq): cos p = |m . (wq, vq)|; on a slide
/// tan p = v' / (t' r).</para>
/// Envelope of a cylinder (surface normal square to the relative velocity): F. L. Litvin, Gear Geometry and Applied Theory,
/// chapter 5; cylindrical cams: H. A. Rothbart (ed.), Cam Design Handbook, chapter 3 (both from memory).
/// </remarks>
/// <param name="radius">Radius R of the roller, mm.</param>
/// <param name="n">Direction of the roller's axis in the cam's plane (see <see cref="Cams.CamPlane"/>), rad.</param>
public abstract class BarrelFollower(double radius, double n)
{
    /// <summary>Rounds in which m and r settle: each leaves less than a hundredth of the error for rollers below half the drum.</summary>
    private const int Rounds = 8;

    /// <summary>Radius of the roller, mm.</summary>
    public double Radius { get; } = radius;

    /// <summary>Direction of the roller's axis in the cam's plane, rad.</summary>
    public double Direction { get; } = n;

    /// <summary>Whether the follower turns (a lever) or slides.</summary>
    public abstract bool Turns { get; }

    /// <summary>Travel of the roller's axis, mm per rad or mm of the coordinate.</summary>
    public abstract double Reach { get; }

    /// <summary>Where the roller's axis stands, (w, v), mm.</summary>
    public abstract (Jet W, Jet V) Place(Jet q);

    /// <summary>The unit direction in which it moves with a growing coordinate.</summary>
    public abstract Vec2 Motion(double q);

    /// <summary>The groove at one position.</summary>
    /// <param name="q">The follower's coordinate.</param>
    /// <param name="t">The shaft's coordinate.</param>
    /// <param name="surface">Radius s of the surface that is unrolled, mm.</param>
    /// <param name="half">Half the width of the groove, mm: the roller's radius and half the clearance.</param>
    public BarrelSample Sample(Jet q, Jet t, double surface, double half)
    {
        var (w, v) = Place(q);
        var over = w.Value / surface;
        var root = Math.Sqrt(1 - over * over);
        var u = surface * (Jet.Chain((1 / surface) * w, Math.Asin(over), 1 / root, over / (root * root * root)) - t);
        var speed = u.First * u.First + v.First * v.First;
        var radius = speed * Math.Sqrt(speed) / (u.First * v.Second - v.First * u.Second);
        var lower = Wall(w, v, t, surface, -half);
        var upper = Wall(w, v, t, surface, half);
        var normal = Normal(w, v, t, root * surface);
        return new(new(u.Value, v.Value), lower, upper, radius, Math.Acos(Math.Min(1, Math.Abs(normal.Dot(Motion(q.Value))))));
    }

    // The roller's normal towards a greater v, in (w, v), at the height r.
    private static Vec2 Normal(Jet w, Jet v, Jet t, double r)
    {
        var d = new Vec2(w.First - t.First * r, v.First);
        return Math.Sign(d.X) / d.Length * d.Left;
    }

    private static OutlinePoint Wall(Jet w, Jet v, Jet t, double surface, double offset)
    {
        var r = Math.Sqrt(surface * surface - w.Value * w.Value);
        var m = Normal(w, v, t, r);
        for (var i = 0; i < Rounds; i++)
        {
            var side = w.Value + offset * m.X;
            r = Math.Sqrt(surface * surface - side * side);
            m = Normal(w, v, t, r);
        }

        // The tangent lies in the surface, square to m: (mv, -cos(angle) mw) in (u, v).
        var angle = Math.Atan2(w.Value + offset * m.X, r);
        return new(new(surface * (angle - t.Value), v.Value + offset * m.Y), new Vec2(m.Y, -Math.Cos(angle) * m.X).Unit());
    }
}

/// <summary>A roller on a slide along the shaft.</summary>
/// <param name="zero">Where v of the roller's axis is at coordinate 0, mm.</param>
/// <param name="sense">+1 where positive travel runs along the shaft's direction, else -1.</param>
/// <param name="radius">Radius of the roller, mm.</param>
/// <param name="n">Direction of the roller's axis in the cam's plane, rad.</param>
internal sealed class BarrelSlide(double zero, double sense, double radius, double n) : BarrelFollower(radius, n)
{
    public override bool Turns => false;

    public override double Reach => 1;

    public override (Jet W, Jet V) Place(Jet q) => (default, sense * q + zero);

    public override Vec2 Motion(double q) => new(0, sense);
}

/// <summary>A roller on a lever that turns about an axis along the roller's.</summary>
/// <param name="pivot">The lever's axis (wP, vP), mm.</param>
/// <param name="arm">Length L of the arm, mm.</param>
/// <param name="zero">Direction b0 of the arm at coordinate 0, from w towards v, rad.</param>
/// <param name="sense">+1 where the lever's axis points along n, else -1.</param>
/// <param name="radius">Radius of the roller, mm.</param>
/// <param name="n">Direction of the roller's axis in the cam's plane, rad.</param>
internal sealed class BarrelLever(Point2 pivot, double arm, double zero, double sense, double radius, double n) : BarrelFollower(radius, n)
{
    public override bool Turns => true;

    public override double Reach => arm;

    public override (Jet W, Jet V) Place(Jet q)
    {
        var (s, c) = Jet.SinCos(sense * q + zero);
        return (arm * c + pivot.X, arm * s + pivot.Y);
    }

    public override Vec2 Motion(double q) => sense * Vec2.FromAngle(sense * q + zero).Left;
}
