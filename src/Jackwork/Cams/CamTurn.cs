using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>Which steps of the performance make one turn of a cam, and whether every later turn asks the same of it.</summary>
/// <param name="Steps">Steps in the first turn.</param>
/// <param name="Turns">Turns of the cam in the performance.</param>
/// <param name="Sense">+1 where the cam turns forward with the crank, else -1.</param>
/// <param name="Least">Smallest coordinate of the follower, rad or mm.</param>
/// <param name="Most">Largest coordinate.</param>
internal readonly record struct CamTurn(int Steps, int Turns, int Sense, double Least, double Most)
{
    public static CamTurn Of(Motion.Motion motion, FollowerDrive drive)
    {
        var machine = motion.Machine;
        var perCrank = machine.Turns[drive.Driver]!.Value;
        var turns = (int)(perCrank.Abs().Numerator * machine.Performance.CrankTurns / perCrank.Denominator);
        var steps = (motion.Steps + turns - 1) / turns;
        var q = motion.Of(drive.Driven)[..steps];
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var x in q)
        {
            least = Math.Min(least, x.Value);
            most = Math.Max(most, x.Value);
        }

        return new(steps, turns, perCrank.Numerator.Sign, least, most);
    }

    /// <summary>
    /// Largest difference between what two turns of the cam ask of the follower at the same angle, rad or mm, and the step where it is.
    /// </summary>
    /// <remarks>Where a turn is no whole number of steps, the first turn is read between steps by its own speed (cubic Hermite, error of the fourth order).</remarks>
    /// <param name="motion">The motion.</param>
    /// <param name="drive">The cam.</param>
    /// <param name="falls">Stretches over which the follower is let go; where it lands its speed jumps, and what lies within a step of that is not read.</param>
    public (double Difference, int Step) Unlike(Motion.Motion motion, FollowerDrive drive, IReadOnlyList<Fall> falls)
    {
        var q = motion.Of(drive.Driven);
        var step = motion.Machine.Performance.Step;
        var length = motion.Machine.Performance.Length / Turns;
        var worst = (0.0, 0);
        for (var i = Steps; i < q.Length; i++)
        {
            var at = motion.Machine.Performance.At(i) % length / step;
            if (at > Steps - 1e-6)
            {
                at = 0;
            }

            var crank = motion.Machine.Performance.At(i);
            if (falls.Any(f => f.Since(crank) < f.Length + step))
            {
                continue;
            }

            var k = (int)Math.Floor(at + 1e-9);
            var difference = Math.Abs(q[i].Value - Between(q[k], q[(k + 1) % q.Length], Math.Max(0, at - k), step));
            if (difference > worst.Item1)
            {
                worst = (difference, i);
            }
        }

        return worst;
    }

    private static double Between(Jet a, Jet b, double u, double h) =>
        (1 + 2 * u) * (1 - u) * (1 - u) * a.Value + u * (1 - u) * (1 - u) * h * a.First
        + u * u * (3 - 2 * u) * b.Value - u * u * (1 - u) * h * b.First;
}
