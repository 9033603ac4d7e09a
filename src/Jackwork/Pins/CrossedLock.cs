using Jackwork.Geometry;

namespace Jackwork.Pins;

/// <summary>A flat of the driven's disc against the face of the driver's plate, which is wider where it locks: shafts at right angles.</summary>
/// <remarks>
/// <para>F distance of the flat from the driven's axis, c its clearance from the face, R radius of the disc; half the flat's angle is G = acos(F/R). Turned by
/// b its corner is at R cos(G - b): it meets the face, at F + c, when b = G - acos((F + c)/R), the play either way.</para>
/// <para>The disc stands above the driver's pins, so that it turns freely over the part of the plate that carries them; there the plate is cut away.</para>
/// <para>Own derivation; the proportions are common practice, no source.</para>
/// </remarks>
/// <param name="Flat">F, mm.</param>
/// <param name="Clearance">c, mm.</param>
/// <param name="Radius">R, mm.</param>
/// <param name="Wide">Radius of the driver's plate where it locks, mm.</param>
/// <param name="Narrow">Radius of the driver's plate where it drives, mm.</param>
public sealed record CrossedLock(double Flat, double Clearance, double Radius, double Wide, double Narrow) : PinLock
{
    /// <inheritdoc/>
    public override double Play => HalfStop - Math.Acos((Flat + Clearance) / Radius);

    /// <inheritdoc/>
    public override double HalfStop => Math.Acos(Flat / Radius);

    /// <inheritdoc/>
    public override double Rim => Wide;

    /// <inheritdoc/>
    public override double CutAway => Narrow;

    /// <inheritdoc/>
    public override double Disc => Radius;

    /// <inheritdoc/>
    public override double Core => Flat;

    private protected override Segment Stop => new(Point2.Origin + Radius * Vec2.FromAngle(-HalfStop), Point2.Origin + Radius * Vec2.FromAngle(HalfStop), 0);
}
