using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>How a wheel with pins all round drives another.</summary>
/// <remarks>
/// <para>n1 and n2 pins, pitches p = 2 pi/n1 and t = 2 pi/n2, y = f(x) a pair in contact (see <see cref="PinPair"/>). The pin that pushes farthest carries,
/// b = max over i of f(a - i p) + i t, and back a = min over i of x(b - i t) + i p. At X the next takes over, f(X) = f(X - p) + t; i with
/// X - p &lt;= a - i p &lt; X or a neighbour of it carries, since the next may push on for a while as it comes into reach and fall back again.</para>
/// <para>The mean ratio is n1/n2; what b departs from it is the transmission error. At X the speed jumps from f'(X) to f'(X - p).</para>
/// <para>R. Willis, Principles of Mechanism, 2nd ed., on pin wheels (from memory), for the kind; the law of the farthest pin is its own derivation:
/// one-sided contact, the driven not running ahead.</para>
/// </remarks>
public sealed class PinWheelLaw
{
    /// <summary>Places within a pitch at which play and error are looked at.</summary>
    private const int Looked = 400;

    private readonly double over;
    private readonly double overDriven;

    private PinWheelLaw(PinPair pair, int driverPins, int drivenPins, double over)
    {
        (Pair, DriverPins, DrivenPins, this.over) = (pair, driverPins, drivenPins, over);
        overDriven = Pair.Driven(Jet.Constant(over)).Value;
    }

    /// <summary>Any pin of the driver with one of the driven.</summary>
    public PinPair Pair { get; }

    /// <summary>n1.</summary>
    public int DriverPins { get; }

    /// <summary>n2.</summary>
    public int DrivenPins { get; }

    /// <summary>p, rad.</summary>
    public double DriverPitch => Math.Tau / DriverPins;

    /// <summary>t, rad.</summary>
    public double DrivenPitch => Math.Tau / DrivenPins;

    /// <summary>Where a pin carries in the middle of its pitch: its x, rad.</summary>
    public double Middle => over - DriverPitch / 2;

    /// <summary>Speed ratios before and after each taking over.</summary>
    public (double Before, double After) Jump => (Pair.Driven(Jet.Variable(over)).First, Pair.Driven(Jet.Variable(over - DriverPitch)).First);

    /// <summary>Transmission error from least to most, rad of the driven.</summary>
    public double Error => Over(a => Driven(Jet.Constant(a)).Value - a * DrivenPitch / DriverPitch) is var e ? e.Most - e.Least : 0;

    /// <summary>Least play of the driven between the driver's pins, rad; below nothing they jam.</summary>
    public double LeastPlay => Over(Play).Least;

    /// <summary>The law; null where pins let go, or come upon each other head-on, before one takes over from another.</summary>
    /// <remarks>The driver's crossed pins are as long as they can be without meeting head-on: they push to 0.85 of a pitch, or down to 0.55 of it. For pegs see <see cref="PegPair"/>.</remarks>
    /// <param name="stand">How the pins stand.</param>
    /// <param name="size">Distance of parallel axes, the driven's circle on crossed ones, mm.</param>
    /// <param name="driverPins">n1.</param>
    /// <param name="drivenPins">n2.</param>
    /// <param name="pin">Diameter of the pins, mm.</param>
    public static PinWheelLaw? Of(PinStand stand, double size, int driverPins, int drivenPins, double pin)
    {
        var (p, t) = (Math.Tau / driverPins, Math.Tau / drivenPins);
        var pairs = stand.IsAlong
            ? new[] { PinPair.CrossedReach, 0.75, 0.65, 0.55 }.Select(reach => PinPair.Rolling(stand.Crossed, size, p, t, pin, 0, reach))
            : PegPair.Of(stand, size, p, t, pin);
        return pairs.Select(pair => pair.TakesOver(p, t) is { } over ? new PinWheelLaw(pair, driverPins, drivenPins, over) : null).FirstOrDefault(l => l is not null);
    }

    /// <summary>b at a, for a driver that goes forward; just after where one pin takes over from another.</summary>
    public Jet Driven(Jet a)
    {
        var first = Math.Floor((a.Value - over) / DriverPitch + IntermittentLaw.Corner) + 1;
        var best = Pair.Driven(a - first * DriverPitch) + first * DrivenPitch;
        foreach (var i in (ReadOnlySpan<double>)[first - 1, first + 1])
        {
            var x = a - i * DriverPitch;
            if (x.Value > Pair.WedgeAt && x.Value < Pair.ReachAt && Pair.Driven(x) + i * DrivenPitch is var b && b.Value > best.Value + IntermittentLaw.Corner)
            {
                best = b;
            }
        }

        return best;
    }

    /// <summary>a at b.</summary>
    public Jet Driver(Jet b)
    {
        var first = Math.Floor((b.Value - overDriven) / DrivenPitch + IntermittentLaw.Corner) + 1;
        var best = Pair.Driver(b - first * DrivenPitch) + first * DriverPitch;
        foreach (var i in (ReadOnlySpan<double>)[first - 1, first + 1])
        {
            var y = b - i * DrivenPitch;
            if (y.Value > Pair.Wedge && y.Value < Pair.Reach && Pair.Driver(y) + i * DriverPitch is var a && a.Value < best.Value - IntermittentLaw.Corner)
            {
                best = a;
            }
        }

        return best;
    }

    /// <summary>How far the driven can be turned on by hand at a, rad, until the driver's pins hold it.</summary>
    public double Play(double a)
    {
        var (b, least, middle) = (Driven(Jet.Constant(a)).Value, double.PositiveInfinity, (int)Math.Round(a / DriverPitch));
        for (var i = middle - 2; i <= middle + 2; i++)
        {
            var x = a - i * DriverPitch;
            if (-x > Pair.WedgeAt && -x < Pair.ReachAt)
            {
                least = Math.Min(least, Pair.HeldBack(Jet.Constant(x)).Value + (i + 1) * DrivenPitch - b);
            }
        }

        return least;
    }

    private (double Least, double Most) Over(Func<double, double> what)
    {
        var all = Enumerable.Range(0, Looked).Select(i => what(over + (i - Looked + 0.5) * DriverPitch / Looked)).ToList();
        return (all.Min(), all.Max());
    }
}
