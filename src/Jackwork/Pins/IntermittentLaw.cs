using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>How a wheel of pins all round moves under a driver with pins on part of its rim: pushed on for part of the driver's turn, left standing for the rest.</summary>
/// <remarks>
/// <para>N pins on the driver a pitch p apart, n on the driven a pitch t = 2 pi/n apart; y = f(x) a pair in contact (see <see cref="PinPair"/>), Y its reach.
/// a is the driver's angle since pick-up, b that of the driven, both positive the way they go.</para>
/// <para>The last pin lets go by itself at y = Y, so the driven stands with pins at Y, Y - t, Y - 2t ... The first pin passes under those it does not reach
/// (y &lt;= -Y0; of teeth s thick y &lt;= -Y0 - s) and picks up the next one, at w = Y - m t, m = ceil((Y + Y0 + s)/t) - 1. Each turn carries the driven on by N - 1 + m pins.</para>
/// <para>Pin i stands at x = a + x0 - i p and pushes the i-th pin of the driven, so b = f(x) - w + i t; what carries is the pin that pushes
/// farthest: b = max over i. Where the next pin takes over the speed jumps, as it does at pick-up from nothing to f'(x0); at let-go it is nothing.</para>
/// <para>The first pin may be set in on a smaller circle, where it moves more slowly and passes under a waiting pin that it would meet head-on. With e the
/// angle by which it is set back from its place among the others it stands at x = a + x0, they at x = a + x0 + e - i p. Setting back alone does
/// not soften the pick-up: it comes later, with the same f'(x0).</para>
/// <para>F. D. Jones, Ingenious Mechanisms for Designers and Inventors, vol. 1, intermittent gearing; J. H. Bickford, Mechanisms for Intermittent Motion,
/// on mutilated gears (both from memory). The law of the farthest pin is its own derivation: one-sided contact, the driven not running ahead.</para>
/// </remarks>
public sealed class IntermittentLaw
{
    /// <summary>Two angles within this are one, rad: rounding of many added turns, far below any visible angle.</summary>
    public const double Corner = 1e-9;

    /// <summary>How far within its reach a pair is first looked at, rad, so that its speed ratio is finite.</summary>
    private const double Inside = 1e-6;

    /// <summary>Places within the drive at which the play is looked at.</summary>
    private const int Looked = 400;

    private readonly double begin;
    private readonly double beginOthers;

    // Asked for at every step: where a pair comes into reach, lets go, and how far it has then brought the driven.
    private readonly (double WedgeAt, double ReachAt, double Reach) firstEnds, otherEnds;

    /// <summary>The law of a driver and its driven.</summary>
    /// <param name="first">The driver's first pin with a pin of the driven.</param>
    /// <param name="others">Each of its other pins with one.</param>
    /// <param name="driverPins">N, 2 or more.</param>
    /// <param name="driverPitch">p, rad.</param>
    /// <param name="drivenPins">n.</param>
    /// <param name="setBack">e, rad.</param>
    public IntermittentLaw(PinPair first, PinPair others, int driverPins, double driverPitch, int drivenPins, double setBack)
    {
        (First, Others, DriverPins, DriverPitch, DrivenPins, SetBack) = (first, others, driverPins, driverPitch, drivenPins, setBack);
        Spaces = (int)Math.Ceiling((others.Reach + first.Reach + first.Thick.Driven) / DrivenPitch - Corner) - 1;
        Waits = others.Reach - Spaces * DrivenPitch;
        begin = First.Driver(Jet.Constant(Waits)).Value;
        beginOthers = begin + SetBack;
        firstEnds = (first.WedgeAt, first.ReachAt, first.Reach);
        otherEnds = (others.WedgeAt, others.ReachAt, others.Reach);
        Drives = others.ReachAt - beginOthers + (DriverPins - 1) * DriverPitch;
    }

    /// <summary>The driver's first pin with a pin of the driven.</summary>
    public PinPair First { get; }

