using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>What an acted member does when the machine runs on its cams as cut.</summary>
/// <param name="Acted">The member and its chart.</param>
/// <param name="MaxError">Largest distance from the chart, rad or mm.</param>
/// <param name="AtCrank">Crank angle where that is, rad.</param>
/// <param name="Lost">Crank angle at which the follower touches nothing, rad; null if it never does.</param>
public sealed record AsCutResult(Acted Acted, double MaxError, double AtCrank, double? Lost);

/// <summary>Runs the machine forward on its cams as cut.</summary>
internal static class AsCutRun
{
    /// <summary>For each acted member, how far it is from its chart; for each cam, how far (mm) its follower's point is from where it should be.</summary>
    public static (IReadOnlyList<AsCutResult> Acted, IReadOnlyList<double> FollowerErrors) Of(Motion.Motion motion, IReadOnlyList<Cam> cams)
    {
        var machine = motion.Machine;
        var steps = motion.Steps;
        var given = new double[cams.Count][];
        var followerErrors = new double[cams.Count];
        for (var c = 0; c < cams.Count; c++)
        {
            given[c] = Rests(motion, cams[c]);
            followerErrors[c] = cams[c].Follower.Reach * WorstOf(motion, cams[c].FollowerMember, given[c]);
        }

        var pass = new Pass(machine, Forward(machine));
        var row = new double[machine.Members.Count];
        var worst = machine.Acted.Select(a => (Error: 0.0, At: 0.0, Lost: default(double?))).ToArray();
        for (var i = 0; i < steps; i++)
        {
            for (var c = 0; c < cams.Count; c++)
            {
                row[cams[c].FollowerMember] = double.IsNaN(given[c][i]) ? motion.Of(cams[c].FollowerMember)[i].Value : given[c][i];
            }

            pass.Go(machine.Performance.At(i), given: row);
            for (var k = 0; k < worst.Length; k++)
            {
                var a = machine.Acted[k];
                var error = Math.Abs(pass.States[a.Member].Q.Value - motion.Of(a.Member)[i].Value);
                if (error > worst[k].Error)
                {
                    worst[k] = (error, machine.Performance.At(i), worst[k].Lost);
                }

                if (worst[k].Lost is null && cams.Any(c => c.FollowerMember == a.Cam.Driven && double.IsNaN(given[cams.ToList().IndexOf(c)][i])))
                {
                    worst[k].Lost = machine.Performance.At(i);
                }
            }
        }

        return ([.. worst.Select((w, k) => new AsCutResult(machine.Acted[k], w.Error, w.At, w.Lost))], followerErrors);
    }

    private static double[] Rests(Motion.Motion motion, Cam cam)
    {
        var rolling = Rolling.On(cam.AsCut, cam.Follower);
        var q = motion.Of(cam.FollowerMember);
        var t = motion.Of(cam.Shaft);
        var rests = new double[q.Length];
        for (var i = 0; i < rests.Length; i++)
        {
            rests[i] = rolling.Rest(t[i].Value, q[i].Value);
        }

        return rests;
    }

    private static double WorstOf(Motion.Motion motion, int member, double[] rests)
    {
        var q = motion.Of(member);
        var worst = 0.0;
        for (var i = 0; i < rests.Length; i++)
        {
            worst = double.IsNaN(rests[i]) ? double.PositiveInfinity : Math.Max(worst, Math.Abs(rests[i] - q[i].Value));
        }

        return worst;
    }

    // Every member from its own drive, the followers from their contact.
    private static Plan Forward(Machine machine) => Plan.Order(
        [.. machine.Drives.Select((d, m) => d switch
        {
            CrankDrive => new Act(Source.Crank, m),
            Relation r => new Act(Source.Relation, m, r),
            _ => new Act(Source.Given, m),
        })],
        out _) ?? throw new InvalidOperationException("Members that were solved backward must have an order forward too.");
}
