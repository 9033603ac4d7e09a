using CsCheck;
using Jackwork.Motion;
using Jackwork.Timing;
using Jackwork.Timing.Laws;
using Xunit;
using static Jackwork.Tests.Timing.Charts;

namespace Jackwork.Tests.Timing;

/// <summary>What every chart must satisfy, on random charts of up to seven moves.</summary>
[Trait("Proof", "property")]
public sealed class ChartPropertyTests
{
    // Laws that begin and end at rest, so that any two may touch.
    private static readonly string[] AtRest = [.. MotionLaws.Names.Where(n => n is not ("constant-velocity" or "drop"))];

    private static readonly Gen<MoveSpec> Move = Gen.Select(
        Gen.Int[0, AtRest.Length - 1].Select(i => AtRest[i]), Gen.Double[-40, 40], Gen.Bool, Gen.Int[0, 4], Gen.Double[0, 0.2], Gen.Double[0.45, 0.95], Gen.Double[-40, 40],
        (law, distance, reach, beats, dwell, pointAt, point) => new MoveSpec
        {
            From = 0,
            To = 1,
            Law = law,
            Reach = reach ? distance : null,
            By = reach ? null : distance,
            Beats = beats == 0 || law == MotionLaws.Curve ? null : beats,

            // Shares of the move until it is laid out.
            Hold = beats == 0 || law == MotionLaws.Curve ? 0 : dwell / beats,
            Pause = beats == 0 || law == MotionLaws.Curve ? 0 : dwell / beats,
            Points = law == MotionLaws.Curve ? [(pointAt, point)] : [],
        });

    private static readonly Gen<ChartSpec> Spec = Gen.Select(
        Gen.Double[-20, 20], Move.Array[1, 6], Gen.Double[0, 1], Gen.Double[0.2, 1].Array[7], Gen.Double[-0.5, 0.5].Array[7], LayOut);

    [Fact]
    public void CompilesAndPositionRunsThroughEverywhere() => Spec.Sample(spec =>
    {
        var chart = Pivot(spec.Rest, [.. spec.Moves]);
        Assert.NotEmpty(chart.Knots);

        // Rounding is measured against the largest speed and acceleration that the shortest stretch could need: a point of
        // a curve may lie as little as a twentieth of its move from the end.
        var w = chart.Pieces.Where(p => p.Kind == PieceKind.Move).Min(p => p.To - p.From) / 20;
        var speed = 1e-9 * (chart.Max - chart.Min) / w;
        foreach (var k in chart.Knots)
        {
            var (before, after) = (chart.Evaluate(Jet.Variable(k.Angle), Side.Before), chart.Evaluate(Jet.Variable(k.Angle), Side.After));
            Assert.Equal(before.Value, after.Value, 1e-12);
            Assert.False(k.HasVelocityJump);
            Assert.Equal(before.First, after.First, 1e-12 + speed);
            Assert.Equal(k.AccelerationJump, after.Second - before.Second, 1e-12 + speed / w);
        }

        for (var i = 0; i < chart.Pieces.Length; i++)
        {
            var (piece, next) = (chart.Pieces[i], chart.Pieces[(i + 1) % chart.Pieces.Length]);
            Assert.Equal(piece.To % (2 * Math.PI), next.From % (2 * Math.PI), 1e-12);
            Assert.Equal(piece.End, next.Start, 1e-12);
            Assert.Equal(piece.Start, chart.Evaluate(Jet.Variable(piece.From), Side.After).Value, 1e-12);
        }
    });

    // The positions worked out again, move by move, straight from the figures of the chart; the tolerance is that within
    // which a position counts as rest, 1e-9 deg.
    [Fact]
    public void EveryMoveEndsWhereItSays() => Spec.Sample(spec =>
    {
        var chart = Pivot(spec.Rest, [.. spec.Moves]);
        var position = spec.Rest;
        foreach (var m in spec.Moves.OrderBy(m => m.From))
        {
            var target = m.ToRest ? spec.Rest : m.Reach ?? position + m.By!.Value;
            Assert.Equal(position * Deg, chart.Evaluate(Jet.Variable(m.From * Deg), Side.After).Value, 2e-11);
            if (m.Beats is { } n)
            {
                var stroke = (m.To - m.From - n * m.Hold - (n - 1) * m.Pause) / (2 * n);
                Assert.Equal(target * Deg, chart.Evaluate(Jet.Variable((m.From + stroke + m.Hold / 2) * Deg)).Value, 2e-11);
                target = position;
            }

            position = target;
            Assert.Equal(position * Deg, chart.Evaluate(Jet.Variable(m.To * Deg), Side.Before).Value, 2e-11);
        }

        Assert.Equal(spec.Rest, position, 1e-9);
    });

