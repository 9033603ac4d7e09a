using Jackwork.Checks;
using Jackwork.Cords;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Cords;

/// <summary>Tension and what keeps a cord taut: statics by hand, inertia by the block's own acceleration, remedies that do what they say.</summary>
public sealed class CordTensionTests
{
    /// <summary>A cube of brass, 10 mm, 8.47 g, weighs this in N.</summary>
    private const double Cube = 8.47e-3 * 9.80665;

    /// <summary>A slide hauled up and down by the crank, and a block with a cube of brass that hangs on it by a cord.</summary>
    private static string Hung(string run, double rpm = 0.1, string more = "", string parts = "", string along = "[0.0, 1.0, 0.0]", double pin = -52) =>
        Head(rpm: rpm) + Pivot("crank", new(0, -60, 0), new(0, 0, 1)) + Slide("haul", new(0, 1, 0), Rod("crank", new(0, pin, 0), new(0, 0, 0)))
        + $"  block:\n    slide: {{along: {along}}}\n    body: {{bare: true}}\n    cord: {{from: haul, across: z, run: [{run}]{more}}}\n"
        + $"parts:\n  cube: {{on: block, box: {{at: [60, 0, 40], size: [10, 10, 10]}}, material: brass}}\n{parts}";

    private const string Direct = "{at: [0, 0, 0], on: haul}, {at: [0, 100, 0]}, {at: [40, 100, 0]}, {at: [40, 0, 0], on: block}";

    private const string Tackle = "{at: [0, 0, 0], on: haul}, {at: [10, 100, 0], pulley: 19}, {at: [30, 0, 0], pulley: 19, on: block}, {at: [40, 100, 0]}";

    private static CordWork Work(string text) => Proof.OfMotion(Of(text)).MechanismsOf<CordWork>().First();

    private static CordTension Tension(string text) => Work(text).Tension!;

    [Fact]
    [Trait("Proof", "closed form")]
    public void ItCarriesTheWeightAndATackleHalfOfIt()
    {
        var (direct, tackle) = (Tension(Hung(Direct, more: ", friction: 0")), Tension(Hung(Tackle, more: ", friction: 0")));
        Assert.Equal(Cube, direct.Least.Newton, 1e-6);
        Assert.Equal(Cube, direct.Most.Newton, 1e-6);

        // Its pulley, 22 mm over the rims and 4 mm thick, and the pin weigh with it.
        var pulley = Proof.OfMotion(Of(Hung(Tackle))).Assembly.Parts.Where(p => p.Body == new Jackwork.Parts.Body(2)).Sum(p => p.Mass) - 8.47;
        Assert.InRange(pulley, 1, 3);
        Assert.Equal((8.47 + pulley) * 9.80665e-3 / 2, tackle.Least.Newton, 1e-6);
    }

    // Two square bends in eyes: the hauled end is pulled with m g e^(m pi) upwards and m g e^(-m pi) downwards.
    [Fact]
    [Trait("Proof", "closed form")]
    public void EyesHoldItBackAsCapstans()
    {
        var t = Tension(Hung(Direct, more: ", friction: 0.2"));
        Assert.Equal(Cube * Math.Exp(0.2 * Math.PI), t.Most.Newton, 1e-6);
        Assert.Equal(Cube * Math.Exp(-0.2 * Math.PI), t.Least.Newton, 1e-6);
        Assert.Equal((0, 0), (t.Least.Strand, t.Most.Strand));
    }

    // At 60 rpm: T = m (g + a), a the block's own acceleration, worked out from the crank and its rod by differences.
    [Fact]
    [Trait("Proof", "independent")]
    public void InertiaIsThatOfTheBlocksOwnMotion()
    {
        double Haul(double t) => Math.Sqrt(52 * 52 - Math.Pow(8 * Math.Sin(t), 2)) + 8 * Math.Cos(t) - 60;
        var w = 2 * Math.PI;
        var pulls = Enumerable.Range(0, 3600).Select(i => i * Math.PI / 1800).Select(t => 8.47e-6 * (9806.65 - w * w * (Haul(t + 1e-3) - 2 * Haul(t) + Haul(t - 1e-3)) / 1e-6)).ToList();
        var found = Tension(Hung(Direct, 60, ", friction: 0"));
        Assert.Equal(pulls.Min(), found.Least.Newton, 1e-6);
        Assert.Equal(pulls.Max(), found.Most.Newton, 1e-6);
    }

