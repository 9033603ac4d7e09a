using Jackwork.Design;
using Jackwork.PartialGears;
using Jackwork.Pins;

namespace Jackwork.Motion;

/// <summary>Teeth on part of the driver's rim that turn a spur wheel on for part of each turn, and a rim that locks it for the rest.</summary>
/// <param name="driver">Driving member.</param>
/// <param name="driven">The wheel.</param>
/// <param name="spec">The two as designed.</param>
/// <param name="place">Where they meet.</param>
/// <param name="sizes">The teeth, and how they go.</param>
/// <param name="way">+1 where the driver goes forward about its axis, -1 where it goes back.</param>
public sealed class PartialGearDrive(int driver, int driven, PartialGearSpec spec, PinPlace place, PartialGear sizes, int way = 1) : LockedDrive(driver, driven, spec.Starts, place, sizes.Law, way)
{
    /// <summary>The two as designed.</summary>
    public PartialGearSpec Spec { get; } = spec;

    /// <summary>The teeth, and how they go.</summary>
    public PartialGear Gear { get; } = sizes;

    /// <inheritdoc/>
    public override string Kind => "partial-gear";

    /// <inheritdoc/>
    public override string Word => "partial gear";

    /// <inheritdoc/>
    public override string How(string driver) => FormattableString.Invariant($"is turned on by {Law.DriverPins} teeth of a partial gear on {driver}, by {Law.Steps} of its {Law.DrivenPins} teeth for each turn of that");

    /// <inheritdoc/>
    public override IEnumerable<(string What, Geometry.Point3 At, Geometry.Vec3? Towards)> Places(Func<int, string> nameOf) =>
        Spec.At is { } at ? [($"teeth of the partial gear at {nameOf(Driven)}", at, null)] : [];

    internal override Drive TurnedBy(int way) => way == Way ? this : new PartialGearDrive(Driver, Driven, Spec, Place, Gear, way);
}
