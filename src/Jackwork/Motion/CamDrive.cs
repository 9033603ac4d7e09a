using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A plate cam on the driver that moves the driven, its follower. Its outline follows from the chart; see Cams.</summary>
public sealed class CamDrive(int driver, int driven, CamSpec spec) : FollowerDrive(driver, driven)
{
    /// <summary>The cam as designed.</summary>
    public CamSpec Spec { get; } = spec;

    /// <inheritdoc/>
    public override string Kind => "cam";

    /// <inheritdoc/>
    public override string How(string driver) => $"follows its cam on {driver}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => 
    [
        ($"follower of {nameOf(Driven)}", Spec.Follower.At, Spec.Follower.Facing),
        .. Spec.Second is { Follower: var second } ? [($"second follower of {nameOf(Driven)}", second.At, second.Facing)] : ((string, Point3, Vec3?)[])[],
    ];
}
