using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>Any motion of two frames, with one bound on the relative speed of all points of both parts.</summary>
/// <param name="first">Frame of the first part at u.</param>
/// <param name="second">Frame of the second part at u.</param>
/// <param name="speed">Bound on the speed of every point of the second part as seen from the first, mm per unit of u, 0 or more.</param>
public sealed class BoundedMotion(Func<double, Frame> first, Func<double, Frame> second, double speed) : IRelativeMotion
{
    private readonly double speed = speed >= 0 && double.IsFinite(speed)
        ? speed
        : throw new ArgumentOutOfRangeException(nameof(speed), speed, FormattableString.Invariant($"Speed is {speed} mm per unit; allowed: 0 or more."));

    /// <inheritdoc/>
    public Frame At(double u) => first(u).See(second(u));

    /// <inheritdoc/>
    public double Speed(in Ball ball, double from, double to) => speed;

    /// <inheritdoc/>
    public double SpeedAlong(in Vec3 normal, ConvexPiece first, ConvexPiece second, double from, double to) => speed;
}
