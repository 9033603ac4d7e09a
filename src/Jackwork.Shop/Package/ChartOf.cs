using System.Collections.Immutable;
using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Shop.Timing;
using Jackwork.Timing;

namespace Jackwork.Shop.Package;

/// <summary>The performance of a machine, ready to be drawn.</summary>
public static class ChartOf
{
    /// <summary>One row for each acted member, read in degrees of the shaft that most charts run over; a band for each rule while it binds.</summary>
    public static PerformanceChart Performance(Proof proof)
    {
        var machine = proof.Machine;
        var shaft = machine.Acted.GroupBy(a => a.Shaft).MaxBy(g => g.Count())!.Key;
        return new(
            machine.Design.Title,
            machine.NameOf(shaft),
            machine.Performance.CrankTurns,
            machine.Performance.CrankTurns * Math.Abs(machine.Turns[shaft]!.Value.Value),
            [.. machine.Acted.Select(a => Row(proof, a))],
            [.. machine.Rules.SelectMany(r => Bands(proof, r))]);
    }

    private static ChartRow Row(Proof proof, Acted acted)
    {
        var member = proof.Machine.Members[acted.Member];
        var positions = new double[proof.Motion.Steps];
        var q = proof.Motion.Of(acted.Member);
        for (var i = 0; i < positions.Length; i++)
        {
            positions[i] = q[i].Value / member.UnitSize;
        }

        return new(member.Name, member.Unit, positions, acted.Chart.Min / member.UnitSize, acted.Chart.Max / member.UnitSize, Moves(proof.Machine, acted));
    }

    // The chart's moves in every turn of its shaft, in turns of the crank; the strokes of one move that follow on each other are one stretch.
    private static ImmutableArray<TurnSpan> Moves(Machine machine, Acted acted)
    {
        var strokes = new List<(double From, double To, int Move)>();
        foreach (var piece in acted.Chart.Pieces.Where(p => p.Kind == PieceKind.Move))
        {
            if (strokes.Count > 0 && strokes[^1].Move == piece.MoveIndex && strokes[^1].To == piece.From)
            {
                strokes[^1] = strokes[^1] with { To = piece.To };
            }
            else
            {
                strokes.Add((piece.From, piece.To, piece.MoveIndex));
            }
        }

        var rounds = (int)Math.Round(machine.Performance.CrankTurns * Math.Abs(machine.Turns[acted.Shaft]!.Value.Value));
        double Turn(double angle) => Math.Max(0, ShaftTurn.Crank(machine, acted.Shaft, acted.Sense * angle)) / Math.Tau;
        return
        [
            .. from round in Enumerable.Range(0, rounds)
               from s in strokes
               select new TurnSpan(Turn(s.From + round * Math.Tau), Turn(s.To + round * Math.Tau)),
        ];
    }

    private static IEnumerable<RuleBand> Bands(Proof proof, Rule rule)
    {
        var q = proof.Motion.Of(rule.While.Member);
        var binds = new bool[q.Length];
        for (var i = 0; i < binds.Length; i++)
        {
            binds[i] = rule.While.Margin(q[i].Value) > 0;
        }

        foreach (var span in Spans(proof, binds))
        {
            yield return new(span, rule.Text, false);
        }

        foreach (var broken in RuleBreak.Of(proof.Motion, rule))
        {
            yield return new(new(broken.From / (2 * Math.PI), broken.To / (2 * Math.PI)), rule.Text, true);
        }
    }

    // The stretches over which something holds, to a step; one that runs over the end of the performance ends before it begins.
    private static ImmutableArray<TurnSpan> Spans(Proof proof, bool[] holds)
    {
        var n = holds.Length;
        if (Array.TrueForAll(holds, h => h))
        {
            return [new(0, proof.Machine.Performance.CrankTurns)];
        }

        double Turn(int i) => i % n * (double)proof.Machine.Performance.CrankTurns / n;
        var spans = ImmutableArray.CreateBuilder<TurnSpan>();
        for (var i = 0; i < n; i++)
        {
            if (!holds[i] || holds[(i + n - 1) % n])
            {
                continue;
            }

            var end = i;
            while (holds[end % n])
            {
                end++;
            }

            spans.Add(new(Turn(i), end == n ? proof.Machine.Performance.CrankTurns : Turn(end)));
        }

        return spans.ToImmutable();
    }
}
