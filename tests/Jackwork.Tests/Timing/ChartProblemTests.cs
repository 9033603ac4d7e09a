using Jackwork.Timing;
using Xunit;
using static Jackwork.Tests.Timing.Charts;

namespace Jackwork.Tests.Timing;

/// <summary>Every way a chart can be wrong is told, with its number and what would be right.</summary>
[Trait("Proof", "closed form")]
public sealed class ChartProblemTests
{
    private static readonly MoveSpec Out = new() { From = 20, To = 60, Reach = 25 };
    private static readonly MoveSpec Back = new() { From = 200, To = 260, ToRest = true };

    [Fact]
    public void BeginsOutsideTheTurn() => One(0, "begins at 380 deg", "20", Out with { From = 380, To = 400 }, Back);

    [Fact]
    public void BeginsBelowZero() => One(0, "begins at -10 deg", "350", Out with { From = -10 }, Back);

    [Fact]
    public void EndsBeforeItBegins() => One(1, "ends at 150 deg, not after its beginning at 200 deg", "510", Out, Back with { To = 150 });

    [Fact]
    public void EndsWhereItBegins() => One(0, "ends at 20 deg", "above 20", Out with { To = 20 }, Back);

    [Fact]
    public void LastsMoreThanATurn() => One(0, "lasts 400 deg", "380", new MoveSpec { From = 20, To = 420, ToRest = true });

    [Fact]
    public void TooShort() => One(0, "lasts 0.0005 deg, too short", "more than 0.001 deg", Out with { To = 20.0005 }, Back);

    [Fact]
    public void AWholeTurnIsAllowed() => Pivot(0, new MoveSpec { From = 20, To = 380, By = 10, Beats = 1 });

    [Fact]
    public void GoesNowhere() => One(0, "does not say where it goes", "reach", Out with { Reach = null }, Back);

    [Fact]
    public void GoesTwoWays() => One(0, "in 2 ways", "one of", Out with { By = 3 }, Back);

    [Fact]
    public void GoesThreeWays() => One(0, "in 3 ways", "one of", Out with { By = 3, ToRest = true }, Back);

    [Fact]
    public void UnknownLaw() => One(0, "unknown law 'cycloid'", "'cycloidal'", Out with { Law = "cycloid" }, Back);

    [Fact]
    public void NoBeats() => One(0, "has 0 beats", "1 or more", Out with { Beats = 0 }, Back);

    [Fact]
    public void NegativeHold() => One(0, "hold of -2 deg", "0 deg or more", Out with { Beats = 2, Hold = -2 }, Back);

    [Fact]
    public void NegativePause() => One(0, "pause of -1 deg", "0 deg or more", Out with { Beats = 2, Pause = -1 }, Back);

    [Fact]
    public void HoldWithoutBeats() => One(0, "hold of 5 deg but no beats", "beats", Out with { Hold = 5 }, Back);

    [Fact]
    public void PauseWithoutBeats() => One(0, "pause of 5 deg but no beats", "beats", Out with { Pause = 5 }, Back);

    [Fact]
    public void NoRoomForBeats() => One(0, "spends 45 deg on the holds and pauses of its 3 beats and lasts 40 deg", "fewer beats", Out with { Beats = 3, Hold = 5, Pause = 15 });

    [Fact]
    public void ManyBeatsWithoutDwellsFit() => Pivot(0, Out with { Beats = 60 });

    [Fact]
    public void BeatsOfACurve() => One(0, "2 beats of the law 'curve'", "Leave beats out", Out with { Beats = 2, Law = "curve", Points = [(30, 1)] });

    [Fact]
    public void BeatsWithEndSpeed() => One(0, "2 beats and an end speed of 0.5 deg per deg", "Leave the speed out", Out with { Beats = 2, Law = "quintic", SpeedIn = 0.5 });

    [Fact]
    public void CurveWithoutPoints() => One(0, "'curve' but 0 points", "at least 1 point", Out with { Law = "curve" }, Back);

