namespace Jackwork.Motion;

/// <summary>A stretch over which a rule is broken.</summary>
/// <param name="From">Crank angle where it begins, rad.</param>
/// <param name="To">Crank angle where it ends, rad; past the performance's end by less than one performance where it runs over the seam.</param>
/// <param name="StartsWithKeep">Whether it begins because the kept member leaves its bounds (else because the acting one enters its own).</param>
/// <param name="EndsWithKeep">Whether it ends because the kept member comes back within its bounds.</param>
/// <param name="Worst">The kept member's coordinate farthest outside its bounds, rad or mm.</param>
/// <param name="Bound">The bound that it is past, rad or mm.</param>
/// <param name="Always">Whether it is broken all the time.</param>
public sealed record RuleBreak(double From, double To, bool StartsWithKeep, bool EndsWithKeep, double Worst, double Bound, bool Always)
{
    /// <summary>The stretches of a performance over which <paramref name="rule"/> is broken, between angles found to a hundred-millionth of a degree.</summary>
    public static IReadOnlyList<RuleBreak> Of(Motion motion, Rule rule)
    {
        var probe = motion.Probe();
        var fair = rule with { While = rule.While.Widened(-Grace), Keep = rule.Keep.Widened(Grace) };
        var marks = Crossings(motion, probe, fair.While).Select(c => (Crank: c, Keep: false))
            .Concat(Crossings(motion, probe, fair.Keep).Select(c => (Crank: c, Keep: true)))
            .OrderBy(m => m.Crank).ToList();
        var length = motion.Machine.Performance.Length;
        if (marks.Count == 0)
        {
            return IsBroken(probe, fair, 0) ? [Judge(motion, probe, rule, 0, length, (true, true), true)] : [];
        }

        // Between neighbouring crossings nothing changes, so the middle tells. Neighbours that are both broken make one stretch.
        var n = marks.Count;
        var broken = Enumerable.Range(0, n).Select(k => IsBroken(probe, fair, (marks[k].Crank + End(k)) / 2)).ToArray();
        double End(int k) => k + 1 < n ? marks[k + 1].Crank : marks[0].Crank + length;
        if (Array.TrueForAll(broken, b => b))
        {
            return [Judge(motion, probe, rule, 0, length, (true, true), true)];
        }

        var found = new List<RuleBreak>();
        for (var k = 0; k < n; k++)
        {
            if (!broken[k] || broken[(k + n - 1) % n])
            {
                continue;
            }

            var run = 1;
            while (broken[(k + run) % n])
            {
                run++;
            }

            var last = k + run - 1;
            var to = End(last % n) + (last >= n ? length : 0);
            if (to - marks[k].Crank > Touching)
            {
                found.Add(Judge(motion, probe, rule, marks[k].Crank, to, (marks[k].Keep, marks[(k + run) % n].Keep), false));
            }
        }

        return found;
    }

    /// <summary>How far past a bound still counts as on it, rad or mm: above rounding, far below what can be made. A rest set on a bound keeps it.</summary>
    private const double Grace = 1e-10;

    /// <summary>Stretch shorter than which two crossings count as one touch, rad of crank.</summary>
    private const double Touching = 100 * Roots.Width;

    private static bool IsBroken(Probe probe, Rule rule, double crank)
    {
        probe.Go(crank);
        return rule.While.Margin(probe.States[rule.While.Member].Q.Value) > 0 && rule.Keep.Margin(probe.States[rule.Keep.Member].Q.Value) < 0;
    }

    private static RuleBreak Judge(Motion motion, Probe probe, Rule rule, double from, double to, (bool Start, bool End) keep, bool always)
    {
        // The worst place is looked for on a fine even grid; it is a figure for the reader, the angles are what is exact.
        const int parts = 400;
        var (worst, margin) = (0.0, double.PositiveInfinity);
        for (var i = 0; i <= parts; i++)
        {
            probe.Go(from + (to - from) * i / parts);
            var q = probe.States[rule.Keep.Member].Q.Value;
            if (rule.Keep.Margin(q) < margin && rule.While.Margin(probe.States[rule.While.Member].Q.Value) >= -Touching)
            {
                (worst, margin) = (q, rule.Keep.Margin(q));
            }
        }

        if (rule.Keep.Around != 0)
        {
            worst = rule.Keep.Around * worst;
            worst -= 2 * Math.PI * Math.Floor(worst / (2 * Math.PI));
        }

        var bound = !double.IsFinite(rule.Keep.High) || (double.IsFinite(rule.Keep.Low) && Math.Abs(Off(worst - rule.Keep.Low)) < Math.Abs(Off(worst - rule.Keep.High))) ? rule.Keep.Low : rule.Keep.High;
        double Off(double d) => rule.Keep.Around != 0 ? Math.IEEERemainder(d, 2 * Math.PI) : d;
        return new(from, to, keep.Start, keep.End, worst, bound, always);
    }

    // Where the member passes a bound of the condition: the steps and the turning points between them bound pieces on which
    // it goes one way, so that each bound is passed at most once a piece, however narrow the band.
    private static List<double> Crossings(Motion motion, Probe probe, Condition condition)
    {
        var m = condition.Member;
        var q = motion.Of(m);
        var performance = motion.Machine.Performance;
        var found = new List<double>();
        double Speed(double crank) => probe.At(m, crank).First;
        void Piece(double a, double qa, double b, double qb)
        {
            foreach (var bound in condition.BoundsBetween(qa, qb))
            {
                found.Add(Roots.Between(a, qa - bound, b, qb - bound, crank => probe.At(m, crank).Value - bound));
            }
        }

        for (var i = 0; i < q.Length; i++)
        {
            var (a, b) = (performance.At(i), performance.At(i + 1));
            var next = q[(i + 1) % q.Length];
            var end = next.Value;
            if (condition.Around != 0 && i + 1 == q.Length)
            {
                // A shaft has gone on by whole turns since the start.
                end += 2 * Math.PI * Math.Round((q[i].Value + performance.Step * q[i].First - end) / (2 * Math.PI));
            }

            if (q[i].First * next.First < 0)
            {
                var turn = Roots.Between(a, q[i].First, b, next.First, Speed);
                var there = probe.At(m, turn).Value;
                Piece(a, q[i].Value, turn, there);
                Piece(turn, there, b, end);
            }
            else
            {
                Piece(a, q[i].Value, b, end);
            }
        }

        return found;
    }
}
