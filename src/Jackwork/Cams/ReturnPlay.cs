using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>The play of a positive cam's follower between its two sides as cut, over the performance.</summary>
/// <param name="Least">Least play where the follower touches, mm; below zero where it binds.</param>
/// <param name="LeastAt">Crank angle of the least play, rad.</param>
/// <param name="Most">Largest play, mm.</param>
/// <param name="MostAt">Crank angle of the largest play, rad.</param>
/// <param name="Open">Crank angle at which the other side does not stop the follower, rad; null if it always does.</param>
/// <param name="Figure">Largest play at the acted member, rad or mm, every positive cam going from its first side to its other at once.</param>
/// <param name="FigureAt">Crank angle of that, rad.</param>
public readonly record struct ReturnPlay(double Least, double LeastAt, double Most, double MostAt, double? Open, double Figure, double FigureAt)
{
    /// <summary>Where the other side stops the follower of a positive cam as cut: its coordinate at every step, rad or mm, NaN where it does not; null for a cam with one side.</summary>
    internal static double[]? Stops(Motion.Motion motion, Cam cam)
    {
        if (cam.Return is not { } side)
        {
            return null;
        }

        var contact = side.Contact(cam);
        var q = motion.Of(cam.FollowerMember);
        var t = motion.Of(cam.Shaft);
        var stops = new double[q.Length];
        for (var i = 0; i < stops.Length; i++)
        {
            stops[i] = side.Stops(cam, q[i].Value) ? contact.Rest(t[i].Value, q[i].Value) : double.NaN;
        }

        return stops;
    }

    /// <summary>The play of each cam in order, null for those with one side.</summary>
    internal static ReturnPlay?[] Of(Motion.Motion motion, IReadOnlyList<CutContact> made)
    {
        var plays = made.Select(m => m.Sides is null ? default(ReturnPlay?) : AtFollower(motion, m)).ToArray();
        if (Array.TrueForAll(plays, p => p is null))
        {
            return plays;
        }

        var followers = made.Select(m => m.Follower).ToArray();
        var acted = motion.Machine.Acted;
        var rest = new double[made.Count, motion.Steps];
        ForwardRun.Over(motion, followers, [.. made.Select(m => m.Sides?.First ?? m.Rests)], (i, pass) =>
        {
            for (var k = 0; k < acted.Count; k++)
            {
                rest[k, i] = pass.States[acted[k].Member].Q.Value;
            }
        });
        ForwardRun.Over(motion, followers, [.. made.Select(m => m.Sides?.Other ?? m.Rests)], (i, pass) =>
        {
            for (var k = 0; k < acted.Count; k++)
            {
                var play = Math.Abs(pass.States[acted[k].Member].Q.Value - rest[k, i]);
                if (plays[k] is { } p && play > p.Figure)
                {
                    plays[k] = p with { Figure = play, FigureAt = pass.Crank };
                }
            }
        });
        return plays;
    }

    private static ReturnPlay AtFollower(Motion.Motion motion, CutContact made)
    {
        var ((first, other), performance) = (made.Sides!.Value, motion.Machine.Performance);
        var play = new ReturnPlay(double.PositiveInfinity, 0, double.NegativeInfinity, 0, null, 0, 0);
        for (var i = 0; i < first.Length; i++)
        {
            var mm = (other[i] - first[i]) * made.Way(first[i]) * made.Reach;
            if (double.IsNaN(mm))
            {
                play = play with { Open = play.Open ?? performance.At(i) };
                continue;
            }

            play = mm < play.Least ? play with { Least = mm, LeastAt = performance.At(i) } : play;
            play = mm > play.Most ? play with { Most = mm, MostAt = performance.At(i) } : play;
        }

        return play;
    }
}
