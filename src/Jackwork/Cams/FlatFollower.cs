using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>A flat face on a lever or a stem.</summary>
/// <remarks>
/// <para>The face is the line m . X = h, m the unit normal out of the cam, h its distance from the shaft. Seen from the
/// cam, m stands at the angle w = (angle of m) - t. The envelope of such lines is
/// X = h m + h1 Left(m), with h1 = dh/dw = h'/w', radius of curvature r = h + h2,
/// h2 = d2h/dw2 = (h'' w' - h' w'')/w'^3 (support function of a convex curve). r &lt; 0 is undercut; a flat face can't touch a hollow.</para>
/// <para>Lever: w = w0 + e q - t, h = m . P + f, f the face's distance from the lever's axis. Stem: h = h0 + q (m . d).</para>
/// <para>Pressure angle: between m and the motion of the touched point of the follower.</para>
/// </remarks>
internal abstract class FlatFollower : Follower
{
    public override bool EntersHollows => false;

    /// <summary>The face's normal out of the cam and its distance from the shaft along it, mm, at a coordinate.</summary>
    public abstract (Vec2 Normal, double Height) Face(double q);

    /// <summary>Distance of the middle of the face as drawn from the foot of the shaft on it, to the left of the normal at coordinate 0, mm.</summary>
    public abstract double Middle { get; }

    /// <summary>The face that looks back at this one from the other side of the cam, <paramref name="breadth"/> mm away, on the same member.</summary>
    public abstract FlatFollower Opposite(double breadth);

    /// <summary>The same face moved towards the shaft by <paramref name="by"/> mm.</summary>
    public abstract FlatFollower Nearer(double by);

    protected static CamSample FromFace(Jet h, Jet w, double pressureAngle, double faceOffset)
    {
        var h1 = h.First / w.First;
        var h2 = (h.Second * w.First - h.First * w.Second) / (w.First * w.First * w.First);
        var m = Vec2.FromAngle(w.Value);
        var r = h.Value + h2;
        return new(Point2.Origin + h.Value * m + h1 * m.Left, m, r, r, pressureAngle, faceOffset);
    }
}

/// <summary>A flat face on a lever that turns about an axis parallel to the shaft.</summary>
/// <param name="pivot">The lever's axis P, mm.</param>
/// <param name="normal">Angle of the face's normal out of the cam at coordinate 0 as drawn, rad.</param>
/// <param name="distance">Distance f of the face from the lever's axis along that normal, mm.</param>
/// <param name="middle">Distance of the middle of the face from the foot of the lever's axis on it, along the face to the left of the normal, mm.</param>
/// <param name="setOver">Angle by which it is set over, rad.</param>
/// <param name="sense">+1 where the lever's axis points as the shaft's, else -1.</param>
internal sealed class ArmFace(Point2 pivot, double normal, double distance, double middle, double setOver, double sense) : FlatFollower
{
    public Point2 Pivot { get; } = pivot;

    public double Distance { get; } = distance;

    public double Sense { get; } = sense;

    /// <summary>Angle of the face's normal at coordinate 0, rad.</summary>
    public double Zero { get; } = normal + setOver;

    public override bool Turns => true;

    public override double SetOver { get; } = setOver;

    public override double Reach => Math.Abs(middle);

    // Along the face from the foot of the lever's axis, which itself stands off the shaft's.
    public override double Middle => middle + Vec2.FromAngle(Zero).Left.Dot(Pivot.FromOrigin);

    public override (Vec2 Normal, double Height) Face(double q) => (Vec2.FromAngle(Zero + Sense * q), Height(q));

    private double Height(double q) => Vec2.FromAngle(Zero + Sense * q).Dot(Pivot.FromOrigin) + Distance;

    public override double BaseRadius(double least, double most) => Math.Min(Height(least), Height(most));

    // dh/dq = e Left(m) . P.
    public override int Outward(double q) => double.IsNaN(q) ? 0 : Math.Sign(Sense * Vec2.FromAngle(Zero + Sense * q).Left.Dot(Pivot.FromOrigin));

