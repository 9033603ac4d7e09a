using Jackwork.Gears;
using Jackwork.Motion;
using Jackwork.Pins;

namespace Jackwork.PartialGears;

/// <summary>One tooth of a driver whose front flank pushes the rear flank of one tooth of a driven before it, from tip to tip.</summary>
/// <remarks>
/// <para>Axes C apart, rb1, rb2 base and ra1, ra2 tip radii, w the working pressure angle, cos(w) = (rb1 + rb2)/C. x and y are the places of the two flanks on their working
/// pitch circles, from the line of centres, positive the way the wheels go. At the radius R a flank lies back by  inv(R) - inv(w),  cos of the angle of R = rb/R.</para>
/// <para>Flank on flank, along the line of action:  y = x rb1/rb2.  It begins where the driven's tip comes to that line and ends where the driver's tip leaves it.</para>
/// <para>After that the driver's tip corner goes on along the driven's flank. From the driven's axis it is seen at t and the distance R:
/// P = ra1 (cos(x - d1), sin(x - d1)),  d1 = inv(ra1) - inv(w),  t = atan2(P_y, C - P_x),  y = t - inv(R) + inv(w).  The pair lets go where R = ra2.</para>
/// <para>Before it the driven's tip corner comes down the driver's flank: the same with the wheels exchanged,  x = t + inv(R) - inv(w),  P = ra2 (cos(y + d2), sin(y + d2)).
/// It comes into reach where R = ra1; a tooth of which the corner stands farther back there is met on its top, and wedged.</para>
/// <para>Both stretches join on with the same speed. The ratio is above the even one before the line of action and below it after; at let-go it is not nothing.</para>
/// <para>ISO 21771:2007, clauses 4 and 5, for flanks and line of action; J. H. Bickford, Mechanisms for Intermittent Motion, on mutilated gears, for the tips (both from memory).</para>
/// </remarks>
public sealed record ToothPair : PinPair
{
    private readonly double distance, base1, base2, tip1, tip2, invWorking, back1, back2, begins, ends;

    /// <summary>A tooth of the pair's first wheel, which drives, and one of its second.</summary>
    /// <param name="pair">The two wheels, both outside.</param>
    public ToothPair(SpurPair pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        (distance, base1, base2, tip1, tip2) = (pair.CentreDistance, pair.First.BaseRadius, pair.Second.BaseRadius, pair.First.TipRadius, pair.Second.TipRadius);
        invWorking = Involute.Inv(pair.WorkingPressureAngle);
        (back1, back2) = (Back(tip1, base1), Back(tip2, base2));
        begins = (Math.Max(0, pair.Line.AtRadius2(tip2)) - pair.Line.PitchPoint) / base1;
        ends = (pair.Line.AtRadius1(tip1) - pair.Line.PitchPoint) / base1;
        (DriverCircle, DrivenCircle) = (pair.WorkingRadius1, pair.WorkingRadius2);
        Thick = (pair.First.ToothThickness(DriverCircle) / DriverCircle, pair.Second.ToothThickness(DrivenCircle) / DrivenCircle);
        (ReachAt, WedgeAt) = (Side(tip1, tip2) + back1, back1 - Side(tip1, tip2));
        (Reach, Wedge) = (Side(tip2, tip1) - back2, -Side(tip2, tip1) - back2);
    }

    /// <inheritdoc/>
    public override double DriverCircle { get; init; }

    /// <inheritdoc/>
    public override double DrivenCircle { get; init; }

    /// <inheritdoc/>
    public override (double Driver, double Driven) Thick { get; }

    /// <inheritdoc/>
    public override double Reach { get; }

    /// <inheritdoc/>
    public override double ReachAt { get; }

    /// <inheritdoc/>
    public override double Wedge { get; }

    /// <inheritdoc/>
    public override double WedgeAt { get; }

    /// <summary>x from which flank touches flank, rad.</summary>
    public double Begins => begins;

