using Jackwork.Motion;

namespace Jackwork.Cords;

/// <summary>The least and the greatest of something over a performance, and the steps where.</summary>
/// <param name="Least">The least.</param>
/// <param name="LeastStep">Where.</param>
/// <param name="Most">The greatest.</param>
/// <param name="MostStep">Where.</param>
public readonly record struct StepRange(double Least, int LeastStep, double Most, int MostStep)
{
    /// <summary>Before anything is known.</summary>
    public static StepRange None => new(double.PositiveInfinity, 0, double.NegativeInfinity, 0);

    /// <summary>With one more value.</summary>
    public StepRange With(double value, int step) => new(Math.Min(Least, value), value < Least ? step : LeastStep, Math.Max(Most, value), value > Most ? step : MostStep);
}

/// <summary>How the straight pieces and wraps of a cord range over a performance.</summary>
/// <param name="Lengths">Lengths of the straight pieces, mm.</param>
/// <param name="Wraps">Angles on the leads, rad: what is wound on a drum, by how much the cord bends in an eye.</param>
public sealed record CordRange(IReadOnlyList<StepRange> Lengths, IReadOnlyList<StepRange> Wraps)
{
    /// <summary>Goes through a performance once.</summary>
    public static CordRange Of(Motion.Motion motion, CordDrive drive)
    {
        var n = drive.Run.Leads.Count;
        var (strands, now, states) = (new CordStrand[n - 1], new Jet[n], new MemberState[motion.Machine.Members.Count]);
        StepRange[] lengths = [.. Enumerable.Repeat(StepRange.None, n - 1)], wraps = [.. Enumerable.Repeat(StepRange.None, n)];
        for (var i = 0; i < motion.Steps; i++)
        {
            Residuals.Fill(motion, i, states);
            drive.Run.Follow(states, strands, now);
            for (var k = 0; k < n; k++)
            {
                wraps[k] = wraps[k].With(now[k].Value, i);
            }

            for (var k = 0; k < n - 1; k++)
            {
                lengths[k] = lengths[k].With(strands[k].Length.Value, i);
            }
        }

        return new(lengths, wraps);
    }
}