    /// <summary>Any other of its pins with one.</summary>
    public PinPair Others { get; }

    /// <summary>N.</summary>
    public int DriverPins { get; }

    /// <summary>p, rad.</summary>
    public double DriverPitch { get; }

    /// <summary>n.</summary>
    public int DrivenPins { get; }

    /// <summary>e, rad; negative where the first pin stands ahead of its place among the others.</summary>
    public double SetBack { get; }

    /// <summary>t, rad.</summary>
    public double DrivenPitch => Math.Tau / DrivenPins;

    /// <summary>m: as many pins of the driven as wait within the first pin's reach; with none it runs free.</summary>
    public int Spaces { get; }

    /// <summary>w: where the pin that will be picked up waits, rad from the nearest place of the circles.</summary>
    public double Waits { get; }

    /// <summary>By how many of its pins the driven goes on for each turn of the driver.</summary>
    public int Steps => DriverPins - 1 + Spaces;

    /// <summary>Angle of the driven for each turn of the driver, rad.</summary>
    public double Step => Steps * DrivenPitch;

    /// <summary>The driver's angle from pick-up to let-go, rad.</summary>
    public double Drives { get; }

    /// <summary>Whether the first pin meets the waiting one such that it is pushed on, and not wedged.</summary>
    public bool Picks => Spaces > 0 && Waits > First.Wedge;

    /// <summary>Angle, rad, of each of the driver's pins before the place of the circles at pick-up.</summary>
    public double PinAt(int pin) => pin == 0 ? begin : beginOthers - pin * DriverPitch;

    /// <summary>How far the driven has turned, rad, the way it goes, when the driver has turned by <paramref name="a"/> since a pick-up.</summary>
    /// <remarks>At a corner the derivatives are those just after it for a driver that goes forward.</remarks>
    public Jet Driven(Jet a)
    {
        var turn = Math.Floor(a.Value / Math.Tau + Corner);
        var rel = a - turn * Math.Tau;
        return (rel.Value >= Drives - Corner ? Jet.Constant(Step) : Within(rel)) + turn * Step;
    }

    /// <summary>The driver's angle since pick-up, rad, at which the driven stands at <paramref name="b"/>; null where it stands still there.</summary>
    public Jet? Driver(Jet b)
    {
        var turn = Math.Floor(b.Value / Step + Corner);
        var rel = b - turn * Step;
        if (rel.Value < Corner || rel.Value > Step - Corner)
        {
            return null;
        }

        Jet? best = null;
        for (var i = 0; i < DriverPins; i++)
        {
            var (pair, y) = (Pair(i), rel + (Waits - i * DrivenPitch));
            if (y.Value > pair.Wedge && y.Value <= pair.Reach)
            {
                var a = pair.Driver(y) - PinAt(i);
                best = best is { } other && other.Value <= a.Value ? best : a;
            }
        }

        return best + turn * Math.Tau;
    }

    /// <summary>Where the speed of the driven jumps within a turn of the driver: its angle since pick-up, rad, and the speed ratios before and after.</summary>
    public IEnumerable<(double At, double Before, double After)> Jumps()
    {
        yield return (0, 0, Within(Jet.Variable(0)).First);
        for (var i = 1; i < DriverPins; i++)
        {
            var (at, before) = TakesOver(i);
            yield return (at, before, Pair(i).Driven(Jet.Variable(at + PinAt(i))).First);
        }
    }

    /// <summary>Speed ratio just before let-go: nothing for pins, which let go where they push no farther; what the lock stops for teeth.</summary>
    public double LetGo => Others.Driven(Jet.Variable(Others.ReachAt - Inside)).First;

    /// <summary>Whether each pin takes over before the one ahead has let go; else the driven stops in between and is struck again.</summary>
    public bool IsUnbroken => Enumerable.Range(1, DriverPins - 1).All(i => Lead(i, Pair(i - 1).ReachAt - PinAt(i - 1)) >= 0);