    [Fact]
    public void DwellsHoldExactly() => Gen.Select(Spec, Gen.Double[0.001, 0.999], Gen.Int[-3, 3]).Sample((spec, u, turns) =>
    {
        var chart = Pivot(spec.Rest, [.. spec.Moves]);
        foreach (var dwell in chart.Pieces.Where(p => p.Kind == PieceKind.Dwell))
        {
            var q = chart.Evaluate(new Jet(dwell.From + u * (dwell.To - dwell.From) + turns * 2 * Math.PI, 1.7, 0.4));
            Assert.Equal(new Jet(dwell.Start, 0, 0), q);
        }
    });

    [Fact]
    public void RepeatsEveryTurn() => Gen.Select(Spec, Gen.Double[0, 2 * Math.PI], Gen.Int[-50, 50]).Sample((spec, x, turns) =>
    {
        var chart = Pivot(spec.Rest, [.. spec.Moves]);

        // Rounding of the angle, at most 1e-13 rad after 50 turns, times a speed below 100.
        Assert.Equal(chart.Evaluate(Jet.Variable(x)).Value, chart.Evaluate(Jet.Variable(x + turns * 2 * Math.PI)).Value, 1e-11);
    });

    // Within each piece away from the eighths at which the third derivative of some laws jumps, and through a shaft that
    // itself speeds up.
    [Fact]
    public void DerivativesMatchDifferences() => Gen.Select(Spec, Gen.Double[0.18, 0.32]).Sample((spec, u) =>
    {
        var chart = Pivot(spec.Rest, [.. spec.Moves]);
        foreach (var piece in chart.Pieces)
        {
            var width = piece.To - piece.From;
            var shaft = new Jet(piece.From + u * width, 1.3, 0.6);
            double At(double x) => chart.Evaluate(Jet.Constant(shaft.Value + shaft.First * x + shaft.Second * x * x / 2)).Value;
            var q = chart.Evaluate(shaft);
            var h = 0.02 * width;
            Assert.Equal(Richardson.First(At, 0, h), q.First, 1e-7 * (1 + Math.Abs(q.First)));

            // Rounding of the position, 1e-16, over the square of the smallest step, h / 16.
            var rounding = 4 * 1e-16 * Math.Max(1, chart.Max - chart.Min) * 256 / (h * h);
            Assert.Equal(Richardson.Second(At, 0, h), q.Second, 1e-7 * (1 + Math.Abs(q.Second)) + 10 * rounding);
        }
    });

    [Fact]
    public void StaysBetweenItsExtremesAndReachesThem() => Spec.Sample(spec =>
    {
        const int N = 20000;
        var chart = Pivot(spec.Rest, [.. spec.Moves]);
        var q = Enumerable.Range(0, N).Select(i => chart.Evaluate(Jet.Variable(i * 2 * Math.PI / N)).Value).ToArray();
        var steepest = Enumerable.Range(0, N).Max(i => Math.Abs(chart.Evaluate(Jet.Variable(i * 2 * Math.PI / N)).First));

        // Between samples the position strays at most half a step at full speed.
        var slack = steepest * 2 * Math.PI / N + 1e-12;
        Assert.InRange(q.Max(), chart.Max - slack, chart.Max + 1e-12);
        Assert.InRange(q.Min(), chart.Min - 1e-12, chart.Min + slack);
    });

    [Fact]
    public void OrderOfWritingDoesNotMatter() => Gen.Select(Spec, Gen.Double[0, 7]).Sample((spec, x) =>
        Assert.Equal(
            Pivot(spec.Rest, [.. spec.Moves]).Evaluate(Jet.Variable(x)),
            Pivot(spec.Rest, [.. spec.Moves.Reverse()]).Evaluate(Jet.Variable(x))));