    /// <summary>x up to which it does, rad; before <see cref="Begins"/> where the driver's tip is too short for it.</summary>
    public double Ends => ends;

    /// <summary>Angle at the driven's axis from its flank on the pitch circle to its tip corner, rad.</summary>
    public double DrivenBack => back2;

    private double Even => base1 / base2;

    /// <inheritdoc/>
    public override Jet Driven(Jet x) =>
        x.Value < begins ? Inverse(x, Wedge, Even * begins, Entering)
        : x.Value <= ends ? Even * x
        : Leaving(x);

    /// <inheritdoc/>
    public override Jet Driver(Jet y) =>
        y.Value < Even * begins ? Entering(y)
        : y.Value <= Even * ends ? (1 / Even) * y
        : Inverse(y, ends, ReachAt, Leaving);

    /// <inheritdoc/>
    public override double Gap(double x, double y)
    {
        if (x < WedgeAt || x > ReachAt)
        {
            return double.PositiveInfinity;
        }

        if (x >= begins && x <= ends)
        {
            return base2 * y - base1 * x;
        }

        // The tip corner that touches, and by how much the other wheel must turn for its flank to come there.
        var (p, q) = x > ends
            ? (tip1 * Geometry.Vec2.FromAngle(x - back1), new Geometry.Vec2(distance, 0))
            : (new Geometry.Vec2(distance, 0) - tip2 * Geometry.Vec2.FromAngle(-(y + back2)), default);
        var seen = p - q;
        return x > ends
            ? base2 * (y + Back(seen.Length, base2) - Math.Atan2(seen.Y, -seen.X))
            : base1 * (seen.Angle - x + Back(seen.Length, base1));
    }

    // The driver's tip corner on the driven's flank.
    private Jet Leaving(Jet x)
    {
        var (r, t) = Seen(x - back1, tip1);
        return t - Lies(r, base2);
    }

    // The driven's tip corner on the driver's flank.
    private Jet Entering(Jet y)
    {
        var (r, t) = Seen(y + back2, tip2);
        return t + Lies(r, base1);
    }

    // A corner at an angle on a circle about one axis, seen from the other: distance and angle.
    private (Jet R, Jet T) Seen(Jet angle, double circle)
    {
        var (sin, cos) = Jet.SinCos(angle);
        var (across, up) = (-circle * cos + distance, circle * sin);
        return (Jet.Sqrt(Jet.Square(across) + Jet.Square(up)), Jet.Atan2(up, across));
    }

    // How far back a flank lies at a radius.
    private Jet Lies(Jet radius, double baseRadius)
    {
        var square = (1 / (baseRadius * baseRadius)) * Jet.Square(radius) - 1;
        var tan = square.Value > 0 ? Jet.Sqrt(square) : Jet.Constant(0);
        return tan - Jet.Atan2(tan, Jet.Constant(1)) - invWorking;
    }

    private double Back(double radius, double baseRadius) => Involute.InvOfRoll(Involute.RollAt(Math.Max(radius, baseRadius), baseRadius)) - invWorking;

    // Angle from the line of centres at which a circle about one axis meets one about the other, seen from the first.
    private double Side(double own, double other) => Math.Acos(Math.Clamp((distance * distance + own * own - other * other) / (2 * distance * own), -1, 1));

    // The t between low and high at which a rising f(t) has a value:  t' = v'/f',  t'' = (v'' - f'' t'^2)/f'.
    private static Jet Inverse(Jet value, double low, double high, Func<Jet, Jet> f)
    {
        double Off(double at) => f(Jet.Constant(at)).Value - value.Value;
        var (below, above) = (Off(low), Off(high));
        var t = below >= 0 ? low : above <= 0 ? high : Roots.Between(low, below, high, above, Off);
        var near = f(Jet.Variable(t));
        t = Math.Clamp(t - (near.Value - value.Value) / near.First, low, high);
        var here = f(Jet.Variable(t));
        var first = value.First / here.First;
        return new(t, first, (value.Second - here.Second * first * first) / here.First);
    }
}
