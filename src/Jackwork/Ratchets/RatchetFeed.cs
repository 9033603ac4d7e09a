using Jackwork.Motion;

namespace Jackwork.Ratchets;

/// <summary>One stroke of a ratchet's arm.</summary>
/// <param name="Step">Step of the performance at which the arm stands farthest ahead.</param>
/// <param name="Size">How far it went since it stood farthest back, rad.</param>
/// <param name="Fed">Teeth that it feeds.</param>
public readonly record struct RatchetStroke(int Step, double Size, int Fed);

/// <summary>What a ratchet's arm does to its wheel, over and over: found by running the arm's motion through the law until it repeats.</summary>
/// <remarks>After any stroke that feeds, the wheel stands where the pawl left it, whatever was before; so the second time through is like every later one.</remarks>
/// <param name="Teeth">Teeth fed each time through.</param>
/// <param name="CrankTurns">Turns of the crank that take the arm once through its motion.</param>
/// <param name="First">Angle from the pawl's nose as drawn to the next face, rad, in the sense of feeding; at least -play.</param>
/// <param name="Wheel">How far the wheel has turned in the sense of feeding at equal steps over those turns, rad; the last is that of the whole.</param>
/// <param name="Strokes">The arm's strokes.</param>
public sealed record RatchetFeed(int Teeth, int CrankTurns, double First, IReadOnlyList<double> Wheel, IReadOnlyList<RatchetStroke> Strokes)
{
    /// <summary>Swing taken for rounding, rad.</summary>
    private const double Still = 1e-9;

    /// <summary>Runs the arm's motion through the law.</summary>
    /// <param name="law">The ratchet.</param>
    /// <param name="arm">Its arm's angle at equal steps over a whole performance, rad, positive in the sense of feeding.</param>
    /// <param name="crankTurns">Turns of the crank of that performance.</param>
    public static RatchetFeed Of(RatchetLaw law, ReadOnlySpan<Jet> arm, int crankTurns)
    {
        var step = Math.Tau * crankTurns / arm.Length;
        var (wheel, face) = (0.0, 0);
        for (var i = 0; i < arm.Length; i++)
        {
            (var w, face) = law.Step(arm[i], wheel, face, 0, i == 0 ? 0 : step);
            wheel = w.Value;
        }

        // Once more through, from where the arm stands as drawn again.
        (var start, face) = law.Step(arm[0], wheel, face, 0, step);
        wheel = start.Value;
        var first = wheel + face * law.Pitch - arm[0].Value;
        var run = new double[arm.Length + 1];
        for (var i = 1; i <= arm.Length; i++)
        {
            (var w, face) = law.Step(arm[i % arm.Length], wheel, face, 0, step);
            wheel = w.Value;
            run[i] = wheel - start.Value;
        }

        return new((int)Math.Round(run[^1] / law.Pitch), crankTurns, first, run, StrokesOf(arm, run, law.Pitch));
    }

    /// <summary>How far the wheel has turned at a crank angle, rad, in the sense of feeding.</summary>
    /// <param name="crank">Crank angle since the start, rad, of any number of turns.</param>
    public double At(double crank)
    {
        var length = Math.Tau * CrankTurns;
        var (whole, n) = (Math.Floor(crank / length), Wheel.Count - 1);
        var place = (crank / length - whole) * n;
        var i = Math.Min((int)place, n - 1);
        return whole * Wheel[n] + Wheel[i] + (place - i) * (Wheel[i + 1] - Wheel[i]);
    }

    /// <summary>The crank angle, rad, at which the wheel comes to stand, or passes, at an angle; the wheel must be fed at all.</summary>
    /// <param name="wheel">Angle of the wheel in the sense of feeding, rad.</param>
    public double Crank(double wheel)
    {
        var n = Wheel.Count - 1;
        var whole = Math.Floor(wheel / Wheel[n]);
        var rest = wheel - whole * Wheel[n];
        var (low, high) = (0, n);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = Wheel[middle] < rest ? (middle, high) : (low, middle);
        }

        var share = Wheel[high] > Wheel[low] ? (rest - Wheel[low]) / (Wheel[high] - Wheel[low]) : 0;
        return Math.Tau * CrankTurns * (whole + (low + Math.Clamp(share, 0, 1)) / n);
    }

    // From each least to the next greatest angle of the arm; begun where it stands farthest back, so that none is cut in two.
    private static List<RatchetStroke> StrokesOf(ReadOnlySpan<Jet> arm, double[] wheel, double pitch)
    {
        var n = arm.Length;
        var begin = 0;
        for (var i = 1; i < n; i++)
        {
            begin = arm[i].Value < arm[begin].Value ? i : begin;
        }

        var strokes = new List<RatchetStroke>();
        var (low, high, top) = (arm[begin].Value, arm[begin].Value, begin);
        var from = begin;
        for (var i = 1; i <= n; i++)
        {
            var at = (begin + i) % n;
            var a = arm[at].Value;
            if (a > high)
            {
                (high, top) = (a, at);
            }
            else if (high - low > Still && (a < high - Still || i == n))
            {
                Add(at);
                (low, high, top, from) = (a, a, at, at);
            }
            else if (a < low)
            {
                (low, high, top, from) = (a, a, at, at);
            }
        }

        return strokes;

        void Add(int end)
        {
            var turned = wheel[end] - wheel[from] + (end <= from ? wheel[n] : 0);
            strokes.Add(new(top, high - low, (int)Math.Round(turned / pitch)));
        }
    }
}
