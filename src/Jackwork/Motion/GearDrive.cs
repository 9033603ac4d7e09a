using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>A pair of toothed wheels.</summary>
public sealed class GearDrive(int driver, int driven, Rational ratio, GearSpec spec) : RatioDrive(driver, driven, ratio)
{
    /// <summary>The wheels as designed.</summary>
    public GearSpec Spec { get; } = spec;

    /// <inheritdoc/>
    public override string Kind => "gear";

    /// <inheritdoc/>
    public override string How(string driver) => $"is geared {string.Join(" to ", Spec.Teeth)} with {driver}";

    internal override string? Ended => Spec.DriverSector is null && Spec.Sector is null ? null : "sector";
}
