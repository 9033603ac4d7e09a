using CsCheck;
using Jackwork.Motion;
using MathNet.Numerics.RootFinding;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Interlocks: where they are broken, against crossings solved from the motion laws' own formulas.</summary>
[Trait("Proof", "closed form")]
public sealed class RuleBreakTests
{
    /// <summary>How near two crossing angles must lie, deg: rounding and the grace of a bound over the slowest passage here.</summary>
    private const double Near = 1e-6;

    // Cycloidal: y = h (t - sin(2 pi t)/(2 pi)); harmonic: y = h (1 - cos(pi t))/2 (R. L. Norton, Design of Machinery, chapter 8).
    private static double Cycloidal(double t) => t - Math.Sin(2 * Math.PI * t) / (2 * Math.PI);

    private static double Harmonic(double t) => (1 - Math.Cos(Math.PI * t)) / 2;

    private static double Solve(Func<double, double> law, double y) => Brent.FindRoot(t => law(t) - y, 0, 1, 1e-15, 500);

    [Fact]
    public void BetweenCrossingsOfCycloidalAndHarmonic()
    {
        // a passes 3 of 10 mm on its way up from 30 to 90 deg and again on its way down from 200 to 300; b passes 4 of 12 mm from 60 to 150.
        var broken = Breaks(
            "{from: 30, to: 90, reach: 10, law: cycloidal}, {from: 200, to: 300, reach: rest, law: cycloidal}",
            "{from: 60, to: 150, reach: 12, law: harmonic}, {from: 220, to: 310, reach: rest, law: harmonic}",
            "{while: {member: a, above: 3}, keep: {member: b, below: 4}}");
        var one = Assert.Single(broken);
        Assert.Equal(60 + 90 * Solve(Harmonic, 4.0 / 12), Deg(one.From), Near);
        Assert.Equal(200 + 100 * (1 - Solve(t => Cycloidal(t), 0.3)), Deg(one.To), Near);
        Assert.Equal((true, false, false), (one.StartsWithKeep, one.EndsWithKeep, one.Always));
        Assert.Equal(12, one.Worst, 1e-9);
        Assert.Equal(4, one.Bound);
    }

    [Fact]
    public void TooLateIsToldFromTooEarly()
    {
        // b must be above 5 while a is above 2: b comes too late by what lies between the two crossings.
        var broken = Breaks(
            "{from: 30, to: 90, reach: 10, law: harmonic}, {from: 200, to: 260, reach: rest, law: harmonic}",
            "{from: 40, to: 110, reach: 10, law: harmonic}, {from: 250, to: 310, reach: rest, law: harmonic}",
            "{while: {member: a, above: 2}, keep: {member: b, above: 5}}");
        var one = Assert.Single(broken);
        Assert.Equal(30 + 60 * Solve(Harmonic, 0.2), Deg(one.From), Near);
        Assert.Equal(75, Deg(one.To), Near);
        Assert.Equal((false, true), (one.StartsWithKeep, one.EndsWithKeep));
        Assert.Equal(5, one.Bound);
        Assert.Equal(10 * Harmonic((Deg(one.From) - 40) / 70), one.Worst, 1e-6);
    }

    // b rests exactly on its bound while a acts: kept. It gets there only after a has come: broken till then.
    [Theory]
    [InlineData("above: 7")]
    [InlineData("below: 7")]
    public void RestingOnTheBoundIsNoBreak(string bound) =>
        Assert.Empty(Breaks(
            "{from: 100, to: 140, reach: 10, law: cycloidal}, {from: 160, to: 200, reach: rest, law: cycloidal}",
            "{from: 20, to: 90, reach: 7, law: cycloidal}, {from: 210, to: 300, reach: rest, law: cycloidal}",
            $"{{while: {{member: a, above: 1}}, keep: {{member: b, {bound}}}}}"));

    [Fact]
    public void ReachingTheBoundLateIsABreak()
    {
        var one = Assert.Single(Breaks(
            "{from: 40, to: 80, reach: 10, law: harmonic}, {from: 160, to: 200, reach: rest, law: cycloidal}",
            "{from: 20, to: 90, reach: 7, law: constant-velocity}, {from: 210, to: 300, reach: rest, law: cycloidal}",
            "{while: {member: a, above: 5}, keep: {member: b, above: 7}}"));
        Assert.Equal(60, Deg(one.From), Near);
        Assert.Equal(90, Deg(one.To), Near);
        Assert.Equal(4, one.Worst, 1e-6);
    }

    // b only touches its bound at its turning point, from within and from without.
    [Fact]
    public void TouchingAtATurningPoint()
    {
        const string a = "{from: 10, to: 40, reach: 10, law: cycloidal}, {from: 300, to: 340, reach: rest, law: cycloidal}";
        const string b = "{from: 60, to: 120.3, reach: 7, law: harmonic}, {from: 120.3, to: 200, reach: rest, law: harmonic}";
        Assert.Empty(Breaks(a, b, "{while: {member: a, above: 1}, keep: {member: b, below: 7}}"));
        var all = Assert.Single(Breaks(a, b, "{while: {member: a, above: 1}, keep: {member: b, above: 7.000001}}"));
        Assert.Equal(10 + 30 * Solve(Cycloidal, 0.1), Deg(all.From), Near);
        Assert.Equal(340 - 40 * Solve(Cycloidal, 0.1), Deg(all.To), Near);
    }

