namespace Jackwork.Motion;

/// <summary>The solved positions held against the relations that they were solved from, and the transmission angles at them.</summary>
/// <param name="Worst">Largest residual over the performance, mm, leaving out the stretches where a relation was found not to close.</param>
/// <param name="Transmission">For each rod and slot its least transmission angle, rad, and the step where that is; infinite where it has none.</param>
internal sealed record Residuals(double Worst, IReadOnlyList<(Relation Relation, double Angle, int Step)> Transmission)
{
    /// <summary>Goes through the performance once.</summary>
    public static Residuals Of(Motion motion)
    {
        var machine = motion.Machine;
        Relation[] relations = [.. machine.Drives.OfType<Relation>().Where(r => r is not ProportionalDrive)];
        var least = Array.ConvertAll(relations, r => (Relation: r, Angle: double.PositiveInfinity, Step: 0));
        var states = new MemberState[machine.Members.Count];
        var worst = 0.0;
        for (var i = 0; i < motion.Steps; i++)
        {
            Fill(motion, i, states);
            for (var k = 0; k < relations.Length; k++)
            {
                var residual = relations[k].Residual(states);
                if (residual > worst && !IsOpen(motion, relations[k], machine.Performance.At(i)))
                {
                    worst = residual;
                }

                if (relations[k].TransmissionAngle(states) is { } angle && angle < least[k].Angle)
                {
                    least[k] = (relations[k], angle, i);
                }
            }
        }

        return new(worst, least);
    }

    /// <summary>The states of all members at a step.</summary>
    public static void Fill(Motion motion, int step, MemberState[] states)
    {
        for (var m = 0; m < states.Length; m++)
        {
            states[m] = motion.Machine.Members[m].Joint.At(motion.Of(m)[step]);
        }
    }

    private static bool IsOpen(Motion motion, Relation r, double crank) => motion.Gaps.Any(g => g.Relation == r && crank >= g.From && crank <= g.To);
}
