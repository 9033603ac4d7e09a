using Jackwork.Geometry;

namespace Jackwork.Pins;

/// <summary>A round rim of the driver in a hollow of the driven, as on a Geneva wheel; the two in one plane beside the pins.</summary>
/// <remarks>
/// <para>C distance of the axes, L radius of the rim, c clearance, H = L + c radius of the hollow about the driver's axis, R radius of the driven's disc.
/// They meet from -D to D about the line of centres, cos D = (C^2 + H^2 - R^2)/(2 C H); a hollow takes asin(H sin D/R) to either side as seen from
/// the driven's axis. In the middle of the stand the play is c/(C sin D) either way.</para>
/// <para>At pick-up and let-go an end of the rim is just in the line of centres. The horn that then swings in behind it is at most R omega2 fast, the end L omega1:
/// with L at least the circle of the driver's pins and R less than twice that of the driven's it never comes up with it.</para>
/// <para>J. H. Bickford, Mechanisms for Intermittent Motion, chapter 9, for the lock (from memory); its proportions are common practice, no source.</para>
/// </remarks>
/// <param name="CentreDistance">C, mm.</param>
/// <param name="Locking">L, mm.</param>
/// <param name="Clearance">c, mm.</param>
/// <param name="Radius">R, mm.</param>
public sealed record ParallelLock(double CentreDistance, double Locking, double Clearance, double Radius) : PinLock
{
    /// <summary>Half the angle D, rad, over which the rim lies in its hollow.</summary>
    public double HalfLap => Math.Acos((CentreDistance * CentreDistance + Hollow * Hollow - Radius * Radius) / (2 * CentreDistance * Hollow));

    /// <summary>H, mm.</summary>
    public double Hollow => Locking + Clearance;

    /// <inheritdoc/>
    public override double Play => Clearance / (CentreDistance * Math.Sin(HalfLap));

    /// <inheritdoc/>
    public override double HalfStop => Math.Asin(Math.Min(1, Hollow * Math.Sin(HalfLap) / Radius));

    /// <inheritdoc/>
    public override double Rim => Locking;

    /// <inheritdoc/>
    public override double CutAway => CentreDistance - Radius - Relief;

    /// <inheritdoc/>
    public override double Disc => Radius;

    /// <inheritdoc/>
    public override double Core => CentreDistance - Hollow;

    private protected override Segment Stop => Segment.Arc(new(CentreDistance, 0), Hollow, Math.PI + HalfLap, -2 * HalfLap);
}
