namespace Jackwork.Motion;

/// <summary>A stretch over which a rule is broken.</summary>
/// <param name="From">Crank angle where it begins, rad; may lie past the performance's end by less than one performance, where it runs over the seam.</param>
/// <param name="To">Crank angle where it ends, rad.</param>
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
        var marks = Crossings(motion, probe, rule.While).Select(c => (Crank: c, Keep: false))
            .Concat(Crossings(motion, probe, rule.Keep).Select(c => (Crank: c, Keep: true)))
            .OrderBy(m => m.Crank).ToList();
        var length = motion.Machine.Performance.Length;
        if (marks.Count == 0)
        {
            return IsBroken(probe, rule, 0) ? [Judge(motion, probe, rule, 0, length, (true, true), true)] : [];
        }

        // Between neighbouring crossings nothing changes, so the middle tells. Neighbours that are both broken make one stretch.
        var n = marks.Count;
        var broken = Enumerable.Range(0, n).Select(k => IsBroken(probe, rule, (marks[k].Crank + End(k)) / 2)).ToArray();
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

    // Where the condition's margin changes sign: brackets from the steps, and from turning points between them.
    private static List<double> Crossings(Motion motion, Probe probe, Condition condition)
    {
        var q = motion.Of(condition.Member);
        var performance = motion.Machine.Performance;
        var found = new List<double>();
        double F(double crank) => condition.Margin(probe.At(condition.Member, crank).Value);
        double Speed(double crank) => probe.At(condition.Member, crank).First;
        void Bracket(double a, double fa, double b, double fb)
        {
            if (fa > 0 != fb > 0)
            {
                found.Add(Roots.Between(a, fa, b, fb, F));
            }
        }

        for (var i = 0; i < q.Length; i++)
        {
            var (a, b) = (performance.At(i), performance.At(i + 1));
            var next = q[(i + 1) % q.Length];
            var (fa, fb) = (condition.Margin(q[i].Value), condition.Margin(next.Value));
            if (q[i].First * next.First < 0 && fa > 0 == fb > 0)
            {
                var turn = Roots.Between(a, q[i].First, b, next.First, Speed);
                var ft = F(turn);
                Bracket(a, fa, turn, ft);
                Bracket(turn, ft, b, fb);
            }
            else
            {
                Bracket(a, fa, b, fb);
            }
        }

        return found;
    }
}
