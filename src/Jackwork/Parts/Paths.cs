using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>The paths of a performance's bodies, each worked out once.</summary>
internal sealed class Paths(BodyFrames bodies, Machine machine)
{
    private readonly Dictionary<(Body, int), BodyPath> known = [];

    /// <summary>The path of a body as seen from the case or a member that carries it; that of a rod as seen from the case.</summary>
    public BodyPath Of(Body body, int seenFrom)
    {
        if (!known.TryGetValue((body, seenFrom), out var path))
        {
            path = Make(body, seenFrom);
            known.Add((body, seenFrom), path);
        }

        return path;
    }

    private BodyPath Make(Body body, int seenFrom)
    {
        if (body.IsRod)
        {
            var rod = RodFrame.Rod(machine, body.Member);
            var (member, axis) = RodFrame.Hinge(machine, rod);
            return new RodPath(rod, Of(new(rod.Driver), Member.Case), Of(new(rod.Driven), Member.Case), Of(new(member), Member.Case), axis, bodies.Steps);
        }

        if (body.Member == seenFrom)
        {
            return new StillPath();
        }

        var own = machine.Members[body.Member];
        if (own.Carrier != seenFrom)
        {
            return new CarriedPath(Of(new(own.Carrier), seenFrom), Of(body, own.Carrier), own.Joint.Through, bodies.Steps);
        }

        return own.Joint.Kind == JointKind.Pivot
            ? new PivotPath(bodies, body.Member, own.Joint)
            : new SlidePath(bodies, body.Member, own.Joint.Along);
    }
}
