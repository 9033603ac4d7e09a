using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>The machine solved forward, every member from its own drive, the followers where their cams as cut put them.</summary>
internal static class ForwardRun
{
    /// <summary>Goes through the performance and shows each step's states.</summary>
    /// <param name="motion">The motion as the chart asks for it; a follower that touches nothing is taken where it should be.</param>
    /// <param name="followers">The followers, one for each acted member.</param>
    /// <param name="rests">Where each of them rests, at every step, rad or mm.</param>
    /// <param name="show">What is done with the states of a step.</param>
    public static void Over(Motion.Motion motion, IReadOnlyList<int> followers, IReadOnlyList<double[]> rests, Action<int, Pass> show)
    {
        var machine = motion.Machine;
        var pass = new Pass(machine, Forward(machine));
        var given = new double[machine.Members.Count];
        for (var i = 0; i < motion.Steps; i++)
        {
            for (var k = 0; k < followers.Count; k++)
            {
                given[followers[k]] = double.IsNaN(rests[k][i]) ? motion.Of(followers[k])[i].Value : rests[k][i];
            }

            pass.Go(machine.Performance.At(i), given: given);
            show(i, pass);
        }
    }

    /// <summary>The order of solving every member from its own drive, followers given.</summary>
    internal static Plan Forward(Machine machine) => Plan.Order(
        [.. machine.Drives.Select((d, m) => d switch
        {
            CrankDrive => new Act(Source.Crank, m),
            Relation r => new Act(Source.Relation, m, r),
            _ => new Act(Source.Given, m),
        })],
        out _) ?? throw new InvalidOperationException("Members that were solved backward must have an order forward too.");
}
