using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Posts with a bearing: from a board of the case to the axis of a shaft or axle that ends within the case.</summary>
internal static class SupportParts
{
    /// <summary>Thickness unless given, mm, and width, in bores (common practice, no source).</summary>
    private const double Thickness = 10, Width = 3;

    /// <summary>The shaft or axle that a post carries; null where its member has none.</summary>
    public static Part? RodOf(Machine machine, SupportSpec spec, IReadOnlyList<Part> made)
    {
        var member = machine.IndexOf(spec.Of);
        return made.FirstOrDefault(p => p.Kind is PartKind.Shaft or PartKind.Axle && (p.Bears ?? p.Body.Member) == member);
    }

    /// <summary>The post, and its bush if it has one; no bore where there is no room for it.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="name">Name of the post.</param>
    /// <param name="spec">What the design says of it.</param>
    /// <param name="material">What it is made of.</param>
    /// <param name="made">The parts made so far, the shafts and axles among them.</param>
    public static IEnumerable<Part> Of(Machine machine, string name, SupportSpec spec, Material material, IReadOnlyList<Part> made)
    {
        var joint = machine.Members[machine.IndexOf(spec.Of)].Joint;
        var rod = RodOf(machine, spec, made);
        var diameter = rod is null ? 0 : 2 * rod.Pieces[0].Radii[0];
        var bush = spec.Bush is { } b && BushParts.HasWall(b, diameter) ? b : null;
        var bore = bush is null ? diameter + Fits.Running : BushParts.Outside(bush, diameter);
        var (half, t) = ((spec.Width ?? Width * bore) / 2, spec.Thickness ?? Thickness);

        // In the post's plane: y from the board to the axis, which is the origin.
        var inside = machine.Design.Case!.Inside;
        var board = BoardPlace.All(inside[0], inside[1], 0).First(s => s.Name == spec.From);
        var at = Station.At(joint, spec.At);
        var (y, z) = (-board.Frame.Z, joint.Along);
        var foot = (board.Frame.Origin - at).Dot(y);
        var rim = new Outline(
        [
            new(new(-half, foot), new(half, foot), 0),
            new(new(half, foot), new(half, 0), 0),
            Segment.Arc(Point2.Origin, half, 0, Math.PI),
            new(new(-half, 0), new(-half, foot), 0),
        ]);
        Outline[] holes = rod is null || bore / 2 >= Math.Min(half, -foot) ? [] : [Outline.Circle(Point2.Origin, bore / 2)];
        var frame = new Frame(y.Cross(z), y, z, at);
        var pieces = ConvexCut.Plate(rim, holes, PlateParts.Sagitta, frame, -t / 2, t / 2);
        yield return new(name, PartKind.Support, Body.Case, pieces, (rim.SignedArea - holes.Sum(h => h.SignedArea)) * t, material)
        {
            Plates = [new(rim, [.. holes], frame, -t / 2, t / 2)],
            RunsOn = (joint.Through, joint.Along),
        };
        if (bush is not null && holes.Length > 0)
        {
            yield return BushParts.Of($"{name} bush", bush, at + -t / 2 * z, z, diameter, t);
        }
    }
}
