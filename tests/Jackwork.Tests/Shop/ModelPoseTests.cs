using System.Numerics;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Tests.Design;
using SharpGLTF.Schema2;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The animation, played by SharpGLTF, against where the solved motion puts every part.</summary>
[Trait("Proof", "independent")]
public sealed class ModelPoseTests
{
    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void Every_corner_of_every_part_stands_where_its_body_carries_it(string example)
    {
        // Between keys a place is read to 0.05 mm and a rotation to 0.05 degrees; nothing stands more than two joints deep.
        const double degrees = 2 * 0.05 * Math.PI / 180;
        var (proof, model) = ModelFiles.Read(example);
        var animation = model.LogicalAnimations.Single();
        var frames = new BodyFrames(proof.Motion);
        var seconds = proof.Machine.Performance.CrankTurns * 60 / proof.Machine.Design.Crank.Rpm;
        Assert.Equal(seconds, animation.Duration, 1e-4);
        for (var k = 0; k <= 97; k++)
        {
            // A time in steps, not at keys: 97 is prime, and no divisor of the steps.
            var place = Math.Min(frames.Steps * k / 97.0, frames.Steps - 1e-9);
            foreach (var (part, node) in proof.Assembly.Parts.Zip(PartNodes(model)))
            {
                Assert.Equal(part.Name, node.Name);
                var world = node.GetWorldMatrix(animation, (float)(seconds * place / frames.Steps));
                var origin = part.Body.IsRod || part.Body == Body.Case ? default : proof.Machine.Members[part.Body.Member].Joint.Through;
                var frame = frames.At(part.Body, place);
                foreach (var v in Corners(node.Mesh).Where((_, i) => i % 37 == 0))
                {
                    var drawn = origin + ModelFiles.MmPerMetre * new Vec3(v.X, v.Y, v.Z);
                    var seen = Vector3.Transform(v, world);
                    var shown = default(Point3) + ModelFiles.MmPerMetre * new Vec3(seen.X, seen.Y, seen.Z);
                    var reach = (drawn - origin).Length;

                    // The roll of a round rod is free, and a rod's frame may start its roll anew between two steps: its axis counts.
                    var (a, b) = part.Body.IsRod ? (frame.Apply(new Point3(drawn.X, 0, 0)), Axis(world, v)) : (frame.Apply(drawn), shown);
                    Assert.True(a.DistanceTo(b) < 0.1 + degrees * reach, FormattableString.Invariant($"{part.Name} at step {place}: {a.DistanceTo(b)} mm off, {reach} mm from its origin"));
                }
            }
        }
    }

    [Fact]
    public void What_stands_still_has_no_channel_and_a_shaft_only_turns()
    {
        var (_, model) = ModelFiles.Read("keeper");
        var paths = model.LogicalAnimations.Single().Channels.Select(c => $"{c.TargetNode.Name} {c.TargetNodePath}").ToList();
        Assert.DoesNotContain(paths, p => p.StartsWith("case ", StringComparison.Ordinal));
        Assert.Contains("main rotation", paths);
        Assert.DoesNotContain("main translation", paths);
        Assert.Contains("gull translation", paths);
        Assert.DoesNotContain("gull rotation", paths);
        Assert.Contains("gull rod rotation", paths);
        Assert.Contains("gull rod translation", paths);
        Assert.Equal(paths.Count, paths.Distinct().Count());
    }

    [Fact]
    public void Members_hang_on_what_carries_them()
    {
        var (_, model) = ModelFiles.Read("keeper");
        Node Named(string name) => model.LogicalNodes.Single(n => n.Name == name && n.Mesh is null);
        Assert.Equal("head", Named("eye-left").VisualParent.Name);
        Assert.Equal("case", Named("head").VisualParent.Name);
        Assert.Equal("case", Named("gull rod").VisualParent.Name);
        Assert.Equal("gull", model.LogicalNodes.Single(n => n.Name == "gull-beak").VisualParent.Name);
    }

    [Fact]
    public void Keys_are_few_where_a_shaft_turns_evenly()
    {
        // Nine even turns, no more than a quarter turn from key to key: 36 stretches at the least, and four times as many where each is halved twice more than it need be.
        var (_, model) = ModelFiles.Read("keeper");
        var channel = model.LogicalAnimations.Single().Channels.Single(c => c.TargetNode.Name == "handle");
        Assert.InRange(channel.GetRotationSampler().GetLinearKeys().Count(), 37, 4 * 36 + 1);
    }

    private static IEnumerable<Node> PartNodes(ModelRoot model) => model.LogicalNodes.Where(n => n.Mesh is not null);

    private static IEnumerable<Vector3> Corners(SharpGLTF.Schema2.Mesh mesh) => mesh.Primitives.Single().GetVertexAccessor("POSITION").AsVector3Array();

    private static Point3 Axis(Matrix4x4 world, Vector3 v)
    {
        var at = Vector3.Transform(new(v.X, 0, 0), world);
        return default(Point3) + ModelFiles.MmPerMetre * new Vec3(at.X, at.Y, at.Z);
    }
}
