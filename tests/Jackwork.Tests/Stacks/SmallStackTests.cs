using Jackwork.Checks;
using Jackwork.Stacks;
using Xunit;

namespace Jackwork.Tests.Stacks;

/// <summary>Stations, gaps and keys of a small piece, added up by hand.</summary>
[Trait("Proof", "closed form")]
public sealed class SmallStackTests
{
    // Numbers of the design hold to this, mm.
    private const double Mm = 1e-9;

    private static Stack Of(Proof proof, string name) => Assert.Single(proof.Stacks, s => s.Name == name);

    private static void Is(StackRun run, string first, string last, double gap, double least, double most)
    {
        Assert.Equal((first, last), (run.First?.Name, run.Last?.Name));
        Assert.Equal(gap, run.Range.Nominal, Mm);
        Assert.Equal(least, run.Range.Least, Mm);
        Assert.Equal(most, run.Range.Most, Mm);
    }

    [Fact]
    public void The_shaft_has_its_things_in_order_with_the_gaps_between_them()
    {
        var stack = Of(SmallPiece.Proof(SmallPiece.Text()), "shaft");
        Assert.Equal(
            [("case left", -29, -20), ("lever cam", -3, 3), ("lever cam hub", 3, 15), ("case right", 30, 39), ("handle arm", 40, 46)],
            stack.Items.Select(i => (i.Name, i.From, i.To)));

        // Sheet of 6: +0.38 -0.58, half of it on each side of the cam. Board of 9: +0.47 -0.67, its inner face as drawn.
        // Brass +-0.1: the hub in full, half the handle's arm.
        Assert.Equal(3, stack.Runs.Count);
        Is(stack.Runs[0], "case left", "lever cam", 17, 17 - 0.19, 17 + 0.29);
        Is(stack.Runs[1], "lever cam hub", "case right", 15, 15 - 0.19 - 0.1, 15 + 0.29 + 0.1);
        Is(stack.Runs[2], "case right", "handle arm", 1, 1 - 0.47 - 0.05, 1 + 0.67 + 0.05);

        // Behind, the handle's arm meets the board first: 1 mm. Ahead the hub does: 15 mm.
        Assert.Equal(16, stack.Float!.Value, Mm);
    }

    [Fact]
    public void A_lever_between_collars_has_the_play_of_both_its_gaps()
    {
        var proof = SmallPiece.Proof(SmallPiece.Text());
        var run = Assert.Single(Of(proof, "lever axle").Runs, r => r.Held.Any());
        Is(run, "behind", "ahead", 0.2 + 0.3, 0.5 - 0.38 - 0.05 - 0.05, 0.5 + 0.58 + 0.1);
        Assert.DoesNotContain(Verdict.Of(proof).Findings, f => f.Check is "stack-gap" or "stack-overlap" || f.Subject == "lever");
    }

    [Fact]
    public void A_looser_tube_is_a_spacer_and_shifts_with_the_lever()
    {
        var text = SmallPiece.Text().Replace("to: [9, 70, -38], diameter: 8, bore: 4}", "to: [29, 70, -38], diameter: 8, bore: 4.4}", StringComparison.Ordinal);
        var run = Assert.Single(Of(SmallPiece.Proof(text), "lever axle").Runs, r => r.Held.Any());
        Assert.Equal(["lever", "ahead"], run.Between.Select(i => i.Name));

        // 0.2 + 0.3 + 1.0 before the board; lever in full, spacer in full, half the collar behind.
        Is(run, "behind", "case right", 1.5, 1.5 - 0.38 - 0.1 - 0.05, 1.5 + 0.58 + 0.1 + 0.05);
    }

