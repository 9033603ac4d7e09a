using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>Two bevel wheels on shafts that meet.</summary>
/// <remarks>
/// With u1, u2 the unit directions from where the axes meet to the two wheels, the pitch cones roll on each other along a line between them:
/// w1 u1 x l = w2 u2 x l, so that the wheels turn z1 : z2 in opposite senses about u1 and u2. Axes drawn against these turn the sign.
/// </remarks>
/// <param name="driver">The driving shaft.</param>
/// <param name="driven">The driven shaft.</param>
/// <param name="ratio">Turns of the driven for one of the driver, about the axes as drawn.</param>
/// <param name="spec">The wheels as designed.</param>
/// <param name="meeting">Where the axes meet, or nearly do.</param>
/// <param name="sides">For either shaft +1 where its wheel stands along its direction from there, else -1.</param>
public sealed class BevelDrive(int driver, int driven, Rational ratio, GearSpec spec, ShaftApproach meeting, (int Driver, int Driven) sides) : RatioDrive(driver, driven, ratio)
{
    /// <summary>The wheels as designed, with a module.</summary>
    public GearSpec Spec { get; } = spec;

    /// <summary>Where the axes meet, or nearly do.</summary>
    public ShaftApproach Meeting { get; } = meeting;

    /// <summary>For either shaft +1 where its wheel stands along its direction from the meeting, else -1.</summary>
    public (int Driver, int Driven) Sides { get; } = sides;

    /// <inheritdoc/>
    public override string Kind => "gear";

    /// <inheritdoc/>
    public override string Word => "bevel pair";

    /// <inheritdoc/>
    public override string How(string driver) => $"is turned by bevel wheels, {string.Join(" to ", Spec.Teeth)}, from {driver}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [($"where the axes of {nameOf(Driver)} and {nameOf(Driven)} meet", Meeting.OnDriver, null)];
}
