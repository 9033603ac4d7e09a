using System.Collections.Immutable;
using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>Lays out the pieces and spans of a chart that was found sound.</summary>
internal sealed class ChartBuilder
{
    private const double Turn = 360;
    private const double Rad = Math.PI / 180;

    private readonly ImmutableArray<ChartPiece>.Builder pieces = ImmutableArray.CreateBuilder<ChartPiece>();
    private readonly List<ChartSpan> spans = [];
    private readonly double origin;
    private readonly double unit;

    private ChartBuilder(double origin, double unitScale) => (this.origin, unit) = (origin, unitScale);

    /// <summary>The chart of <paramref name="order"/>, its first piece beginning with the first move.</summary>
    public static TimingChart Build(double rest, PlacedMove[] order, EndSpeeds[] speeds, double unitScale)
    {
        var origin = order is [var first, ..] ? first.Move.From : 0;
        var b = new ChartBuilder(origin, unitScale);
        for (var k = 0; k < order.Length; k++)
        {
            var next = k + 1 < order.Length ? order[k + 1].Move.From : origin + Turn;
            var to = order[k].Move.To;
            to = Math.Abs(next - to) <= ChartCompiler.SameAngle ? next : to;
            b.AddMove(order[k], speeds[k], to);
            b.AddDwell(to, next, order[k].End, -1);
        }

        if (order.Length == 0)
        {
            b.AddDwell(origin, origin + Turn, rest, -1);
        }

        return new(origin * Rad, b.pieces.ToImmutable(), [.. b.spans]);
    }

    private void AddMove(PlacedMove p, EndSpeeds speeds, double to)
    {
        var (stroke, at) = (p.Stroke, p.Move.From);
        if (p.Move.Beats is not { } beats)
        {
            AddStroke(p, at, to, p.Start, p.Target, speeds.In ?? 0, speeds.Out ?? 0);
            return;
        }

        for (var n = 1; n <= beats; n++)
        {
            var (top, back) = (at + stroke, at + stroke + p.Hold);
            var end = n == beats ? to : back + stroke;
            AddStroke(p, at, top, p.Start, p.Target, 0, 0);
            AddDwell(top, back, p.Target, p.Index);
            AddStroke(p, back, end, p.Target, p.Start, 0, 0);
            at = end + p.Pause;
            AddDwell(end, n == beats ? end : at, p.Start, p.Index);
        }
    }

    // Angles in degrees, positions in the member's unit, speeds per degree.
    private void AddStroke(PlacedMove p, double from, double to, double start, double end, double speedIn, double speedOut)
    {
        if (p.Law is { } law)
        {
            double[] times = [0, .. law.Corners, 1];
            for (var i = 0; i + 1 < times.Length; i++)
            {
                var rate = 1 / ((to - from) * Rad);
                AddSpan(from + times[i] * (to - from), rate, times[i], times[i + 1], law, start, end - start, default);
            }
        }
        else
        {
            double[] x = [from, .. p.Move.Points.Select(q => q.Deg), to];
            double[] y = [unit * start, .. p.Move.Points.Select(q => unit * q.Value), unit * end];
            var curve = QuinticSpline.Through(x, y, unit * speedIn, unit * speedOut);
            for (var i = 0; i < curve.Length; i++)
            {
                AddSpan(x[i], 1 / ((x[i + 1] - x[i]) * Rad), 0, 1, null, 0, 0, curve[i]);
            }
        }

        AddPiece(from, to, start, end, p.Move.Law, p.Index);
    }

    private void AddDwell(double from, double to, double position, int move)
    {
        if (to > from)
        {
            AddSpan(from, 1 / ((to - from) * Rad), 0, 1, null, 0, 0, Quintic.Constant(unit * position));
            AddPiece(from, to, position, position, null, move);
        }
    }

    private void AddSpan(double from, double rate, double t0, double t1, MotionLaw? law, double start, double lift, Quintic poly) =>
        spans.Add(new(pieces.Count, (from - origin) * Rad, rate, t0, t1, law, unit * start, unit * lift, poly));

    private void AddPiece(double from, double to, double start, double end, string? law, int move) =>
        pieces.Add(new(from * Rad, to * Rad, unit * start, unit * end, law, move));
}
