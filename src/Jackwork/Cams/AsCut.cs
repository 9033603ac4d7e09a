using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>What an acted member does when the machine runs on its cams as cut.</summary>
/// <param name="MaxError">Largest distance from the chart, rad or mm.</param>
/// <param name="AtCrank">Crank angle where that is, rad.</param>
/// <param name="FollowerError">Largest distance of the follower's point from where it should be, mm; infinite where it touches nothing.</param>
/// <param name="Lost">Crank angle at which the follower touches nothing, rad; null if it never does.</param>
public readonly record struct AsCutResult(double MaxError, double AtCrank, double FollowerError, double? Lost)
{
    /// <summary>The follower's play between the two sides of a positive cam; null for a cam with one side.</summary>
    public ReturnPlay? Play { get; init; }
}

/// <summary>The machine run forward on its cams as they come from the cutter, by a contact calculation of its own.</summary>
/// <param name="Results">One for each acted member, in the machine's order.</param>
public sealed record AsCut(IReadOnlyList<AsCutResult> Results)
{
    /// <summary>Runs the machine on <paramref name="made"/>, one for each acted member in order.</summary>
    internal static AsCut Run(Motion.Motion motion, IReadOnlyList<CutContact> made)
    {
        var machine = motion.Machine;
        var plays = ReturnPlay.Of(motion, made);
        var results = made.Select((m, k) => Follower(motion, m) with { Play = plays[k] }).ToArray();
        ForwardRun.Over(motion, [.. made.Select(m => m.Follower)], [.. made.Select(m => m.Rests)], (i, pass) =>
        {
            for (var k = 0; k < results.Length; k++)
            {
                var member = machine.Acted[k].Member;
                var error = Math.Abs(pass.States[member].Q.Value - motion.Of(member)[i].Value);
                if (error > results[k].MaxError)
                {
                    results[k] = results[k] with { MaxError = error, AtCrank = pass.Crank };
                }
            }
        });
        return new(results);
    }

    /// <summary>Where the follower of a cam as cut rests: its coordinate at every step, rad or mm, NaN where it touches nothing; in a fall, where it is off the cam, as drawn.</summary>
    internal static double[] Rests(Motion.Motion motion, Cam cam)
    {
        var rolling = Rolling.On(cam.AsCut, cam.Follower);
        var q = motion.Of(cam.FollowerMember);
        var t = motion.Of(cam.Shaft);
        var rests = new double[q.Length];
        var turn = StepsOfTurn(motion, cam.Shaft);
        for (var i = 0; i < rests.Length; i++)
        {
            rests[i] = cam.DropsAt(motion.Machine.Performance.At(i)) ? q[i].Value
                : i >= turn && Math.Abs(q[i].Value - q[i - turn].Value) < Same ? rests[i - turn]
                : rolling.Rest(t[i].Value, q[i].Value);
        }

        return rests;
    }

    /// <summary>Difference of coordinates that rounding makes from one turn of a shaft to the next, rad or mm.</summary>
    private const double Same = 1e-11;

    // Steps in one turn of a shaft; more than there are where it isn't a whole number.
    private static int StepsOfTurn(Motion.Motion motion, int shaft)
    {
        var turns = motion.Machine.Turns[shaft] is { } t ? Math.Abs(t.Value) * motion.Machine.Performance.Length / (2 * Math.PI) : 0;
        var whole = (int)Math.Round(turns);
        return whole > 0 && Math.Abs(turns - whole) < Same && motion.Steps % whole == 0 ? motion.Steps / whole : int.MaxValue;
    }

    private static AsCutResult Follower(Motion.Motion motion, CutContact made)
    {
        var q = motion.Of(made.Follower);
        var rests = made.Rests;
        var worst = 0.0;
        double? lost = null;
        for (var i = 0; i < rests.Length; i++)
        {
            worst = Math.Max(worst, Math.Abs(rests[i] - q[i].Value));
            lost ??= double.IsNaN(rests[i]) ? motion.Machine.Performance.At(i) : null;
        }

        return new(0, 0, lost is null ? worst * made.Reach : double.PositiveInfinity, lost);
    }
}