    [Fact]
    public void PointsWithoutCurve() => One(0, "1 points, which the law 'harmonic'", "'curve'", Out with { Law = "harmonic", Points = [(30, 1)] }, Back);

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(10)]
    [InlineData(70)]
    public void PointOutside(double deg) => One(0, $"a point at {deg} deg, not between", "above 20 and below 60", Out with { Law = "curve", Points = [(deg, 1)] }, Back);

    [Theory]
    [InlineData(40)]
    [InlineData(35)]
    public void PointsOutOfOrder(double deg) => One(0, $"a point at {deg} deg after one at 40 deg", "rising order", Out with { Law = "curve", Points = [(40, 1), (deg, 2)] }, Back);

    [Fact]
    public void EndSpeedOfAFixedLaw() => One(0, "end speed of 0.5 deg per deg, which the law 'harmonic'", "quintic", Out with { Law = "harmonic", SpeedIn = 0.5 }, Back);

    [Theory]
    [InlineData("from")]
    [InlineData("to")]
    [InlineData("reach")]
    [InlineData("by")]
    [InlineData("hold")]
    [InlineData("pause")]
    [InlineData("speed-in")]
    [InlineData("speed-out")]
    [InlineData("point")]
    public void NotANumber(string what)
    {
        var wrong = what switch
        {
            "from" => Out with { From = double.NaN },
            "to" => Out with { To = double.PositiveInfinity },
            "reach" => Out with { Reach = double.NaN },
            "by" => Out with { Reach = null, By = double.NegativeInfinity },
            "hold" => Out with { Hold = double.NaN },
            "pause" => Out with { Pause = double.NaN },
            "speed-in" => Out with { SpeedIn = double.NaN },
            "speed-out" => Out with { SpeedOut = double.NaN },
            _ => Out with { Law = "curve", Points = [(30, double.NaN)] },
        };
        One(0, what, "finite", wrong, Back);
    }

    [Fact]
    public void TooLargeToUse() => One(0, "reach 10000000, not a usable number", "up to 1000000", Out with { Reach = 1e7 }, Back);

    [Fact]
    public void BeatsBeyondCounting() => One(0, "2147483647 beats", "fewer beats", Out with { Beats = int.MaxValue });

    [Fact]
    public void RestNotANumber()
    {
        var p = Assert.Single(Problems(double.NaN, Out, Back));
        Assert.Equal(-1, p.MoveIndex);
        Assert.Contains("rest position is NaN", p.What);
    }

    [Fact]
    public void Overlap()
    {
        var p = Assert.Single(Problems(0, Out, Back with { From = 50 }));
        Assert.Equal(1, p.MoveIndex);
        Assert.Equal("Move 2 (50 to 260 deg) begins 10 deg before move 1 (20 to 60 deg) ends.", p.What);
        Assert.Equal("Let move 1 end by 50 deg, or move 2 begin at 60 deg or later.", p.Remedy);
    }

    [Fact]
    public void OverlapWithTheNextTurn()
    {
        var p = Assert.Single(Problems(0, Out, Back with { To = 390 }));
        Assert.Equal(0, p.MoveIndex);
        Assert.Equal("Move 1 (20 to 60 deg) begins 10 deg before move 2 (200 to 390 deg) ends.", p.What);
        Assert.Equal("Let move 2 end by 380 deg, or move 1 begin at 30 deg or later.", p.Remedy);
    }

    [Fact]
    public void OneLongMoveOverlapsSeveral()
    {
        var p = Problems(0, Out with { To = 300 }, new MoveSpec { From = 70, To = 90, By = 1 }, new MoveSpec { From = 100, To = 120, By = 1 }, new MoveSpec { From = 310, To = 350, ToRest = true });
        Assert.Equal([1, 2], p.Select(q => q.MoveIndex));
        Assert.All(p, q => Assert.Contains("move 1 (20 to 300 deg)", q.What));
    }

    [Fact]
    public void DoesNotComeBack()
    {
        var p = Assert.Single(Problems(0, Out, new MoveSpec { From = 200, To = 260, By = -13 }));
        Assert.Equal(-1, p.MoveIndex);
        Assert.Equal("The chart ends the turn at 12 deg and begins it at 0 deg.", p.What);
        Assert.StartsWith("Add a move back to 0 deg", p.Remedy);
    }

    [Fact]
    public void DistancesThatAddUpButForRoundingComeBack() =>
        Pivot(0, Out with { Reach = null, By = 0.1 }, new MoveSpec { From = 70, To = 80, By = 0.2 }, Back with { ToRest = false, By = -0.3 });

    [Fact]
    public void NamedLawAfterASteadyMove() =>
        One(1, "move 1 arrives at 0.5 deg per deg and move 2 leaves at 0", "quintic", Steady(20, 60, 20), new MoveSpec { From = 60, To = 100, ToRest = true, Law = "harmonic" });

    [Fact]
    public void NamedLawBeforeASteadyMove() =>
        One(0, "move 1 arrives at 0 deg per deg and move 2 leaves at -0.5", "quintic", new MoveSpec { From = 20, To = 60, Reach = 20, Law = "harmonic" }, Steady(60, 100, 0));

    [Fact]
    public void NamedLawAfterAGivenSpeed() =>
        One(1, "move 1 arrives at 0.3 deg per deg and move 2 leaves at 0", "quintic", Out with { Law = "quintic", SpeedOut = 0.3 }, new MoveSpec { From = 60, To = 100, ToRest = true });

    [Fact]
    public void SteadyMovesMayMeetAtACorner() => Assert.Contains(Pivot(0, Steady(20, 60, 20), Steady(60, 100, 0)).Knots, k => k.HasVelocityJump);

    [Fact]
    public void GivenSpeedsDisagree() =>
        One(1, "arrives at 0.3 deg per deg and move 2 leaves at 0.4", "speed-in of move 2", Out with { Law = "quintic", SpeedOut = 0.3 }, new MoveSpec { From = 60, To = 100, By = 10, Law = "quintic", SpeedIn = 0.4 }, Back);

    [Fact]
    public void GivenSpeedDisagreesWithASteadyMove() =>
        One(0, "arrives at 0.3 deg per deg and move 2 leaves at 0.5", "speed-out of move 1", Out with { Law = "quintic", SpeedOut = 0.3 }, Steady(60, 100, 45), Back);

    [Fact]
    public void GivenSpeedIntoADwell() => One(0, "speed-out 0.3 deg per deg, but after it the member dwells", "touch at 60 deg", Out with { Law = "quintic", SpeedOut = 0.3 }, Back);

    [Fact]
    public void GivenSpeedOutOfADwell() => One(0, "speed-in 0.3 deg per deg, but before it the member dwells", "touch at 20 deg", Out with { Law = "curve", Points = [(40, 9)], SpeedIn = 0.3 }, Back);

    // Lift 2 in 40 deg after a steady 0.5 per deg: ten times the mean speed. p = 20 t - 118 t^3 + ... overshoots by far.
    [Fact]
    public void QuinticThatSwingsPastItsEnd()
    {
        var p = Assert.Single(Problems(0, Steady(20, 60, 20), new MoveSpec { From = 60, To = 100, By = 2, Law = "quintic" }, Back));
        Assert.Equal(1, p.MoveIndex);
        Assert.Matches(@"^Move 2 swings \d+\.\d+ deg past 22 deg, since its end speed of 0\.5 deg per deg is too high for its mean speed of 0\.05\.$", p.What);
        Assert.Equal("Let it last 8 deg or less, or keep its end speeds to 0.1 deg per deg.", p.Remedy);
        Pivot(0, Steady(20, 60, 20), new MoveSpec { From = 60, To = 68, By = 2, Law = "quintic" }, Back);
    }

    [Fact]
    public void AllProblemsComeAtOnce()
    {
        var p = Problems(0, Out with { Law = "wobble", Hold = 3 }, Back with { From = 50, ToRest = false, By = 1 }, new MoveSpec { From = 300, To = 280 });
        Assert.Equal([0, 0, 1, 2, 2], p.Select(q => q.MoveIndex));
    }

    [Fact]
    public void SlidesAreToldInMillimetres()
    {
        var p = Assert.IsType<ChartResult.Refused>(TimingChart.Compile(new(0, [Out]), TimingChart.Millimetres)).Problems;
        Assert.Contains("25 mm", Assert.Single(p).What);
    }

    private static MoveSpec Steady(double from, double to, double reach) => new() { From = from, To = to, Reach = reach, Law = "constant-velocity" };

    private static void One(int move, string what, string remedy, params MoveSpec[] moves)
    {
        var p = Assert.Single(Problems(0, moves));
        Assert.Equal(move, p.MoveIndex);
        Assert.Contains(what, p.What);
        Assert.Contains(remedy, p.Remedy);
        Assert.EndsWith(".", p.What);
    }
}
