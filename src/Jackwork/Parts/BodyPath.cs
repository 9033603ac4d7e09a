using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Where a body stands over the performance, seen from a body that carries it, and how far it bows out from straight lines.</summary>
/// <remarks>
/// Over a stretch from t0 to t1 the chord of a frame F is (1 - u) F(t0) + u F(t1), u = (t - t0)/(t1 - t0). The bow of the stretch is the
/// largest departure of F from it, kept as that of a point or line of the body that moves little (<c>Shift</c>, mm) and that of the three axes together
/// (<c>Turn</c>, root of the sum of squares): no point at the distance r from it departs from its own chord by more than
/// Shift + Turn r. The shortest stretches whose bow is kept are two steps long (one where a performance has an odd number): it is taken as
/// half the larger of the second differences at their ends, twice to four times what a smooth motion or a corner makes of them, and
/// as falling with the square of the length within them; over longer stretches
///   bow(whole) &lt;= max(bow(halves)) + |F(middle) - chord(middle)|,
/// since the halves' chords depart from the whole's by no more than the middle does.
/// </remarks>
internal abstract class BodyPath
{
    /// <summary>Level of the longest stretches whose bow is kept: 2^6 steps.</summary>
    public const int TopLevel = 6;

    private (double Shift, double Turn)[][]? bows;

    /// <summary>Level of the shortest stretches whose bow is kept: 1, or 0 for an odd number of steps.</summary>
    private int lowest;

    /// <summary>Steps from one kept place to the next.</summary>
    protected int Grain => 1 << lowest;

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

        if (s.Level >= lowest)
        {
            var (shift, turn) = bows[s.Level - lowest][s.Index];
            return shift + turn * reach;
        }

        // Within the shortest: below level 0 the index is that of the step.
        var within = bows[0][s.Index >> lowest];
        var share = s.Length / Grain;
        return share * share * (within.Shift + within.Turn * reach);
    }

    /// <summary>How far the kept frame number <paramref name="middle"/> lies from the chord of two others at <paramref name="u"/>.</summary>
    protected abstract (double Shift, double Turn) Departure(int from, int middle, int to, double u);

    /// <summary>Number of places to keep for a performance, the end included; sets the grain.</summary>
    protected int Places(int steps)
    {
        lowest = steps % 2 == 0 ? 1 : 0;
        return steps / Grain + 1;
    }

    /// <summary>Works out the bows of all stretches from the places kept.</summary>
    protected void Measure(int places)
    {
        // Half a second difference is the middle frame's departure from the chord of its neighbours; the end of the performance is its start.
        var last = places - 1;
        var second = new (double Shift, double Turn)[places];
        for (var i = 1; i < last; i++)
        {
            second[i] = Departure(i - 1, i, i + 1, 0.5);
        }

        second[0] = second[last] = Departure(last - 1, 0, 1, 0.5);
        bows = new (double Shift, double Turn)[TopLevel + 1 - lowest][];
        bows[0] = new (double, double)[last];
        for (var i = 0; i < last; i++)
        {
            bows[0][i] = (Math.Max(second[i].Shift, second[i + 1].Shift), Math.Max(second[i].Turn, second[i + 1].Turn));
        }

        for (var level = 1; level < bows.Length; level++)
        {
            bows[level] = Longer(level, bows[level - 1], last);
        }
    }

    private (double Shift, double Turn)[] Longer(int level, (double Shift, double Turn)[] halves, int last)
    {
        var whole = new (double Shift, double Turn)[(halves.Length + 1) / 2];
        for (var k = 0; k < whole.Length; k++)
        {
            if (2 * k + 1 == halves.Length)
            {
                whole[k] = halves[2 * k];
                continue;
            }

            var (from, middle, to) = (k << level, (2 * k + 1) << (level - 1), Math.Min((k + 1) << level, last));
            var off = Departure(from, middle, to, (middle - from) / (double)(to - from));
            var (a, b) = (halves[2 * k], halves[2 * k + 1]);
            whole[k] = (Math.Max(a.Shift, b.Shift) + off.Shift, Math.Max(a.Turn, b.Turn) + off.Turn);
        }

        return whole;
    }

    /// <summary>The number of a kept place, or -1 for a place between two.</summary>
    protected int Kept(double place)
    {
        var i = (int)place;
        return i == place && i % Grain == 0 ? i / Grain : -1;
    }
}