    // A post of 6 mm along the shaft, 30 mm from it to the front, where the screw stands at 90 degrees. A key of 1.5 mm across flats
    // is 1.5 / sqrt 3 round and asks 0.3 of room: it passes where 30 sin t > 3 + 1.166, t > 7.98 degrees. It reaches 52.5 mm from
    // the axis: the bottom, 40 mm below, is in its way where 51.334 cos t > 40 - 1.166, t < 40.84 degrees about 180; the lever's axle
    // with its collar's end, 48.4 mm off at 308.3 degrees, where 48.4 sin t < 4 + 1.166, t < 6.13 degrees. Tried every 5 degrees.
    [Fact]
    public void A_post_is_in_the_key_s_way_where_geometry_says_so()
    {
        var proof = SmallPiece.Proof(SmallPiece.Text("  post: {rod: {from: [-20, 40, 30], to: [30, 40, 30], diameter: 6}}"));
        var grub = Assert.Single(Of(proof, "shaft").Grubs);
        Assert.Equal(5, grub.Step * 180 / Math.PI, 1e-9);
        Assert.Equal([(0, 80), (100, 135), (225, 300), (315, 355)], grub.Open.Select(o => (Math.Round(Proof.Deg(o.From), 6), Math.Round(Proof.Deg(o.To), 6))));
        Assert.Equal("case bottom", grub.InTheWay);
    }

    [Theory]
    [InlineData("M2", 33, true)]
    [InlineData("M3", 46.5, false)]
    public void A_wall_stops_a_long_key_and_not_a_short_one(string size, double arm, bool reached)
    {
        // The hub's surface is 6 mm from the axis, a drum's bore 45 mm.
        Assert.Equal(reached, 6 + arm < 45);
        var proof = SmallPiece.Proof(SmallPiece.Text("  drum: {tube: {from: [6, 40, 0], to: [12, 40, 0], diameter: 100, bore: 90}}", $", grub: {size}"));
        var grub = Assert.Single(Of(proof, "shaft").Grubs);
        Assert.Equal(reached, grub.IsReachable);
        var findings = Verdict.Of(proof).Findings.Where(f => f.Check == "stack-grub").ToList();
        Assert.Equal(reached ? 0 : 1, findings.Count);
        Assert.All(findings, f => Assert.Equal((Level.Fault, "lever cam hub", arm), (f.Level, f.Subject, f.Limit)));
        Assert.All(findings, f => Assert.Contains("'drum' is in the way", f.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("body: {from: -29, to: 46}", "body: {from: -29, to: 46, axle: 7}", "stack-pass", "lever cam")]
    [InlineData("body: {from: -29, to: 46}", "body: {from: -2, to: 46}", "stack-support", "lever cam")]
    [InlineData("body: {from: -29, to: 39}", "body: {from: -9, to: 9}", "stack-support", "lever axle")]
    [InlineData("hub-length: 12", "hub-length: 28", "stack-overlap", "lever cam hub / case right")]
    [InlineData("bore: 6, hub-length: 12", "bore: 5, hub-length: 12", "stack-pass", null)]
    public void What_can_t_be_put_together_is_a_fault(string line, string spoiled, string check, string? subject)
    {
        var sound = Verdict.Of(SmallPiece.Proof(SmallPiece.Text())).Findings;
        Assert.DoesNotContain(sound, f => f.Check == check && f.Subject == subject);
        var text = SmallPiece.Text();
        Assert.Contains(line, text, StringComparison.Ordinal);
        var findings = Verdict.Of(SmallPiece.Proof(text.Replace(line, spoiled, StringComparison.Ordinal))).Findings;
        if (subject is null)
        {
            // A shaft without a diameter of its own is as thick as the bore on it: nothing is wrong.
            Assert.DoesNotContain(findings, f => f.Check == check);
            return;
        }

        Assert.Contains(findings, f => f.Check == check && f.Subject == subject && f.Level == Level.Fault);
    }

    [Fact]
    public void A_shaft_that_nothing_stops_says_so_and_by_how_much_it_floats()
    {
        var finding = Assert.Single(Verdict.Of(SmallPiece.Proof(SmallPiece.Text())).Findings, f => f.Check == "stack-play" && f.Subject == "shaft");
        Assert.Equal((Level.Fault, 16.0, 1.0), (finding.Level, Math.Round(finding.Measured, 9), finding.Limit));
        Assert.Contains("14.8 mm", finding.Advice, StringComparison.Ordinal);
    }
}
