using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>A plate cam on the driver that moves the driven, its follower. Its outline follows from the chart; see Cams.</summary>
public sealed class CamDrive(int driver, int driven, CamSpec spec) : Drive(driver, driven)
{
    /// <summary>The cam as designed.</summary>
    public CamSpec Spec { get; } = spec;

    /// <inheritdoc/>
    public override string Kind => "cam";
}
