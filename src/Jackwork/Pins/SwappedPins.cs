using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>A pair of pins with driver and driven changed over.</summary>
/// <remarks>Seen in a mirror and run backward, a pin that is pushed is the one that pushes: where y = f(x) of the pair as given, here -x = f(-y), so y = -x(-x), with x(y) the way back there.</remarks>
/// <param name="Given">The pair as given, its driver the driven here.</param>
public sealed record SwappedPins(PinPair Given) : PinPair
{
    /// <inheritdoc/>
    public override double DriverCircle => Given.DrivenCircle;

    /// <inheritdoc/>
    public override double DrivenCircle => Given.DriverCircle;

    /// <inheritdoc/>
    public override double Reach => -Given.WedgeAt;

    /// <inheritdoc/>
    public override double ReachAt => -Given.Wedge;

    /// <inheritdoc/>
    public override double Wedge => -Given.ReachAt;

    /// <inheritdoc/>
    public override double WedgeAt => -Given.Reach;

    /// <inheritdoc/>
    public override Jet Driven(Jet x) => -Given.Driver(-x);

    /// <inheritdoc/>
    public override Jet Driver(Jet y) => -Given.Driven(-y);

    /// <inheritdoc/>
    public override double Gap(double x, double y) => Given.Gap(-y, -x);
}
