using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Where a body stands over the performance, seen from a body that carries it, and how far it bows out from straight lines.</summary>
/// <remarks>
/// Over a stretch from t0 to t1 the chord of a frame F is (1 - u) F(t0) + u F(t1), u = (t - t0)/(t1 - t0). The bow of the stretch is the
/// largest departure of F from it, kept as that of a point or line of the body that moves little (<c>Shift</c>, mm) and that of the three axes together
/// (<c>Turn</c>, root of the sum of squares): no point at the distance r from it departs from its own chord by more than
/// Shift + Turn r. Within a step it is taken as half the larger of the second differences at its ends, twice to four times what a smooth
/// motion or a corner makes of them; over longer stretches by
///   bow(whole) &lt;= max(bow(halves)) + |F(middle) - chord(middle)|,
/// since the halves' chords depart from the whole's by no more than the middle does.
/// </remarks>
internal abstract class BodyPath
{
    /// <summary>Level of the longest stretches whose bow is kept: 2^6 steps.</summary>
    public const int TopLevel = 6;

    private (double Shift, double Turn)[][]? bows;

    /// <summary>Whether it doesn't move at all.</summary>
    public virtual bool IsStill => false;

    /// <summary>How far any point of a ball, in the body's coordinates, is from what moves only by <c>Shift</c>, mm: a point, or a pivot's whole axis.</summary>
    public abstract double Reach(in Ball ball);

    /// <summary>The frame at a place, steps.</summary>
    public abstract Frame At(double place);

    /// <summary>How far a point within <paramref name="reach"/> (mm) of that point or line departs from its chord over a stretch, mm at the most.</summary>
    public double Bow(in Stretch s, double reach)
    {
        if (bows is null)
        {
            return 0;
        }

        var (shift, turn) = bows[Math.Max(0, s.Level)][s.Index];
        var bow = shift + turn * reach;
        return s.Level >= 0 ? bow : s.Length * s.Length * bow;
    }

    /// <summary>How far the frame at step <paramref name="middle"/> lies from the chord of two other steps at <paramref name="u"/>.</summary>
    protected abstract (double Shift, double Turn) Departure(int from, int middle, int to, double u);

    /// <summary>Works out the bows of all stretches of a performance.</summary>
    protected void Measure(int steps)
    {
        // Half a second difference is the middle frame's departure from the chord of its neighbours; the end of the performance is its start.
        var second = new (double Shift, double Turn)[steps + 1];
        for (var i = 1; i < steps; i++)
        {
            second[i] = Departure(i - 1, i, i + 1, 0.5);
        }

        second[0] = second[steps] = Departure(steps - 1, 0, 1, 0.5);
        bows = new (double Shift, double Turn)[TopLevel + 1][];
        bows[0] = new (double, double)[steps];
        for (var i = 0; i < steps; i++)
        {
            bows[0][i] = (Math.Max(second[i].Shift, second[i + 1].Shift), Math.Max(second[i].Turn, second[i + 1].Turn));
        }

        for (var level = 1; level <= TopLevel; level++)
        {
            bows[level] = Longer(level, bows[level - 1], steps);
        }
    }

    private (double Shift, double Turn)[] Longer(int level, (double Shift, double Turn)[] halves, int steps)
    {
        var whole = new (double Shift, double Turn)[(halves.Length + 1) / 2];
        for (var k = 0; k < whole.Length; k++)
        {
            if (2 * k + 1 == halves.Length)
            {
                whole[k] = halves[2 * k];
                continue;
            }

            var (from, middle, to) = (k << level, (2 * k + 1) << (level - 1), Math.Min((k + 1) << level, steps));
            var off = Departure(from, middle, to, (middle - from) / (double)(to - from));
            var (a, b) = (halves[2 * k], halves[2 * k + 1]);
            whole[k] = (Math.Max(a.Shift, b.Shift) + off.Shift, Math.Max(a.Turn, b.Turn) + off.Turn);
        }

        return whole;
    }
}
