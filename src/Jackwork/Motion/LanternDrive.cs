using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>A lantern of pins and the toothed wheel that it gears with.</summary>
/// <param name="driver">Driving member.</param>
/// <param name="driven">Driven member.</param>
/// <param name="ratio">Turns of the driven for a turn of the driver.</param>
/// <param name="centreDistance">Distance of the shafts, mm.</param>
/// <param name="spec">The two as designed.</param>
public sealed class LanternDrive(int driver, int driven, Rational ratio, double centreDistance, LanternSpec spec) : RatioDrive(driver, driven, ratio)
{
    /// <summary>The two as designed.</summary>
    public LanternSpec Spec { get; } = spec;

    /// <summary>Distance of the shafts, mm.</summary>
    public double CentreDistance { get; } = centreDistance;

    /// <summary>Whether the driver has the pins.</summary>
    public bool PinsDrive => Spec.PinsOn == "driver";

    /// <summary>The member with the toothed wheel.</summary>
    public int Wheel => PinsDrive ? Driven : Driver;

    /// <summary>The member with the pins.</summary>
    public int Lantern => PinsDrive ? Driver : Driven;

    /// <inheritdoc/>
    public override string Kind => "lantern";

    /// <inheritdoc/>
    public override string How(string driver) => PinsDrive
        ? $"is turned by the {Spec.Pins} pins of a lantern on {driver}, with a wheel of {Spec.Teeth} teeth"
        : $"is turned as a lantern of {Spec.Pins} pins by a wheel of {Spec.Teeth} teeth on {driver}";
}
