using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>A worm and its wheel on shafts that pass each other square.</summary>
/// <remarks>
/// Worm axis a, wheel axis b, unit c from the worm's axis to the wheel's; z1 starts, z2 teeth. A right-hand thread turned by w about a moves along -a where it stands fixed,
/// by m z1 w/2, and the wheel's rim, at -c m z2/2 from its axis, goes along: w2 b x (-c) z2 = -w z1 a, so w2 = s w z1/z2 with s = a . (b x c), and -s for a left-hand thread.
/// </remarks>
/// <param name="driver">The driving shaft.</param>
/// <param name="driven">The driven shaft.</param>
/// <param name="ratio">Turns of the driven for one of the driver, about the axes as drawn.</param>
/// <param name="spec">The pair as designed.</param>
/// <param name="passing">Where the axes are nearest.</param>
/// <param name="isRight">Whether the thread is a right-hand one.</param>
public sealed class WormDrive(int driver, int driven, Rational ratio, GearSpec spec, ShaftApproach passing, bool isRight) : RatioDrive(driver, driven, ratio)
{
    /// <summary>The pair as designed, with a module.</summary>
    public GearSpec Spec { get; } = spec;

    /// <summary>Where the axes are nearest.</summary>
    public ShaftApproach Passing { get; } = passing;

    /// <summary>Whether the thread is a right-hand one.</summary>
    public bool IsRight { get; } = isRight;

    /// <summary>Whether the worm is on the driver, and drives.</summary>
    public bool WormDrives => Spec.Teeth[0] < Spec.Teeth[1];

    /// <summary>Index of the shaft with the worm.</summary>
    public int Worm => WormDrives ? Driver : Driven;

    /// <summary>Index of the shaft with the wheel.</summary>
    public int Wheel => WormDrives ? Driven : Driver;

    /// <inheritdoc/>
    public override string Kind => "gear";

    /// <inheritdoc/>
    public override string Word => "worm pair";

    /// <inheritdoc/>
    public override string How(string driver) => WormDrives ? $"is turned by a worm on {driver}, {string.Join(" to ", Spec.Teeth)}" : $"has a worm that is turned by a wheel on {driver}, {string.Join(" to ", Spec.Teeth)}";
}
