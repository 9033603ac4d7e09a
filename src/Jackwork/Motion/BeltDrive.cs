using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>A belt or chain between two wheels.</summary>
public sealed class BeltDrive(int driver, int driven, Rational ratio, BeltSpec spec) : RatioDrive(driver, driven, ratio)
{
    /// <summary>The belt as designed.</summary>
    public BeltSpec Spec { get; } = spec;

    /// <inheritdoc/>
    public override string Kind => "belt";

    /// <inheritdoc/>
    public override string How(string driver) => $"is driven by a belt from {driver}";
}
