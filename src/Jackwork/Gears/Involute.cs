using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>The involute of a circle.</summary>
/// <remarks>
/// A string unwound from a base circle of radius rb by the roll angle u = tan(alpha) ends at
///   R = rb sqrt(1 + u^2) = rb / cos(alpha),   polar angle turned  inv(alpha) = tan(alpha) - alpha = u - atan(u).
/// A flank that starts at the polar angle b and leans clockwise as it rises is
///   P(u) = rb (e + u e'),  e = (cos(b - u), sin(b - u)), e' = e turned a quarter turn counter-clockwise;
/// its tangent is e, its normal e', its radius of curvature rb u. The curve parallel to it at the distance c along e' is the
/// same involute of the same circle with u + c/rb in place of u under the same e.
/// Source: ISO 21771:2007, "Gears - Cylindrical involute gears and gear pairs - Concepts and geometry", clause 4.
/// </remarks>
public static class Involute
{
    /// <summary>Change of <see cref="RollAngle"/> between steps, relative, below which it has settled; double precision ends
    /// there.</summary>
    private const double Settled = 1e-15;

    private const int MostSteps = 60;

    /// <summary>inv(alpha) = tan(alpha) - alpha, rad, for a pressure angle in rad.</summary>
    public static double Inv(double pressureAngle) => Math.Tan(pressureAngle) - pressureAngle;

    /// <summary>inv of the angle whose tangent is the roll angle <paramref name="u"/>: u - atan(u), rad.</summary>
    public static double InvOfRoll(double u) => u - Math.Atan(u);

    /// <summary>The pressure angle whose inv is given, rad, to double precision. Odd in its argument.</summary>
    public static double Inverse(double inv) => Math.Atan(RollAngle(inv));

    /// <summary>The roll angle u with u - atan(u) = <paramref name="inv"/>, rad, by Newton's rule.</summary>
    /// <remarks>u - atan(u) is convex above zero and below u^3/3, so that from (3 inv)^(1/3) the first step goes past the root and the
    /// rest come down to it.</remarks>
    public static double RollAngle(double inv)
    {
        var x = Math.Abs(inv);
        if (x == 0)
        {
            return 0;
        }

        var u = Math.Cbrt(3 * x);
        for (var i = 0; i < MostSteps; i++)
        {
            var step = (InvOfRoll(u) - x) * (1 + u * u) / (u * u);
            u -= step;
            if (Math.Abs(step) <= Settled * u)
            {
                break;
            }
        }

        return Math.CopySign(u, inv);
    }

    /// <summary>Roll angle at the radius <paramref name="radius"/>, mm, not below the base radius: sqrt((R/rb)^2 - 1), rad.</summary>
    public static double RollAt(double radius, double baseRadius) =>
        Math.Sqrt(Math.Max(0, (radius - baseRadius) * (radius + baseRadius))) / baseRadius;

    /// <summary>Radius reached at the roll angle <paramref name="u"/>, mm.</summary>
    public static double RadiusAt(double u, double baseRadius) => baseRadius * Math.Sqrt(1 + u * u);

    /// <summary>The flank point at the roll angle <paramref name="u"/>, running outwards; see the remarks on the type.</summary>
    public static OutlinePoint Flank(double baseRadius, double baseAngle, double u)
    {
        var e = Vec2.FromAngle(baseAngle - u);
        return new(Point2.Origin + baseRadius * (e + u * e.Left), e);
    }
}