    [Fact]
    public void ABreakShorterThanAStep()
    {
        // Steps fall on half degrees; the top at 120.25 deg stands 1e-6 mm past the bound.
        const double height = 7, past = 1e-6;
        var one = Assert.Single(Breaks(
            "{from: 10, to: 40, reach: 10, law: cycloidal}, {from: 300, to: 340, reach: rest, law: cycloidal}",
            "{from: 60, to: 120.25, reach: 7, law: harmonic}, {from: 120.25, to: 200, reach: rest, law: harmonic}",
            $"{{while: {{member: a, above: 1}}, keep: {{member: b, below: {Num(height - past)}}}}}"));
        var t = Math.Acos(1 - 2 * past / height) / Math.PI;
        Assert.InRange(Deg(one.To - one.From), 0.01, 0.5);
        Assert.Equal(120.25 - 60.25 * t, Deg(one.From), 2e-5);
        Assert.Equal(120.25 + 79.75 * t, Deg(one.To), 2e-5);
        Assert.Equal(height, one.Worst, 1e-7);
    }

    [Fact]
    public void ABandPassedWithinAStep()
    {
        // b goes straight through 5 to 5.001 mm at 10 mm in 90 deg: 0.009 deg.
        var broken = Breaks(
            "{from: 10, to: 40, reach: 10, law: cycloidal}, {from: 300, to: 340, reach: rest, law: cycloidal}",
            "{from: 60.2, to: 150.2, reach: 10, law: constant-velocity}, {from: 200.2, to: 290.2, reach: rest, law: constant-velocity}",
            "{while: {member: b, between: [5, 5.001]}, keep: {member: a, below: 1}}");
        Assert.Equal(2, broken.Count);
        Assert.Equal(60.2 + 45, Deg(broken[0].From), Near);
        Assert.Equal(60.2 + 45.009, Deg(broken[0].To), Near);
        Assert.Equal(200.2 + 45 - 0.009, Deg(broken[1].From), Near);
        Assert.Equal(200.2 + 45, Deg(broken[1].To), Near);
    }

    [Fact]
    public void OverTheSeam()
    {
        const string rest = "{from: 60, to: 150, reach: 10, law: harmonic}, {from: 200, to: 290, reach: rest, law: harmonic}";
        var one = Assert.Single(Breaks(rest, rest, "{while: {member: shaft, between: [350, 12]}, keep: {member: b, above: 3}}"));
        Assert.Equal(350, Deg(one.From), Near);
        Assert.Equal(372, Deg(one.To), Near);
        Assert.Equal(0, one.Worst, 1e-9);

        // By a chart that runs over the end of its turn.
        var two = Assert.Single(Breaks(
            "{from: 20, to: 60, reach: 0, law: harmonic}, {from: 300, to: 340, reach: rest, law: harmonic}",
            "{from: 60, to: 150, reach: 10, law: harmonic}, {from: 200, to: 290, reach: rest, law: harmonic}",
            "{while: {member: a, above: 0.25}, keep: {member: b, above: 3}}", aRest: 0.5));
        Assert.Equal(320, Deg(two.From), Near);
        Assert.Equal(360 + 40, Deg(two.To), Near);
    }

    [Fact]
    public void AllTheTime()
    {
        const string rest = "{from: 60, to: 150, reach: 10, law: harmonic}, {from: 200, to: 290, reach: rest, law: harmonic}";
        var one = Assert.Single(Breaks(rest, rest, "{while: {member: a, below: 20}, keep: {member: b, above: 30}}"));
        Assert.True(one.Always);
        Assert.Equal(0, one.Worst, 1e-9);
        Assert.Equal(30, one.Bound);
    }

