using System.Numerics;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Motion;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Linkages;

/// <summary>
/// Four-bars with a coupler that carries a point, named as the textbooks do: crank a at the origin, coupler b, rocker c about (d, 0); the
/// point X stands at the distance p from the crank's pin, turned by delta from the coupler's line. Angles in rad counter-clockwise from x.
/// </summary>
/// <param name="A">Crank, mm.</param>
/// <param name="B">Coupler, mm.</param>
/// <param name="C">Rocker, mm.</param>
/// <param name="D">Ground, mm.</param>
/// <param name="P">From the crank's pin to the point, mm.</param>
/// <param name="Delta">Angle at the crank's pin from the coupler's line to the point.</param>
/// <param name="Open">Whether the rocker's pin lies to the left of the line from the crank's pin to the rocker's pivot.</param>
internal readonly record struct Coupled(double A, double B, double C, double D, double P, double Delta, bool Open)
{
    /// <summary>How far the rocker's pin lies beside the crank's along their axes, mm.</summary>
    public double Beside { get; init; }

    /// <summary>The machine drawn at a crank angle, the coupler on the crank or on the rocker.</summary>
    public string Text(double theta2, bool onRocker)
    {
        var a = Complex.FromPolarCoordinates(A, theta2);
        var b = FourBar.Meet(a, B, D, C, Open);
        return Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("rocker", new(D, 0, 0), new(0, 0, 1), Rod("crank", At(a), At(b, Beside)))
            + Pivot("link", onRocker ? At(b, Beside) : At(a), new(0, 0, 1), $"coupler: {{of: rocker, point: {List(At(X(theta2)))}}}", onRocker ? "rocker" : "crank");
    }

    /// <summary>The point at a crank angle, by the two circles.</summary>
    public Complex X(double theta2)
    {
        var a = Complex.FromPolarCoordinates(A, theta2);
        var b = FourBar.Meet(a, B, D, C, Open);
        return a + P / B * (b - a) * Complex.FromPolarCoordinates(1, Delta);
    }

    /// <summary>The point's path over a turn, and the crank angle at each step.</summary>
    public IReadOnlyList<(double Theta2, Jet3 X)> Path(double drawn, bool onRocker)
    {
        var (motion, x) = (Solved(Text(drawn, onRocker)), X(drawn));
        return [.. Locus.Of(motion, motion.Machine.IndexOf("link"), At(x)).Select((point, i) => (drawn + motion.Machine.Performance.At(i), point))];
    }

    private static Point3 At(Complex z, double beside = 0) => new(z.Real, z.Imaginary, beside);
}
