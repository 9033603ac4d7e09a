using Jackwork.Bench.Elements.Sizing;
using Jackwork.Bench.Sessions;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>Sizes put into a design on the bench, against how the machine then goes: found by looking along its solved steps, which knows nothing of the sizing.</summary>
[Trait("Proof", "independent")]
public sealed class SizingTests
{
    private const string Head = "jackwork: 1\ntitle: Sized\ncrank: {turns: shaft, rpm: 30, radius: 30}\nmembers:\n";

    [Theory]
    [InlineData("z", 0, false, 30, 1.25, 70)]
    [InlineData("z", 0, true, 30, 1.25, 70)]
    [InlineData("-z", 5, true, 24, 1.1, 80)]
    [InlineData("-z", 5, false, 24, 1.1, 80)]
    [InlineData("z", -7, false, 40, 1, 100)]
    public void TheSlideHasTheStrokeAndTheQuickReturnAsked(string along, double aside, bool slowOut, double stroke, double ratio, double rod)
    {
        var text = FormattableString.Invariant($"{Head}  shaft: {{pivot: {{through: [0, 40, 0], along: {along}}}}}\n  ram: {{slide: {{along: -x, through: [-70, 44, {aside}]}}, rod: {{from: shaft, pins: [[6, 48, 0], [-62, 44, {aside}]]}}}}\n");
        var after = Put(text, "ram", (work, m) => new SlideSizing(stroke, ratio, rod, slowOut).Put(CrankSlide.Of(work, m)!, text));
        var q = after.Proof.Motion.Of(1).ToArray().Select(s => s.Value).ToList();
        Assert.Equal(stroke, q.Max() - q.Min(), 2e-3);

        // The slide goes along -x, away from the shaft. Steps upward over steps downward.
        var (top, low) = (q.IndexOf(q.Max()), q.IndexOf(q.Min()));
        var rising = (top - low + q.Count) % q.Count;
        var time = rising / (double)(q.Count - rising);
        Assert.Equal(ratio == 1 ? 1 : slowOut ? ratio : 1 / ratio, time, 0.01);
        Assert.Equal(rod, ((RodDrive)after.Machine.Drives[1]).Length, 1e-5);
        Assert.True(after.Proof.Closure < 1e-9);

        // The line of its rod has moved with its pin.
        var was = new Point3(-70, 44, aside) - new Point3(-62, 44, aside);
        Assert.Equal(0, (after.Machine.Design.Members["ram"].Slide!.Through!.Value - ((RodDrive)after.Machine.Drives[1]).DrivenPin - was).Length, 1e-5);
    }

    [Fact]
    public void TheLegTakesTheStrideAndTheLiftAsked()
    {
        const string Text = Head + "  shaft: {pivot: {through: [0, 100, 0], along: z}}\n  knee: {slide: {along: y}, rod: {from: shaft, pins: [[6, 104, 8], [0, 60, 4]]}}\n  leg: {on: shaft, pivot: {through: [6, 104, 12], along: z}, coupler: {of: knee}}\n";
        var after = Put(Text, "leg", (work, m) => new LegSizing(30, 18, 80).Put(LegSizing.Site(work, m)!, Text));
        var foot = after.Machine.Design.Members["leg"].Coupler!.Point!.Value;
        var frames = new BodyFrames(after.Proof.Motion);
        var path = Enumerable.Range(0, frames.Steps).Select(s => frames.At(new(2), s).Apply(foot)).ToList();
        Assert.Equal(30, path.Max(p => p.X) - path.Min(p => p.X), 2e-3);
        Assert.Equal(18, path.Max(p => p.Y) - path.Min(p => p.Y), 2e-3);
        Assert.Equal(12, path.Max(p => p.Z), 1e-6);
        Assert.True(after.Proof.Closure < 1e-9);
    }

    [Fact]
    public void WhatCannotBeIsSaidAndChangesNothing()
    {
        const string Text = Head + "  shaft: {pivot: {through: [0, 40, 0], along: z}}\n  ram: {slide: {along: x}, rod: {from: shaft, pins: [[6, 48, 0], [62, 44, 0]]}}\n";
        var work = Work.Of(1, Text, _ => null).Work!;
        var edit = new SlideSizing(30, 4, 20, false).Put(CrankSlide.Of(work, 1)!, Text);
        Assert.Equal((false, Text), (edit.IsDone, edit.Text));
        Assert.Contains("30 mm", edit.Refusal, StringComparison.Ordinal);
        Assert.Null(CrankSlide.Of(work, 0));
        Assert.Null(LegSizing.Site(work, 1));
    }

    private static Work Put(string text, string member, Func<Work, int, Jackwork.Design.TextEdit> size)
    {
        var work = Work.Of(1, text, _ => null).Work!;
        var edit = size(work, work.Machine.IndexOf(member));
        Assert.True(edit.IsDone, edit.Refusal);
        var (after, problems) = Work.Of(2, edit.Text, _ => null);
        Assert.True(after is not null, string.Join("; ", problems) + edit.Text);
        return after;
    }
}
