using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A barrel cam on the driver that moves the driven, its follower. Its groove follows from the chart; see Barrels.</summary>
public sealed class BarrelDrive(int driver, int driven, BarrelSpec spec) : FollowerDrive(driver, driven)
{
    /// <summary>The barrel as designed.</summary>
    public BarrelSpec Spec { get; } = spec;

    /// <inheritdoc/>
    public override string Kind => "barrel";

    /// <inheritdoc/>
    public override string Word => "barrel cam";

    /// <inheritdoc/>
    public override string How(string driver) => $"runs in the groove of its barrel on {driver}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [($"roller of {nameOf(Driven)}", Spec.At, null)];
}