    /// <summary>Whether no pin of the driver comes upon its pin of the driven head-on.</summary>
    public bool IsClear => Picks && Enumerable.Range(1, DriverPins - 1).All(i => Lead(i, Pair(i).WedgeAt - PinAt(i) + Inside) < 0);

    /// <summary>How far the driven could be turned on by hand, rad, before the driver's pins hold it, when the driver has turned by <paramref name="a"/> since pick-up.</summary>
    /// <remarks>Each pin i holds back pin i + 1 of the driven that comes behind it. Infinite where none is in reach: then only the lock holds.</remarks>
    public double Play(double a)
    {
        var (b, least) = (Driven(Jet.Constant(a)).Value, double.PositiveInfinity);
        for (var i = 0; i < DriverPins; i++)
        {
            var (pair, x) = (Pair(i), a + PinAt(i));
            if (pair.Thick.Driver - x is var back && back > pair.WedgeAt && back < pair.ReachAt)
            {
                least = Math.Min(least, pair.HeldBack(Jet.Constant(x)).Value - Waits + (i + 1) * DrivenPitch - b);
            }
        }

        return least;
    }

    /// <summary>Least of <see cref="Play"/> while it drives, rad; below nothing the pins jam.</summary>
    public double LeastPlay => Enumerable.Range(1, Looked).Min(i => Play(i * Drives / (Looked + 1)));

    /// <summary>Least distance of any pin from touching the one that it would push, mm, the driver turned by <paramref name="a"/> since pick-up, the driven by <paramref name="b"/> since any.</summary>
    public double Gap(double a, double b)
    {
        var rel = b - Step * Math.Floor(b / Step);
        return Enumerable.Range(0, DriverPins).Min(i => Math.Abs(Pair(i).Gap(a + PinAt(i), rel + Waits - i * DrivenPitch)));
    }

    private PinPair Pair(int pin) => pin == 0 ? First : Others;

    private Jet Within(Jet a)
    {
        var best = Jet.Constant(0);
        for (var i = 0; i < DriverPins; i++)
        {
            var b = Pushed(i, a);
            if (b.Value > best.Value + Corner || (b.Value > best.Value - Corner && b.First * a.First > best.First * a.First))
            {
                best = b;
            }
        }

        return best;
    }

    // Where pin i alone has brought the driven; long ago, before it is in reach.
    private Jet Pushed(int i, Jet a)
    {
        var (ends, x) = (i == 0 ? firstEnds : otherEnds, a + PinAt(i));
        var before = i * DrivenPitch - Waits;
        return x.Value <= ends.WedgeAt ? Jet.Constant(double.NegativeInfinity)
            : x.Value >= ends.ReachAt - Corner ? Jet.Constant(ends.Reach + before)
            : Pair(i).Driven(x) + before;
    }

    // By how much pin i would have brought the driven farther than the pin ahead of it.
    private double Lead(int i, double a) => Pushed(i, Jet.Constant(a)).Value - Pushed(i - 1, Jet.Constant(a)).Value;

    private (double At, double Before) TakesOver(int i)
    {
        var (from, letGo) = (Pair(i).WedgeAt - PinAt(i) + Inside, Pair(i - 1).ReachAt - PinAt(i - 1));
        var gap = Lead(i, letGo);
        if (gap < 0)
        {
            // The pin ahead has let go: the driven waits until this one comes.
            return (Pair(i).Driver(Jet.Constant(Pair(i - 1).Reach - DrivenPitch)).Value - PinAt(i), 0);
        }

        var early = Lead(i, from);
        var at = early >= 0 ? from : Roots.Between(from, early, letGo, gap, a => Lead(i, a));
        return (at, Pair(i - 1).Driven(Jet.Variable(Math.Min(at + PinAt(i - 1), Pair(i - 1).ReachAt - Corner))).First);
    }
}
