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
        if (body.IsRod && machine.Drives[body.Member] is CordDrive)
        {
            return new CordPath(bodies, body);
        }

        if (body.IsRod)
        {
            var link = machine.Drives[body.Member].Link!;
            var (member, axis) = RodFrame.Hinge(machine, link);
            return new RodPath(link, Of(new(link.From.Member), Member.Case), Of(new(link.To.Member), Member.Case), Of(new(member), Member.Case), axis, bodies.Steps);
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

        return own.Joint.Kind switch
        {
            JointKind.Pivot => new PivotPath(bodies, body.Member, own.Joint),
            JointKind.Slide => new SlidePath(bodies, body.Member, own.Joint.Along),
            _ => new GuidePath(bodies, body.Member, own.Joint.Through),
        };
    }
}
