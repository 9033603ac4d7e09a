using Jackwork.Motion;
using Jackwork.Timing;
using Jackwork.Timing.Laws;
using Xunit;
using static Jackwork.Tests.Timing.Charts;

namespace Jackwork.Tests.Timing;

/// <summary>Compiled charts against worked examples and figures that follow by hand.</summary>
public sealed class TimingChartTests
{
    // B. K. Sarkar, Theory of Machines, illustration 9.2: harmonic, lift 40 mm out in 60 deg, dwell 45, return in 90, 300 rpm;
    // printed 177.6 and 78.9 m/s^2 with pi taken as 3.141.
    [Fact]
    [Trait("Proof", "published")]
    public void HarmonicFollowerOfSarkar()
    {
        var chart = Slide(0, Harmonic(0, 60, 40), Harmonic(105, 195, 0));
        var w = 300 * 2 * Math.PI / 60;
        Assert.Equal(177.6, PeakAcceleration(chart, 0, w), 0.1);
        Assert.Equal(78.9, PeakAcceleration(chart, 105, w), 0.1);
        Assert.Equal(1.884956, Math.Abs(chart.Evaluate(Jet.Variable(30 * Deg)).First) * w / 1000, 1e-6);
        Assert.Equal(1.256637, Math.Abs(chart.Evaluate(Jet.Variable(150 * Deg)).First) * w / 1000, 1e-6);
    }