    // A windlass: r1 T1 = r2 T2 with pitch radii 6.5 and 13.5 and nothing lost; the load hangs on the second cord, which the first must be taut for.
    [Fact]
    [Trait("Proof", "closed form")]
    public void WhatHangsOnIsCarriedToo()
    {
        var text = Hung("{at: [0, 0, 0], on: haul}, {at: [0, 100, 0]}, {at: [60, 100, 0], drum: 12, on: drum, towards: y}", more: ", friction: 0")
            .Replace("  block:\n    slide: {along: [0.0, 1.0, 0.0]}\n    body: {bare: true}\n", "  drum:\n    pivot: {through: [60, 100, 0], along: z}\n", StringComparison.Ordinal)
            .Replace("parts:\n", "  block:\n    slide: {along: y}\n    body: {bare: true}\n    cord: {from: drum, run: [{at: [60, 100, 20], drum: 26, on: drum, towards: -x}, {at: [46.5, 0, 20], on: block}]}\nparts:\n", StringComparison.Ordinal);
        var works = Proof.OfMotion(Of(text)).MechanismsOf<CordWork>().ToList();
        var (first, second) = (works[0].Tension!, works[1].Tension!);
        Assert.Equal(Cube, second.Least.Newton, 1e-6);
        Assert.Equal(Cube * 13.5 / 6.5, Math.Abs(first.Least.Newton), 1e-6);
    }

    // A spring of 2 N as drawn and 0.05 N/mm, stretched by the block's own way, twice the crank.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ASpringPullsByItsLength()
    {
        var text = Hung(Direct, more: ", friction: 0, spring: {at: [40, 0, 0], to: [40, -30, 0], pull: 2, rate: 0.05}");
        var way = Solved(text).Of("block").ToArray().Max(q => q.Value);
        Assert.Equal(16, way, 1e-6);
        Assert.Equal(Cube + 2, Tension(text).Least.Newton, 1e-6);
        Assert.Equal(Cube + 2 + 0.05 * 16, Tension(text).Most.Newton, 1e-6);
    }

    // Drawn at its highest the block goes 16 mm down from there, and a spring of 0.2 N/mm is slack for the last 6 of them: it does not push.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ASlackSpringDoesNotPushAndIsAskedForWhatMakesItTautFirst()
    {
        string Text(double pull) => Hung(Direct, pin: -68, more: $", friction: 0, least: 0.5, spring: {{at: [40, 0, 0], to: [40, -30, 0], pull: {Num(pull)}, rate: 0.2}}");
        var t = Tension(Text(2));
        Assert.Equal(Cube, t.Least.Newton, 1e-6);
        Assert.Equal(Cube + 2, t.Most.Newton, 1e-6);
        Assert.Equal(0.2 * 16 - 2 + 0.5 - Cube, t.Newtons!.Value, 1e-6);
        Assert.Equal(0.5, Tension(Text(2 + t.Newtons.Value)).Least.Newton, 1e-6);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheGramsAskedForAreEnoughAndNoMore()
    {
        var asked = Tension(Hung(Direct, 40, ", friction: 0.3, least: 0.12")).Grams!.Value;
        string With(double grams) => Hung(Direct, 40, ", friction: 0.3, least: 0.12", $"  more: {{on: block, box: {{at: [60, 0, 60], size: [10, 10, {Num(grams / 0.847)}]}}, material: brass}}\n");
        Assert.Equal(0.12, Tension(With(asked)).Least.Newton, 1e-6);
        Assert.Null(Tension(With(asked + 0.1)).Grams);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheSpringAskedForIsEnoughAndNoMore()
    {
        string Text(double pull) => Hung(Direct, 90, $", friction: 0.3, least: 0.12, spring: {{at: [40, 0, 0], to: [60, -30, 0], pull: {Num(pull)}, rate: 0.001}}");
        var more = Tension(Text(0.01)).Newtons!.Value;
        Assert.Equal(0.12, Tension(Text(0.01 + more)).Least.Newton, 1e-6);
        Assert.Null(Tension(Text(0.02 + more)).Newtons);
    }

    // A slide that lies level has no weight along its way.
    [Fact]
    [Trait("Proof", "closed form")]
    public void WithNothingToPullItBackThatIsSaid()
    {
        var text = Hung("{at: [0, 0, 0], on: haul}, {at: [0, 100, 0]}, {at: [40, 100, 0], on: block}", along: "[1.0, 0.0, 0.0]");
        var finding = Assert.Single(Verdict.Of(Proof.Of(Of(text))).Findings, f => f.Check == "cord-tension");
        Assert.Equal(Level.Fault, finding.Level);
        Assert.Contains("'spring'", finding.Advice, StringComparison.Ordinal);
    }

    // x = F l/(E A): 0.083 N on 240 mm of a cord that 100 N would stretch by its own length.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheStretchIsTold()
    {
        var work = Work(Hung(Direct, more: ", friction: 0, stiffness: 100"));
        Assert.Equal(240, work.Drive.Length, 1e-9);
        Assert.Equal(Cube * 240 / 100, work.Tension!.Lag!.Value.High, 1e-6);
    }
}
