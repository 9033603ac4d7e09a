using Jackwork.Design;
using Jackwork.Pins;

namespace Jackwork.Motion;

/// <summary>Pins on part of the driver's rim that turn a wheel of pins on for part of each turn, and a rim that locks it for the rest.</summary>
/// <param name="driver">Driving member.</param>
/// <param name="driven">The wheel.</param>
/// <param name="spec">The wheel as designed.</param>
/// <param name="place">Where the pins meet.</param>
/// <param name="law">How it goes.</param>
/// <param name="way">+1 where the driver goes forward about its axis, -1 where it goes back.</param>
public sealed class IntermittentDrive(int driver, int driven, IntermittentSpec spec, PinPlace place, IntermittentLaw law, int way = 1) : LockedDrive(driver, driven, spec.Starts, place, law, way)
{
    /// <summary>The wheel as designed.</summary>
    public IntermittentSpec Spec { get; } = spec;

    /// <inheritdoc/>
    public override string Kind => "intermittent";

    /// <inheritdoc/>
    public override string Word => "intermittent pin wheel";

    /// <inheritdoc/>
    public override string How(string driver) => FormattableString.Invariant($"is turned on as an intermittent pin wheel by {driver}, {Law.Steps} of its {Law.DrivenPins} pins for each of its turns");

    /// <inheritdoc/>
    public override IEnumerable<(string What, Geometry.Point3 At, Geometry.Vec3? Towards)> Places(Func<int, string> nameOf) =>
        Spec.At is { } at ? [($"pins of the intermittent wheel {nameOf(Driven)}", at, null)] : [];

    internal override Drive TurnedBy(int way) => way == Way ? this : new IntermittentDrive(Driver, Driven, Spec, Place, Law, way);
}