    // R. S. Khurmi and J. K. Gupta, Theory of Machines, exercise: harmonic, 50 mm in 1/3 turn, dwell 1/12, return in 1/6, 100 rpm;
    // printed 0.39 and 0.78 m/s, 6.17 and 24.67 m/s^2.
    [Fact]
    [Trait("Proof", "published")]
    public void HarmonicFollowerOfKhurmi()
    {
        var chart = Slide(0, Harmonic(0, 120, 50), Harmonic(150, 210, 0));
        var w = 100 * 2 * Math.PI / 60;
        Assert.Equal(0.39, Math.Abs(chart.Evaluate(Jet.Variable(60 * Deg)).First) * w / 1000, 0.005);
        Assert.Equal(0.78, Math.Abs(chart.Evaluate(Jet.Variable(180 * Deg)).First) * w / 1000, 0.0055);
        Assert.Equal(6.17, PeakAcceleration(chart, 0, w), 0.005);
        Assert.Equal(24.67, PeakAcceleration(chart, 150, w), 0.005);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void NoMovesIsOneDwell()
    {
        var chart = Pivot(12);
        var piece = Assert.Single(chart.Pieces);
        Assert.Equal((0, 2 * Math.PI, PieceKind.Dwell), (piece.From, piece.To, piece.Kind));
        Assert.Empty(chart.Knots);
        Assert.Equal(new Jet(12 * Deg, 0, 0), chart.Evaluate(new Jet(-77, 3, 2)));
        Assert.Equal((12 * Deg, 12 * Deg), (chart.Min, chart.Max));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void PositionsGoByReachByDistanceAndToRest()
    {
        var chart = Pivot(
            5,
            new MoveSpec { From = 200, To = 250, By = -10 },
            new MoveSpec { From = 20, To = 60, Reach = 25 },
            new MoveSpec { From = 300, To = 340, ToRest = true });
        foreach (var (at, position) in new[] { (0, 5.0), (10, 5), (60, 25), (130, 25), (200, 25), (250, 15), (299, 15), (340, 5), (355, 5), (-90, 15), (40, 15), (225, 20) })
        {
            Assert.Equal(position * Deg, chart.Evaluate(Jet.Variable(at * Deg)).Value, 1e-13);
        }

        Assert.Equal([1, -1, 0, -1, 2, -1], chart.Pieces.Select(p => p.MoveIndex));
        Assert.Equal(5 * Deg, chart.Min, 1e-15);
        Assert.Equal(25 * Deg, chart.Max, 1e-15);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AMoveRunsOnPastTheTurn()
    {
        var chart = Slide(0, new MoveSpec { From = 100, To = 140, Reach = 8 }, new MoveSpec { From = 340, To = 380, Reach = 0, Law = "cycloidal" });
        Assert.Equal(4, chart.Evaluate(Jet.Variable(0)).Value, 1e-13);
        Assert.Equal(-8 * 2 / (40 * Deg), chart.Evaluate(Jet.Variable(0)).First, 1e-12);
        Assert.Equal(0, chart.Evaluate(Jet.Variable(50 * Deg)).Value);
        Assert.Equal(chart.Pieces[0].From + 2 * Math.PI, chart.Pieces[^1].To, 1e-15);
        Assert.All(chart.Knots, k => Assert.InRange(k.Angle, 0, 2 * Math.PI));
    }

    // Three strokes with holds of 6 deg and pauses of 4 deg in 100 deg: each way (100 - 18 - 8) / 6 = 12 1/3 deg.
    [Fact]
    [Trait("Proof", "closed form")]
    public void BeatsStrikeHoldAndPause()
    {
        var chart = Slide(1, new MoveSpec { From = 50, To = 150, By = 9, Beats = 3, Hold = 6, Pause = 4 });
        const double Way = 74.0 / 6;
        Assert.Equal(12, chart.Pieces.Length);
        Assert.Equal(6, chart.Pieces.Count(p => p.Kind == PieceKind.Move));
        for (var n = 0; n < 3; n++)
        {
            var top = 50 + n * (2 * Way + 10) + Way;
            Assert.Equal(10, Position(chart, top + 3), 1e-14);
            Assert.Equal(1, Position(chart, top + 6 + Way + 2), 1e-14);
            Assert.Equal(5.5, Position(chart, top - Way / 2), 1e-12);
            Assert.Equal(5.5, Position(chart, top + 6 + Way / 2), 1e-12);
        }
    }

    // Mean speeds 10/30 and 40/60: harmonic mean 4/9 (Fritsch and Butland 1984).
    [Fact]
    [Trait("Proof", "closed form")]
    public void QuinticsPassAViaPointWithoutStopping()
    {
        var chart = Slide(0, Quintic(0, 30, 10), Quintic(30, 90, 50), new MoveSpec { From = 200, To = 300, ToRest = true });
        var via = chart.Evaluate(Jet.Variable(30 * Deg));
        Assert.Equal(10, via.Value, 1e-13);
        Assert.Equal(4.0 / 9, via.First * Deg, 1e-13);
        Assert.Equal(0, via.Second, 1e-9);
        Assert.All(chart.Knots, k => Assert.False(k.HasVelocityJump || k.HasAccelerationJump));
        Assert.Equal((0, 50), (chart.Min, chart.Max));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void QuinticsThatTurnBackStopInBetween()
    {
        var chart = Slide(0, Quintic(0, 30, 10), Quintic(30, 90, 0));
        Assert.Equal(new Jet(10, 0, 0), chart.Evaluate(Jet.Variable(30 * Deg)));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AQuinticTakesTheSpeedOfASteadyNeighbour()
    {
        var chart = Slide(
            0,
            Quintic(0, 20, 8),
            new MoveSpec { From = 20, To = 60, By = 20, Law = "constant-velocity" },
            Quintic(60, 80, 36),
            new MoveSpec { From = 200, To = 300, ToRest = true });
        foreach (var at in new[] { 20, 40, 60 })
        {
            Assert.Equal(0.5, chart.Evaluate(Jet.Variable(at * Deg)).First * Deg, 1e-13);
        }

        Assert.All(chart.Knots, k => Assert.False(k.HasVelocityJump || k.HasAccelerationJump));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AGivenSpeedIsKeptAndTakenOver()
    {
        var chart = Slide(0, Quintic(0, 30, 10) with { SpeedOut = 0.6 }, Quintic(30, 90, 50), new MoveSpec { From = 200, To = 300, ToRest = true });
        Assert.Equal(0.6, chart.Evaluate(Jet.Variable(30 * Deg), Side.Before).First * Deg, 1e-13);
        Assert.Equal(0.6, chart.Evaluate(Jet.Variable(30 * Deg), Side.After).First * Deg, 1e-13);
    }

    // A steady sweep out and back with rounded turns has to go past its ends.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ATurnAtTheEndOfASteadySweepGoesPastIt()
    {
        var chart = Slide(
            0,
            new MoveSpec { From = 0, To = 100, By = 50, Law = "constant-velocity" },
            Quintic(100, 180, 50),
            new MoveSpec { From = 180, To = 280, ToRest = true, Law = "constant-velocity" },
            Quintic(280, 360, 0));

        // p(1/2) with d = 0, v0 = v, v1 = -v: v (1/2 - 2/8 + 1/16) = 5 v / 16, v = 0.5 * 80 mm.
        Assert.Equal(50 + 5.0 / 16 * 40, chart.Max, 1e-12);
        Assert.Equal(-5.0 / 16 * 40, chart.Min, 1e-12);
        Assert.All(chart.Knots, k => Assert.False(k.HasVelocityJump || k.HasAccelerationJump));
    }

    // A steady move down at 0.5 a degree, then straight up again: the quintic takes the speed over and dips first.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ATurnIntoAMoveTheOtherWayDipsFirst()
    {
        var chart = Slide(
            0,
            new MoveSpec { From = 0, To = 40, By = -20, Law = "constant-velocity" },
            Quintic(40, 80, 10),
            new MoveSpec { From = 200, To = 300, ToRest = true });
        Assert.Equal(-0.5, chart.Evaluate(Jet.Variable(40 * Deg), Side.After).First * Deg, 1e-13);
        Assert.True(chart.Min < -20);
        Assert.Equal(10, chart.Max, 1e-12);
    }

    // Two steady beats of 10 mm, 10 deg a way, come back at -1 mm per deg.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AQuinticTakesTheSpeedOfTheLastBeatBack()
    {
        var chart = Slide(
            0,
            new MoveSpec { From = 0, To = 40, By = 10, Beats = 2, Law = "constant-velocity" },
            Quintic(40, 60, -20),
            new MoveSpec { From = 200, To = 300, ToRest = true });
        Assert.Equal(-1, chart.Evaluate(Jet.Variable(40 * Deg), Side.Before).First * Deg, 1e-12);
        Assert.Equal(-1, chart.Evaluate(Jet.Variable(40 * Deg), Side.After).First * Deg, 1e-12);
        Assert.Equal(-20, chart.Min, 1e-12);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ACurveRunsThroughItsPoints()
    {
        var chart = Pivot(3, new MoveSpec { From = 300, To = 470, Reach = 3, Law = "curve", Points = [(330, 20), (370, -4), (400, 11)] });
        foreach (var (deg, value) in new[] { (300.0, 3.0), (330, 20), (370, -4), (400, 11), (470, 3), (200, 3) })
        {
            Assert.Equal(value * Deg, chart.Evaluate(Jet.Variable(deg * Deg)).Value, 1e-13);
        }

        var densest = Enumerable.Range(0, 36000).Select(i => Position(chart, i / 100.0)).ToArray();
        Assert.Equal(densest.Max(), chart.Max, 1e-7);
        Assert.Equal(densest.Min(), chart.Min, 1e-7);
        Assert.True(chart.Max >= densest.Max() && chart.Min <= densest.Min());
        Assert.Equal(2, chart.Knots.Length);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ACurveMayTouchASteadyMove()
    {
        var chart = Slide(
            0,
            new MoveSpec { From = 0, To = 50, By = 10, Law = "constant-velocity" },
            new MoveSpec { From = 50, To = 300, ToRest = true, Law = "curve", Points = [(120, 14), (200, 6)] });
        Assert.Equal(0.2, chart.Evaluate(Jet.Variable(50 * Deg), Side.After).First * Deg, 1e-13);
        var start = chart.Knots[0];
        Assert.Equal(0.2 / Deg, start.VelocityJump, 1e-12);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void KnotsTellWhatJumps()
    {
        var chart = Slide(
            0,
            new MoveSpec { From = 0, To = 90, Reach = 9, Law = "constant-velocity" },
            new MoveSpec { From = 180, To = 270, Reach = 0, Law = "parabolic" });
        var b = Math.PI / 2;
        Assert.Equal([0, b, 2 * b, 2.5 * b, 3 * b], chart.Knots.Select(k => Math.Round(k.Angle, 12)), (x, y) => Math.Abs(x - y) < 1e-11);
        double[] speed = [9 / b, -9 / b, 0, 0, 0];
        double[] acceleration = [0, 0, -4 * 9 / (b * b), 8 * 9 / (b * b), -4 * 9 / (b * b)];
        for (var i = 0; i < 5; i++)
        {
            Assert.Equal(speed[i], chart.Knots[i].VelocityJump, 1e-12);
            Assert.Equal(acceleration[i], chart.Knots[i].AccelerationJump, 1e-11);
            Assert.Equal(speed[i] != 0, chart.Knots[i].HasVelocityJump);
            Assert.Equal(acceleration[i] != 0, chart.Knots[i].HasAccelerationJump);
        }
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void SidesOfACornerWithinAMove()
    {
        var chart = Slide(0, new MoveSpec { From = 10, To = 43, Reach = 1, Law = "parabolic" }, new MoveSpec { From = 100, To = 200, ToRest = true });
        var scale = 4 / (33 * Deg * 33 * Deg);
        foreach (var noise in new[] { 0, 1e-10, -1e-10, 2 * Math.PI, 200 * Math.PI })
        {
            var shaft = Jet.Variable(26.5 * Deg + noise);
            Assert.Equal(scale, chart.Evaluate(shaft, Side.Before).Second, 1e-9);
            Assert.Equal(-scale, chart.Evaluate(shaft, Side.After).Second, 1e-9);
            var start = Jet.Variable(10 * Deg + noise);
            Assert.Equal(0, chart.Evaluate(start, Side.Before).Second);
            Assert.Equal(scale, chart.Evaluate(start, Side.After).Second, 1e-9);
        }
    }

    // A chain outside the chart: shaft = 2 x + x^2 / 2 at x = 0.3, law at its middle, by the chain rule.
    [Fact]
    [Trait("Proof", "closed form")]
    public void DerivativesAreCarriedThrough()
    {
        var chart = Slide(0, new MoveSpec { From = 0, To = 180, Reach = 10, Law = "harmonic" }, Harmonic(180, 360, 0));
        var shaft = new Jet(1.1, 2.3, 1);
        var q = chart.Evaluate(shaft);
        Assert.Equal(5 * (1 - Math.Cos(1.1)), q.Value, 1e-13);
        Assert.Equal(5 * Math.Sin(1.1) * 2.3, q.First, 1e-13);
        Assert.Equal(5 * Math.Cos(1.1) * 2.3 * 2.3 + 5 * Math.Sin(1.1), q.Second, 1e-12);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ANonFiniteAngleGivesNotANumber() =>
        Assert.All([double.NaN, double.PositiveInfinity], x => Assert.True(double.IsNaN(Slide(0, Harmonic(0, 60, 4), Harmonic(60, 90, 0)).Evaluate(Jet.Variable(x)).Value)));

    [Fact]
    [Trait("Proof", "closed form")]
    public void AnotherUnitScaleIsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TimingChart.Compile(new(0, []), 2));

    [Fact]
    [Trait("Proof", "property")]
    public void EvaluationAllocatesNothing()
    {
        var chart = Slide(0, Quintic(0, 30, 10), new MoveSpec { From = 30, To = 200, By = 5, Beats = 3 }, new MoveSpec { From = 300, To = 340, ToRest = true });
        chart.Evaluate(Jet.Variable(1));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sum = 0.0;
        for (var i = 0; i < 1000; i++)
        {
            sum += chart.Evaluate(Jet.Variable(0.01 * i)).Value + chart.Evaluate(Jet.Variable(0.01 * i), Side.Before).Value;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(double.IsFinite(sum));
    }

    private static MoveSpec Harmonic(double from, double to, double reach) => new() { From = from, To = to, Reach = reach, Law = "harmonic" };

    private static MoveSpec Quintic(double from, double to, double reach) => new() { From = from, To = to, Reach = reach, Law = MotionLaws.Quintic };

    private static double Position(TimingChart chart, double deg) => chart.Evaluate(Jet.Variable(deg * Deg)).Value;

    // m/s^2, of a harmonic move: greatest at its ends.
    private static double PeakAcceleration(TimingChart chart, double atDeg, double w) =>
        Math.Abs(chart.Evaluate(Jet.Variable(atDeg * Deg), Side.After).Second) * w * w / 1000;
}
