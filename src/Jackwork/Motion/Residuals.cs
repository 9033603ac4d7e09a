namespace Jackwork.Motion;

/// <summary>Holds the solved positions against the relations that they were solved from.</summary>
internal static class Residuals
{
    /// <summary>Largest residual over the performance, mm, leaving out the stretches where a relation was found not to close.</summary>
    public static double Worst(Motion motion)
    {
        var machine = motion.Machine;
        var relations = machine.Drives.OfType<Relation>().Where(r => r is not RatioDrive).ToList();
        var states = new MemberState[machine.Members.Count];
        var worst = 0.0;
        for (var i = 0; i < motion.Steps; i++)
        {
            Fill(motion, i, states);
            foreach (var r in relations)
            {
                var residual = r.Residual(states);
                if (residual > worst && !IsOpen(motion, r, machine.Performance.At(i)))
                {
                    worst = residual;
                }
            }
        }

        return worst;
    }

    /// <summary>The states of all members at a step.</summary>
    public static void Fill(Motion motion, int step, MemberState[] states)
    {
        for (var m = 0; m < states.Length; m++)
        {
            states[m] = MemberState.Of(motion.Machine.Members[m].Joint.Kind, motion.Of(m)[step]);
        }
    }

    private static bool IsOpen(Motion motion, Relation r, double crank) => motion.Gaps.Any(g => g.Relation == r && crank >= g.From && crank <= g.To);
}
