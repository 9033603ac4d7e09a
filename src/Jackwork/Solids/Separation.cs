using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>How far two pieces are apart, or how deep one stands in the other.</summary>
/// <param name="Signed">
/// Distance, mm, when 0 or more. Below 0 the pieces overlap, and its size is the shortest move that would bring them just to touch.
/// </param>
/// <param name="Normal">Unit vector from the first piece to the second. Moving the second by -<paramref name="Signed"/> along it makes them touch.</param>
/// <param name="OnFirst">The point of the first piece nearest the second (deepest in it), mm.</param>
/// <param name="OnSecond">The point of the second piece nearest the first, mm; it is <paramref name="OnFirst"/> + Signed Normal.</param>
/// <param name="AlongNormal">
/// Width, mm, of the slab across <paramref name="Normal"/> that keeps the pieces apart; below 0, how far they reach past each other along it.
/// The true distance is never less, so it is the number to rely on.
/// </param>
/// <param name="Gap">Proved bound on the error of <paramref name="Signed"/>, mm, but for rounding: the true distance or depth may be less by that much, not more.</param>
public readonly record struct Separation(
    double Signed, Vec3 Normal, Point3 OnFirst, Point3 OnSecond, double AlongNormal, double Gap)
{
    /// <summary>Distance, mm; 0 when the pieces touch or overlap.</summary>
    public double Distance => Math.Max(0, Signed);

    /// <summary>Depth of overlap, mm; 0 when the pieces are apart.</summary>
    public double Depth => Math.Max(0, -Signed);

    /// <summary>The same seen from outside <paramref name="frame"/>.</summary>
    public Separation In(in Frame frame) =>
        new(Signed, frame.Apply(Normal), frame.Apply(OnFirst), frame.Apply(OnSecond), AlongNormal, Gap);
}
