namespace Jackwork.Timing;

/// <summary>Puts the moves in the order of the turn, each with the positions it runs between.</summary>
internal static class MoveOrder
{
    private const double Turn = 360;

    /// <summary>
    /// The moves by rising <see cref="MoveSpec.From"/>; reports overlaps and a turn that does not come back. Empty when
    /// the positions or the order cannot be known.
    /// </summary>
    public static PlacedMove[] Of(ChartSpec spec, MoveCheck[] checks, ProblemSink problems)
    {
        var order = Enumerable.Range(0, spec.Moves.Count).Where(i => checks[i].Angles).OrderBy(i => spec.Moves[i].From).ToArray();
        var apart = CheckApart(spec.Moves, order, problems);
        if (!double.IsFinite(spec.Rest) || !checks.All(c => c is { Angles: true, Target: true }))
        {
            return [];
        }

        var placed = Place(spec, order);
        if (placed is [.., var last] && last.End != spec.Rest)
        {
            var (end, rest) = (ProblemSink.N(last.End), ProblemSink.N(spec.Rest));
            problems.Add(-1, $"The chart ends the turn at {end} {problems.Unit} and begins it at {rest} {problems.Unit}.", $"Add a move back to {rest} {problems.Unit}, or let {ProblemSink.Name(last.Index, last.Move)} reach it.");
        }

        return apart ? placed : [];
    }

    private static PlacedMove[] Place(ChartSpec spec, int[] order)
    {
        var placed = new PlacedMove[order.Length];
        var position = spec.Rest;
        for (var k = 0; k < order.Length; k++)
        {
            var m = spec.Moves[order[k]];
            var target = m.Reach ?? (m.By is { } by ? position + by : spec.Rest);

            // Distances that add up to rest but for rounding end at rest exactly.
            target = Math.Abs(target - spec.Rest) <= ChartCompiler.SamePosition ? spec.Rest : target;
            placed[k] = new(order[k], m, position, target);
            position = placed[k].End;
        }

        return placed;
    }

    // Each move against the one before it that lasts longest, and that one against the first move of the next turn.
    private static bool CheckApart(IReadOnlyList<MoveSpec> moves, int[] order, ProblemSink problems)
    {
        var before = problems.Count;
        for (int k = 1, last = 0; k <= order.Length && order.Length > 1; k++)
        {
            var next = k % order.Length;
            var (a, b) = (moves[order[last]], moves[order[next]]);
            var start = b.From + (k == order.Length ? Turn : 0);
            if (last != next && a.To > start + ChartCompiler.SameAngle)
            {
                problems.Add(order[next], $"{Capital(ProblemSink.Name(order[next], b))} begins {ProblemSink.N(a.To - start)} deg before {ProblemSink.Name(order[last], a)} ends.", $"Let move {order[last] + 1} end by {ProblemSink.N(start)} deg, or move {order[next] + 1} begin at {ProblemSink.N(a.To % Turn)} deg or later.");
            }

            last = k < order.Length && b.To > a.To ? k : last;
        }

        return problems.Count == before;
    }

    private static string Capital(string sentence) => char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