    public override FlatFollower Opposite(double breadth) => new ArmFace(Pivot, Zero - SetOver + Math.PI, breadth - Distance, -middle, SetOver, Sense);

    public override FlatFollower Nearer(double by) => new ArmFace(Pivot, Zero - SetOver, Distance - by, middle, SetOver, Sense);

    public override Follower? WithBase(double radius, double least, double most)
    {
        // m . P = radius - f has two solutions about the direction of P; take the one on the side as drawn.
        var q = Height(least) < Height(most) ? least : most;
        var c = Pivot.FromOrigin.Length;
        var cos = (radius - Distance) / c;
        if (Math.Abs(cos) >= 1)
        {
            return null;
        }

        var now = Math.IEEERemainder(Zero + Sense * q - Pivot.FromOrigin.Angle, 2 * Math.PI);
        return new ArmFace(Pivot, Zero - SetOver, Distance, middle, SetOver + Math.CopySign(Math.Acos(cos), now) - now, Sense);
    }

    public override CamSample Sample(Jet q, Jet t)
    {
        var b = Sense * q + Zero;
        var (s, c) = Jet.SinCos(b);
        var h = Pivot.X * c + Pivot.Y * s + Distance;
        var w = b - t;

        // Along the face from the foot of P: the contact's offset h1 less that of P itself.
        var along = h.First / w.First - (Pivot.Y * c.Value - Pivot.X * s.Value);
        var p = Math.Abs(Math.Atan2(Distance, along));
        return FromFace(h, w, Math.Min(p, Math.PI - p), along - middle);
    }
}

/// <summary>A flat face on a stem that slides in the plane of the cam.</summary>
/// <param name="normal">Angle of the face's normal out of the cam, rad.</param>
/// <param name="height">Distance of the face from the shaft at coordinate 0 as drawn, mm.</param>
/// <param name="middle">Distance of the middle of the face from the foot of the shaft on it at coordinate 0, along the face to the left of the normal, mm.</param>
/// <param name="travel">Unit direction of positive travel.</param>
/// <param name="setOver">Distance by which it is set over along the travel, mm.</param>
internal sealed class StemFace(double normal, double height, double middle, Vec2 travel, double setOver) : FlatFollower
{
    private readonly double lift = Vec2.FromAngle(normal).Dot(travel);
    private readonly double drift = Vec2.FromAngle(normal).Left.Dot(travel);

    public double Normal { get; } = normal;

    /// <summary>Distance of the face from the shaft at coordinate 0, mm.</summary>
    public double Zero => height + lift * SetOver;

    /// <summary>How much the face rises from the shaft for a mm of travel.</summary>
    public double Lift => lift;

    public override double Middle => middle + drift * SetOver;

    public override (Vec2 Normal, double Height) Face(double q) => (Vec2.FromAngle(Normal), Zero + lift * q);

    public override bool Turns => false;

    public override double SetOver { get; } = setOver;

    public override double Reach => 1;

    public override int Outward(double q) => Math.Sign(lift);

    public override FlatFollower Opposite(double breadth) => new StemFace(Normal + Math.PI, breadth - height, -middle, travel, SetOver);

    public override FlatFollower Nearer(double by) => new StemFace(Normal, height - by, middle, travel, SetOver);

    public override double BaseRadius(double least, double most) => Zero + Math.Min(lift * least, lift * most);

    public override Follower? WithBase(double radius, double least, double most) =>
        new StemFace(Normal, height, middle, travel, SetOver + (radius - BaseRadius(least, most)) / lift);

    public override CamSample Sample(Jet q, Jet t)
    {
        var h = lift * q + Zero;
        var w = Jet.Constant(Normal) - t;
        var offset = h.First / w.First - middle - drift * (q.Value + SetOver);
        return FromFace(h, w, Math.Acos(Math.Min(1, Math.Abs(lift))), offset);
    }
}
