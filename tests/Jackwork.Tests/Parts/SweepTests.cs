using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Checks;
using Jackwork.Solids;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Parts;

/// <summary>The clearance of a whole performance against plain search, and where bodies stand against the solver.</summary>
[Trait("Proof", "independent")]
public sealed class SweepTests
{
    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void Rods_end_on_their_pins_and_members_stand_where_the_solver_has_them(string example)
    {
        var machine = MachineBuilder.Build(ExampleFiles.Text(example)).Machine!;
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
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void Between_steps_bodies_stand_where_the_solver_has_them_too(string example)
    {
        var machine = MachineBuilder.Build(ExampleFiles.Text(example)).Machine!;
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
        var machine = MachineBuilder.Build(ExampleFiles.Text("nodding-bird").Replace("size: [10, 14]", "size: [6, 8]", StringComparison.Ordinal)).Machine!;
        var proof = Proof.Of(machine);
        var frames = new BodyFrames(proof.Motion);
        var parts = proof.Assembly.Parts;
        var sets = parts.Select(p => new PieceSet(p.Pieces.AsSpan())).ToArray();
        var pairs = 0;
        for (var a = 0; a < parts.Count; a++)
        {
            for (var b = a + 1; b < parts.Count; b++)
            {
                if (proof.Assembly.Meant.Least(parts[a], parts[b], 0.5) is not > 0)
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

    // The golden mean steps through the performance without ever falling on the same part of a step twice. What is round about its
    // own axis stands still here as there: it is the flats of its solid, not the part, that would turn.
    [Fact]
    public void No_moment_between_steps_is_nearer_than_told()
    {
        var proof = Proof.Of(MachineBuilder.Build(ExampleFiles.Text("keeper")).Machine!);
        var frames = new BodyFrames(proof.Motion);
        var seen = proof.Assembly.Parts.Zip(proof.Sweep.Seen).ToDictionary(p => p.First.Name, p => p.Second);
        var worst = 0.0;
        foreach (var c in proof.Clearances)
        {
            var (a, b) = (seen[c.A.Name], seen[c.B.Name]);
            for (var i = 0; i < 5000; i++)
            {
                var at = i * 0.6180339887498949 % 1 * proof.Motion.Steps;
                var d = PartDistance.Between(c.A.Set, frames.At(a, at), c.B.Set, frames.At(b, at), c.Min);
                worst = Math.Max(worst, c.Min - (d?.Apart.Signed ?? c.Min));
            }
        }

        TestContext.Current.SendDiagnosticMessage($"nearer by {worst:0.0e0} mm");
        Assert.True(worst <= PairSearch.Tolerance, $"{worst} mm nearer than told");
    }

    // What is let into another deeper than said: a peg of 10 mm in a plate, its middle 4 mm off the face it stands beside.
    [Theory]
    [InlineData("-0.9", true)]
    [InlineData("-1.1", false)]
    public void A_pair_meant_to_touch_may_press_no_deeper_than_said(string least, bool found)
    {
        var proof = Proof.Of(MachineBuilder.Build($$$"""
            jackwork: 1
            title: peg and block
            crank: {turns: shaft, rpm: 30}
            members:
              shaft: {pivot: {through: [0, 0, 0], along: z}, body: {bare: true}}
            parts:
              peg: {on: shaft, rod: {from: [20, 0, -20], to: [20, 0, 20], diameter: 10}}
              block: {box: {at: [0, 34, 0], size: [10, 20, 100]}}
            apart:
              - {parts: [block, peg], least: {{{least}}} }
            """).Machine!);

        // The peg's circle of 5 about the circle of 20: it reaches to 25, the block begins at 24.
        Assert.Equal(found, Verdict.Of(proof).Findings.Any(f => f.Check == "clearance"));
        if (found)
        {
            Assert.Equal(-1, Assert.Single(proof.Clearances).Min, 0.02);
        }
    }

    // A cube of 20 mm as a mesh round a ball of 4: they touch nowhere, and yet one stands within the other, 8 mm deep.
    [Fact]
    public void A_part_within_a_mesh_is_found()
    {
        const string obj = """
            v -10 -10 -10
            v 10 -10 -10
            v 10 10 -10
            v -10 10 -10
            v -10 -10 10
            v 10 -10 10
            v 10 10 10
            v -10 10 10
            f 4 3 2 1
            f 5 6 7 8
            f 1 2 6 5
            f 3 4 8 7
            f 2 3 7 6
            f 1 5 8 4
            """;
        var machine = MachineBuilder.Build(
            """
            jackwork: 1
            title: ball in a cube
            crank: {turns: shaft, rpm: 30}
            members:
              shaft: {pivot: {through: [0, 0, 0], along: z}, body: {bare: true}}
            parts:
              ball: {on: shaft, ball: {at: [0, 0, 0], diameter: 4}}
              cube: {mesh: {file: cube.obj, unit: mm}}
            """,
            name => name == "cube.obj" ? System.Text.Encoding.ASCII.GetBytes(obj) : null);
        Assert.Empty(machine.Problems);
        var c = Assert.Single(Proof.Of(machine.Machine!).Clearances);
        Assert.Equal(-8, c.Min, 1e-9);
        Assert.Equal(0, c.FirstBelow);
    }

    [Fact]
    public void A_name_that_is_no_part_is_told_with_the_nearest_one()
    {
        var text = ExampleFiles.Text("nodding-bird") + "\napart:\n  - {parts: [lever cam, lever rollr], least: 0.2}\n";
        var f = Assert.Single(Verdict.Of(Proof.Of(MachineBuilder.Build(text).Machine!)).Findings, f => f.Check == "clearance");
        Assert.Equal("lever rollr", f.Subject);
        Assert.Contains("lever roller", f.Advice, StringComparison.Ordinal);
    }
}
