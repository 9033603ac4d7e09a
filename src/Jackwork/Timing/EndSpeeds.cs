using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>The speeds at which a move begins and ends, degrees or mm per degree of the shaft.</summary>
/// <remarks>
/// Where two moves touch, an open end (law quintic or curve, no speed given) takes the speed of the other. If both are
/// open quintics with mean speeds s1 and s2 of the same sign, the speed is their harmonic mean 2 s1 s2 / (s1 + s2), else 0.
/// It is at most twice the smaller, which keeps both moves from turning back (see <see cref="Quintic"/>). The mean is
/// that of F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J.
/// Sci. Stat. Comput. 5 (1984) 300-304, without their weights, whose bound of three times the smaller is right for
/// cubics (Fritsch and Carlson 1980) but not for quintics.
/// </remarks>
/// <param name="In">At the beginning; null when it cannot be known because a neighbour is faulty.</param>
/// <param name="Out">At the end; null as before.</param>
internal readonly record struct EndSpeeds(double? In, double? Out)
{
    // Speeds closer than this are the same, degrees or mm per degree: rounding of decimal figures.
    private const double SameSpeed = 1e-9;

    /// <summary>The end speeds of each move of <paramref name="order"/>; reports ends that do not fit each other and quintics that swing past their ends.</summary>
    public static EndSpeeds[] Of(PlacedMove[] order, MoveCheck[] checks, ProblemSink problems)
    {
        var speeds = new EndSpeeds[order.Length];
        for (var k = 0; k < order.Length; k++)
        {
            var next = (k + 1) % order.Length;
            var (a, b) = (order[k], order[next]);
            var touch = b.Move.From + (next <= k ? 360 : 0) - a.Move.To <= ChartCompiler.SameAngle;
            var (left, right) = (MoveEnd.LastOf(a), MoveEnd.FirstOf(b));
            var sound = (checks[a.Index].Shape, checks[b.Index].Shape);
            var (speedOut, speedIn) = (touch, sound) switch
            {
                (true, (true, true)) => Join(left, right, problems),
                (true, _) => (null, null),
                (false, var (l, r)) => (l ? ToDwell(left, problems) : null, r ? ToDwell(right, problems) : null),
            };
            speeds[k] = speeds[k] with { Out = speedOut };
            speeds[next] = speeds[next] with { In = speedIn };
        }

        for (var k = 0; k < order.Length; k++)
        {
            Overshoot.Check(order[k], speeds[k], problems);
        }

        return speeds;
    }

    private static (double? Out, double? In) Join(MoveEnd left, MoveEnd right, ProblemSink problems)
    {
        if (left.Lands)
        {
            return (left.Speed, FromLanding(left, right, problems));
        }

        if ((left.Speed ?? right.Speed) is not { } speed)
        {
            var through = Through(left.Move, right.Move);
            return (through, through);
        }

        var (l, r) = (left.Speed ?? speed, right.Speed ?? speed);
        if (Math.Abs(l - r) > SameSpeed && !(left.MayJump && (right.MayJump || right.LetsGo)))
        {
            Refuse(left, right, l, r, problems);
        }

        return (l, r);
    }

    // What has landed lies still, so the next move begins at rest.
    private static double FromLanding(MoveEnd left, MoveEnd right, ProblemSink problems)
    {
        var speed = right.Speed ?? 0;
        if (Math.Abs(speed) > SameSpeed)
        {
            problems.Add(right.Move.Index, $"Move {right.Move.Index + 1} begins at {ProblemSink.N(speed)} {problems.SpeedUnit} where move {left.Move.Index + 1} has just dropped, but what has landed lies still.", $"Let move {right.Move.Index + 1} begin from rest, with a law such as '{MotionLaws.Default.Name}'.");
        }

        return speed;
    }

    private static double Through(PlacedMove left, PlacedMove right)
    {
        var (s1, s2) = (left.Slope, right.Slope);
        var quintics = left.Move.Law == MotionLaws.Quintic && right.Move.Law == MotionLaws.Quintic;
        return quintics && s1 * s2 > 0 ? 2 * s1 * s2 / (s1 + s2) : 0;
    }

    private static double ToDwell(MoveEnd end, ProblemSink problems)
    {
        var speed = end.Speed ?? 0;
        if (Math.Abs(speed) > SameSpeed && !end.MayJump)
        {
            var (name, side) = end.IsLast ? ("speed-out", "after") : ("speed-in", "before");
            problems.Add(end.Move.Index, $"Move {end.Move.Index + 1} has {name} {ProblemSink.N(speed)} {problems.SpeedUnit}, but {side} it the member dwells.", $"Leave {name} out, or let another move touch at {ProblemSink.N(end.Angle)} deg.");
        }

        return speed;
    }

    private static void Refuse(MoveEnd left, MoveEnd right, double l, double r, ProblemSink problems)
    {
        var at = $"at {ProblemSink.N(right.Angle)} deg move {left.Move.Index + 1} arrives at {ProblemSink.N(l)} {problems.SpeedUnit} and move {right.Move.Index + 1} leaves at {ProblemSink.N(r)}";
        if ((right.IsAtRest ? right : left.IsAtRest ? left : null) is { } resting)
        {
            var remedy = resting.Move.IsDrop ? $"Let move {left.Move.Index + 1} come to rest at its end." : $"Leave a dwell between them, or let move {resting.Move.Index + 1} be a single move of law 'quintic', which takes the speed over.";
            problems.Add(resting.Move.Index, $"Move {resting.Move.Index + 1} ('{resting.Move.Move.Law}') is at rest {(resting.Move.IsDrop ? "where it begins" : "at its ends")}, but {at}.", remedy);
        }
        else
        {
            var given = right.MayJump ? left : right;
            problems.Add(given.Move.Index, $"The end speeds do not agree: {at}.", $"Leave {(given.IsLast ? "speed-out" : "speed-in")} of move {given.Move.Index + 1} out: it takes its neighbour's speed.");
        }
    }
}