    // Quintics one after another in one direction: passed without a stop, and never turning back.
    [Fact]
    public void ViaPointsKeepTheDirection() => Gen.Select(Gen.Double[0.5, 30].Array[5], Gen.Double[5, 40].Array[5]).Sample((lifts, lengths) =>
    {
        var (at, moves) = (10.0, new List<MoveSpec>());
        for (var i = 0; i < lifts.Length; i++)
        {
            moves.Add(new() { From = at, To = at + lengths[i], By = lifts[i], Law = MotionLaws.Quintic });
            at += lengths[i];
        }

        moves.Add(new() { From = at + 10, To = at + 100, ToRest = true });
        var chart = Pivot(0, [.. moves]);
        Assert.All(chart.Knots, k => Assert.False(k.HasVelocityJump || k.HasAccelerationJump));
        for (var x = 10.0; x < at; x += 0.25)
        {
            Assert.True(chart.Evaluate(Jet.Variable(x * Deg)).First >= -1e-12);
        }

        Assert.All(moves.Skip(1).Take(lifts.Length - 1), m => Assert.True(chart.Evaluate(Jet.Variable(m.From * Deg)).First > 0));
    });

    // Whatever is written, it compiles to a chart that can be evaluated, or is refused with sentences.
    [Fact]
    public void NonsenseIsRefusedNotThrown()
    {
        var number = Gen.OneOf(Gen.Double, Gen.Double[-400, 800], Gen.Int[-4, 8].Select(i => 90.0 * i), Gen.Const(0.0));
        var maybe = Gen.OneOf(Gen.Const((double?)null), number.Select(x => (double?)x));
        var move = Gen.Select(
            Gen.Select(number, number, maybe, maybe),
            Gen.Select(Gen.Int[0, MotionLaws.Names.Count], Gen.OneOf(Gen.Int.Select(i => (int?)i), Gen.Int[1, 5].Select(i => (int?)i), Gen.Const((int?)null)), number, number),
            Gen.Select(Gen.Select(number, number).Array[0, 3], maybe, maybe, Gen.Bool),
            (a, b, c) => new MoveSpec
            {
                From = a.Item1,
                To = a.Item2,
                Reach = a.Item3,
                By = a.Item4,
                Law = b.Item1 < MotionLaws.Names.Count ? MotionLaws.Names[b.Item1] : "none such",
                Beats = b.Item2,
                Hold = b.Item3,
                Pause = b.Item4,
                Points = c.Item1,
                SpeedIn = c.Item2,
                SpeedOut = c.Item3,
                ToRest = c.Item4,
            });
        Gen.Select(number, move.Array[0, 4], Gen.Double[0, 7]).Sample((rest, moves, x) =>
        {
            switch (TimingChart.Compile(new(rest, moves), TimingChart.Degrees))
            {
                case ChartResult.Compiled c:
                    Assert.True(double.IsFinite(c.Chart.Evaluate(Jet.Variable(x)).Second));
                    break;
                case ChartResult.Refused r:
                    Assert.NotEmpty(r.Problems);
                    Assert.All(r.Problems, p => Assert.True(p.What.EndsWith('.') && p.Remedy.Length > 0));
                    break;
            }
        });
    }

    // Moves and gaps share the turn in the given proportions (a negative gap closes up); the last goes back to rest and,
    // for most shares of the free angle before the first, runs on past 360.
    private static ChartSpec LayOut(double rest, MoveSpec[] moves, double share, double[] lengths, double[] gaps)
    {
        MoveSpec[] all = [.. moves, new() { From = 0, To = 1, ToRest = true, Law = "cycloidal" }];
        var perShare = 350 / all.Select((_, i) => lengths[i] + Math.Max(0, gaps[i])).Sum();
        var (placed, at) = (new List<MoveSpec>(), 0.0);
        for (var i = 0; i < all.Length; i++)
        {
            var length = perShare * lengths[i];
            placed.Add(all[i] with
            {
                From = at,
                To = at + length,
                Hold = all[i].Hold * length,
                Pause = all[i].Pause * length,
            });
            at += length + perShare * Math.Max(0, gaps[i]);
        }

        var origin = share * (359.9 - placed[^1].From);
        return new(rest, [.. placed.Select(m => m with
        {
            From = origin + m.From,
            To = origin + m.To,
            Points = [.. m.Points.Select(p => (origin + m.From + p.Deg * (m.To - m.From), p.Value))],
        })]);
    }
}