    // A handle that turns three times for the shaft: a band of 0.2 deg, far below a step, is passed three times; on a wheel
    // that runs backwards too.
    [Theory]
    [InlineData("handle", 10.1, 10.3, 3, 1.0)]
    [InlineData("handle", 359.9, 0.1, 3, 1.0)]
    [InlineData("back", 10.1, 10.3, 6, -2.0)]
    [InlineData("back", 359.9, 0.1, 6, -2.0)]
    [InlineData("shaft", 10.1, 10.3, 1, -1.0 / 3)]
    public void BandsAroundATurningShaft(string member, double from, double to, int times, double rate)
    {
        var machine = Of($$"""
            jackwork: 1
            title: T
            crank: {turns: handle, rpm: 30}
            members:
              handle: {pivot: {through: [0, 100, 0], along: x} }
              shaft: {pivot: {through: [0, 40, 0], along: x}, gear: {with: handle, teeth: [12, 36], module: 2.5} }
              back: {pivot: {through: [0, 136, 0], along: x}, gear: {with: handle, teeth: [24, 12], module: 2} }
              b: {slide: {along: y}, cam: {on: shaft, follower: {roller: 8, at: [0, 80, 0]} } }
            timing:
              b: {over: shaft, moves: [{from: 100, to: 200, reach: 10}, {from: 250, to: 340, reach: rest}]}
            rules:
              - {while: {member: {{member}}, between: [{{from}}, {{to}}]}, keep: {member: b, above: 20} }
            """);
        var broken = RuleBreak.Of(Jackwork.Motion.Motion.Solve(machine), machine.Rules[0]);
        Assert.Equal(times, broken.Count);
        var width = (to - from + 360) % 360;
        foreach (var (b, k) in broken.Select((b, k) => (b, k)))
        {
            Assert.Equal(width / Math.Abs(rate), Deg(b.To - b.From), Near);
            var start = Deg(b.From) * Math.Abs(rate) - from;
            Assert.Equal(0, Math.IEEERemainder(start, 360), Near);
        }

        Assert.Equal(times, broken.Select(b => Math.Round(Deg(b.From), 3)).Distinct().Count());
    }

    // Any rule on any charts: an angle lies in one of the stretches exactly when the rule is broken there.
    [Fact]
    [Trait("Proof", "property")]
    public void StretchesAreWhereTheRuleIsBroken() =>
        Gen.Select(Moves, Moves, Gen.Double[-1, 13], Gen.Double[-1, 13], Gen.Double[0.001, 6], Gen.Int[0, 3]).Sample((a, b, x, y, width, kind) =>
        {
            var rule = kind switch
            {
                0 => $"{{while: {{member: a, above: {Num(x)}}}, keep: {{member: b, below: {Num(y)}}}}}",
                1 => $"{{while: {{member: a, between: [{Num(x)}, {Num(x + width)}]}}, keep: {{member: b, above: {Num(y)}}}}}",
                2 => $"{{while: {{member: shaft, between: [{Num(30 * x)}, {Num(30 * x + width)}]}}, keep: {{member: b, below: {Num(y)}}}}}",
                _ => $"{{while: {{member: a, below: {Num(x)}}}, keep: {{member: shaft, between: [{Num(30 * y)}, {Num(30 * y + 20 * width)}]}}}}",
            };
            var machine = Of(Design(a, b, rule, 0));
            var motion = Jackwork.Motion.Motion.Solve(machine);
            var broken = RuleBreak.Of(motion, machine.Rules[0]);
            var probe = motion.Probe();
            for (var deg = 0.0137; deg < 360; deg += 0.217)
            {
                probe.Go(Rad(deg));
                var (w, k) = (Margin(machine.Rules[0].While), Margin(machine.Rules[0].Keep));
                var inside = broken.Any(s => s.Always || Within(s, Rad(deg)));
                if (Math.Min(Math.Abs(w), Math.Abs(k)) > 1e-6)
                {
                    Assert.True(inside == (w > 0 && k < 0), $"{deg} deg: while {w}, keep {k}, inside {inside}\n{rule}");
                }
            }

            double Margin(Condition c) => c.Margin(probe.States[c.Member].Q.Value);
        }, iter: 60);

    private static readonly Gen<string> Moves = Gen.Select(
        Gen.Double[5, 60], Gen.Double[70, 150], Gen.Double[1, 12], Gen.Double[160, 250], Gen.Double[260, 355], Gen.Int[0, 3].Select(i => ((string[])["cycloidal", "harmonic", "modified-sine", "constant-velocity"])[i]),
        (f1, t1, reach, f2, t2, law) => $"{{from: {Num(f1)}, to: {Num(t1)}, reach: {Num(reach)}, law: {law}}}, {{from: {Num(f2)}, to: {Num(t2)}, reach: rest, law: {law}}}");

    private static bool Within(RuleBreak s, double crank) => (crank >= s.From && crank <= s.To) || crank + 2 * Math.PI <= s.To;

    private static IReadOnlyList<RuleBreak> Breaks(string a, string b, string rule, double aRest = 0)
    {
        var machine = Of(Design(a, b, rule, aRest));
        return RuleBreak.Of(Jackwork.Motion.Motion.Solve(machine), machine.Rules[0]);
    }

    private static string Design(string a, string b, string rule, double aRest) => $$"""
        jackwork: 1
        title: T
        crank: {turns: shaft, rpm: 30}
        members:
          shaft: {pivot: {through: [0, 40, 0], along: x} }
          a: {slide: {along: y}, cam: {on: shaft, follower: {roller: 8, at: [0, 80, 0]} } }
          b: {slide: {along: z}, cam: {on: shaft, follower: {roller: 8, at: [20, 40, 40]} } }
        timing:
          a: {over: shaft, rest: {{Num(aRest)}}, moves: [{{a}}]}
          b: {over: shaft, moves: [{{b}}]}
        rules:
          - {{rule}}
        """;
}
