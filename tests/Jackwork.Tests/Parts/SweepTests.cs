using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Checks;
using Jackwork.Solids;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.Parts;

/// <summary>The clearance of a whole performance against plain search, and where bodies stand against the solver.</summary>
[Trait("Proof", "independent")]
public sealed class SweepTests
{
    [Theory]
    [InlineData("nodding-bird")]
    [InlineData("keeper")]
    public void Rods_end_on_their_pins_and_members_stand_where_the_solver_has_them(string example)
    {
        var machine = MachineBuilder.Build(ExampleFolder.Text(example)).Machine!;
        var motion = Jackwork.Motion.Motion.Solve(machine);
        var frames = new BodyFrames(motion);
        foreach (var rod in machine.Drives.OfType<RodDrive>())
        {
            for (var i = 0; i < motion.Steps; i += 37)
            {
                var at = frames.At(new(rod.Driven, true), i);
                Assert.Equal(0, at.Apply(default(Point3)).DistanceTo(frames.At(new(rod.Driver), i).Apply(rod.DriverPin)), 1e-9);
                Assert.Equal(0, at.Apply(new Point3(rod.Length, 0, 0)).DistanceTo(frames.At(new(rod.Driven), i).Apply(rod.DrivenPin)), 1e-9);
            }
        }
    }

    [Theory]
    [InlineData("nodding-bird")]
    [InlineData("keeper")]
    public void Between_steps_bodies_stand_where_the_solver_has_them_too(string example)
    {
        var machine = MachineBuilder.Build(ExampleFolder.Text(example)).Machine!;
        var motion = Jackwork.Motion.Motion.Solve(machine);
        var between = Jackwork.Motion.Motion.Solve(machine, 0.5);
        var frames = new BodyFrames(motion);
        var exact = new BodyFrames(between);
        var worst = 0.0;
        for (var m = 0; m < machine.Members.Count; m++)
        {
            var p = machine.Members[m].Joint.Through + new Vec3(40, 40, 40);
            for (var i = 0; i < motion.Steps; i++)
            {
                worst = Math.Max(worst, frames.At(new(m), i + 0.5).Apply(p).DistanceTo(exact.At(new(m), i).Apply(p)));
            }
        }

        TestContext.Current.SendDiagnosticMessage($"{example}: worst {worst:0.0e0} mm");
        Assert.True(worst < 1e-3, $"{worst} mm");
    }

    // Every pair of the bird at every step, none passed over.
    [Fact]
    public void The_sweep_finds_what_a_search_of_every_step_finds()
    {
        var machine = MachineBuilder.Build(ExampleFolder.Text("nodding-bird").Replace("size: [10, 14]", "size: [6, 8]", StringComparison.Ordinal)).Machine!;
        var proof = Proof.Of(machine);
        var frames = new BodyFrames(proof.Motion);
        var parts = proof.Assembly.Parts;
        var sets = parts.Select(p => new PieceSet(p.Pieces.AsSpan())).ToArray();
        var pairs = 0;
        for (var a = 0; a < parts.Count; a++)
        {
            for (var b = a + 1; b < parts.Count; b++)
            {
                if (proof.Assembly.Meant.Has(parts[a], parts[b]))
                {
                    continue;
                }

                var least = double.PositiveInfinity;
                for (var i = 0; i < proof.Motion.Steps; i++)
                {
                    var d = PartDistance.Between(sets[a], frames.At(parts[a].Body, i), sets[b], frames.At(parts[b].Body, i), 10);
                    least = Math.Min(least, d?.Apart.Signed ?? 10);
                }

                var swept = proof.Clearances.FirstOrDefault(c => c.A == parts[a] && c.B == parts[b]);
                if (least < ClearanceSweep.Report)
                {
                    pairs++;
                    Assert.NotNull(swept);

                    // Between the steps it may come a little nearer than at them.
                    Assert.InRange(swept.Min, least - 0.01, least + PairSearch.Tolerance);
                }
                else
                {
                    Assert.True(swept is null || swept.Min > ClearanceSweep.Report - 0.01);
                }
            }
        }

        Assert.True(pairs >= 1);
    }

    [Fact]
    public void A_ball_that_swings_past_a_post_is_told_to_the_closed_form()
    {
        // A ball of radius 3 at 40 mm from the axis turns with the shaft past a post of radius 2 at 46 mm: least distance 46 - 40 - 5 = 1,
        // at the post's own angle of 90 deg; it falls below 1.5 where |40 e^(ia) - 46 i| = 6.5.
        var machine = MachineBuilder.Build("""
            jackwork: 1
            title: ball and post
            crank: {turns: shaft, rpm: 30}
            limits: {clearance: 1.5}
            members:
              shaft: {pivot: {through: [0, 0, 0], along: z}, body: {bare: true}}
            parts:
              ball: {on: shaft, ball: {at: [40, 0, 0], diameter: 6}}
              post: {rod: {from: [0, 46, -20], to: [0, 46, 20], diameter: 4}}
            """).Machine!;
        var c = Assert.Single(Proof.Of(machine).Clearances);
        Assert.Equal(1, c.Min, 1e-6);
        Assert.Equal(Math.PI / 2, c.AtCrank, 1e-4);
        var cos = (40.0 * 40 + 46 * 46 - 6.5 * 6.5) / (2 * 40 * 46);
        Assert.Equal(Math.PI / 2 - Math.Acos(cos), c.FirstBelow!.Value, 1e-6);
    }
}
