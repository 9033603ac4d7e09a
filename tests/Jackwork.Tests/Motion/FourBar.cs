using System.Numerics;
using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>
/// A plane four-bar as the textbooks name it: crank a at the origin, coupler b, rocker c about (d, 0), the ground d along x;
/// theta2, theta3, theta4 counter-clockwise from x. It is drawn at some closed pose and asked at others.
/// </summary>
internal sealed class FourBar
{
    private readonly Probe probe;
    private readonly double drawnCrank;
    private readonly Complex a0;
    private readonly Complex b0;
    private readonly double d;

    public FourBar(double a, double b, double c, double d, bool open, double drawnCrankDeg)
    {
        this.d = d;
        drawnCrank = Rad(drawnCrankDeg);
        a0 = Complex.FromPolarCoordinates(a, drawnCrank);
        b0 = Meet(a0, b, d, c, open);
        Motion = Solved(Head()
            + Pivot("crank", default, new(0, 0, 1))
            + Pivot("rocker", new(d, 0, 0), new(0, 0, 1), Rod("crank", At(a0), At(b0))));
        probe = Motion.Probe();
    }

    public Jackwork.Motion.Motion Motion { get; }

    /// <summary>theta3 and theta4 in rad as jets of theta2, and the pins.</summary>
    public (Jet Theta3, Jet Theta4, Jet3 A, Jet3 B) At(double crankDeg)
    {
        probe.Go(Rad(crankDeg) - drawnCrank);
        var members = Motion.Machine.Members;
        var pinA = new CarriedPoint(members[0].Joint, At(a0)).At(probe.States[0]);
        var pinB = new CarriedPoint(members[1].Joint, At(b0)).At(probe.States[1]);
        return (Jet.Atan2(pinB.Y - pinA.Y, pinB.X - pinA.X), Jet.Atan2(pinB.Y, pinB.X - d), pinA, pinB);
    }

    /// <summary>The rocker's pin by the two circles: left of the line from crank pin to rocker pivot when open.</summary>
    public static Complex Meet(Complex a, double b, double d, double c, bool left)
    {
        var line = d - a;
        var s = line.Magnitude;
        var x = (b * b - c * c + s * s) / (2 * s);
        var y = Math.Sqrt(b * b - x * x);
        return a + line / s * new Complex(x, left ? y : -y);
    }

    private static Point3 At(Complex z) => new(z.Real, z.Imaginary, 0);
}
