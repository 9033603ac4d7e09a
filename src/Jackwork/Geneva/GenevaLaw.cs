using Jackwork.Motion;

namespace Jackwork.Geneva;

/// <summary>How a Geneva wheel turns under its pin.</summary>
/// <remarks>
/// <para>n slots; l = sin(pi/n) = r/C, r the pin's circle and C the centre distance, so that the pin enters along the slot.
/// k = -1 for an outside wheel, +1 for an inside one. a is the pin's angle from the line of centres: outside from the
/// direction to the wheel's axis, inside from the opposite one; A = pi/2 + k pi/n, so the pin is in a slot while |a| &lt; A.</para>
/// <para>Driven: g = atan2(l sin a, 1 + k l cos a), from -pi/n at a = -A to pi/n at a = A; the wheel turns by k g.</para>
/// <para>g' = l (cos a + k l) / (1 + l^2 + 2 k l cos a), g'' = -l (1 - l^2) sin a / (1 + l^2 + 2 k l cos a)^2;
/// at entry and exit g' = 0 and |g''| = tan(pi/n). Back: a = asin(sin g / l) + k g.</para>
/// <para>Greatest g' at a = 0: l / (1 + k l). Greatest g'': outside where cos a = -G + sqrt(G^2 + 2), G = (1 + l^2)/(4 l); inside at entry.</para>
/// <para>J. H. Bickford, Mechanisms for Intermittent Motion, chapter 9; R. L. Norton, Design of Machinery, section 2.15; Machinery's Handbook,
/// "Geneva Wheel" (all from memory).</para>
/// <para><c>default</c> has no slots and is no law.</para>
/// </remarks>
/// <param name="Slots">Number of slots n, 3 or more.</param>
/// <param name="Inside">Whether the slots open inwards.</param>
public readonly record struct GenevaLaw(int Slots, bool Inside)
{
    /// <summary>Fewest slots: with two the pin's circle would pass through the wheel's axis.</summary>
    public const int Fewest = 3;

    /// <summary>Most slots that are worked out: more leave no room for the driver's shaft.</summary>
    public const int Most = 12;

    /// <summary>An angle within this of entry or exit counts as there, rad: rounding of many added turns, far below any visible angle.</summary>
    public const double Corner = 1e-9;

    /// <summary>k: the sense of the wheel against the driver's, -1 outside, +1 inside.</summary>
    public int Sense => Inside ? 1 : -1;

    /// <summary>l: the pin's circle over the centre distance.</summary>
    public double Lambda => Math.Sin(Math.PI / Slots);

    /// <summary>A: half the angle that the driver turns while the pin is in a slot, rad.</summary>
    public double HalfDrive => Math.PI / 2 + Sense * Math.PI / Slots;

    /// <summary>Angle that the driver turns while the wheel stands, rad.</summary>
    public double Dwell => 2 * (Math.PI - HalfDrive);

    /// <summary>Greatest speed of the wheel over that of the driver.</summary>
    public double PeakSpeed => Lambda / (1 + Sense * Lambda);

    /// <summary>Acceleration with which the wheel starts and stops, per square of the driver's speed: the jump at entry and exit.</summary>
    public double EntryAcceleration => Math.Tan(Math.PI / Slots);

    /// <summary>The pin's angle before the line of centres at which the wheel's acceleration is greatest, rad.</summary>
    public double PeakAt
    {
        get
        {
            if (Inside)
            {
                return HalfDrive;
            }

            var g = (1 + Lambda * Lambda) / (4 * Lambda);
            return Math.Acos(Math.Sqrt(g * g + 2) - g);
        }
    }

    /// <summary>Greatest acceleration of the wheel, per square of the driver's speed.</summary>
    public double PeakAcceleration => Math.Abs(Driving(Jet.Variable(-PeakAt)).Second);

    /// <summary>How far the wheel has turned, rad, in the driver's sense, when the pin has turned by <paramref name="a"/> since it last stood in the line of centres with the wheel at 0.</summary>
    /// <remarks>At entry and exit the derivatives are those just after, in the sense in which the driver goes.</remarks>
    public Jet Wheel(Jet a)
    {
        var turn = Math.Floor(a.Value / Math.Tau + 0.5);
        var rel = a - turn * Math.Tau;
        var past = Math.Abs(rel.Value) - HalfDrive;
        var before = Sense * Math.Tau / Slots * turn;
        return past > Corner || (past > -Corner && rel.Value * rel.First >= 0)
            ? Jet.Constant(before + Sense * Math.Sign(rel.Value) * Math.PI / Slots)
            : Sense * Driving(rel) + before;
    }

    /// <summary>
    /// The pin's angle a, rad, at which the wheel stands at <paramref name="wheel"/>, in the turn in which it turns there;
    /// null where the wheel stands locked and the pin may be anywhere out of the slots.
    /// </summary>
    public Jet? Pin(Jet wheel)
    {
        var steps = Sense * Slots / Math.Tau * wheel.Value;
        var turn = Math.Floor(steps + 0.5);
        var g = Sense * wheel - turn * Math.Tau / Slots;
        if (Math.PI / Slots - Math.Abs(g.Value) < Corner)
        {
            return null;
        }

        var x = (1 / Lambda) * Jet.SinCos(g).Sin;
        var c = Math.Sqrt(1 - x.Value * x.Value);
        return Jet.Chain(x, Math.Asin(x.Value), 1 / c, x.Value / (c * c * c)) + Sense * g + turn * Math.Tau;
    }

    private Jet Driving(Jet a)
    {
        var (sin, cos) = Jet.SinCos(a);
        return Jet.Atan2(Lambda * sin, (Sense * Lambda) * cos + 1);
    }
}
