using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Where the bodies of a machine stand over its performance.</summary>
public sealed class BodyFrames
{
    private readonly Motion.Motion motion;
    private readonly Machine machine;
    private readonly double step;

    /// <summary>The bodies of the machine that was solved.</summary>
    public BodyFrames(Motion.Motion motion)
    {
        this.motion = motion;
        machine = motion.Machine;
        step = machine.Performance.Step;
    }

    /// <summary>Steps in the performance.</summary>
    public int Steps => motion.Steps;

    /// <summary>The frame of a body at a place between steps (0 is the crank at 0, 1 one step on; the end runs on into the start).</summary>
    /// <remarks>Between steps the coordinates are read by their own speeds (cubic Hermite): the error is of the fourth order in the step, far below a micron.</remarks>
    public Frame At(Body body, double place)
    {
        if (!body.IsRod)
        {
            return OfMember(body.Member, place);
        }

        var rod = (RodDrive)machine.Drives[body.Member];
        var p = OfMember(rod.Driver, place).Apply(rod.DriverPin);
        var q = OfMember(rod.Driven, place).Apply(rod.DrivenPin);
        Vec3? axis = RodFrame.Hinge(machine, rod) is { } h ? OfMember(h.Member, place).Apply(h.Axis) : null;
        return RodFrame.Of(p, q, axis);
    }

    private Frame OfMember(int m, double place)
    {
        if (m == Member.Case)
        {
            return Frame.Identity;
        }

        var joint = machine.Members[m].Joint;
        var q = Coordinate(m, place);
        var own = joint.Kind == JointKind.Pivot ? Frame.Rotation(joint.Through, joint.Along, q) : Frame.Translation(q * joint.Along);
        var carrier = machine.Members[m].Carrier;
        return carrier == Member.Case ? own : OfMember(carrier, place).Compose(own);
    }

    private double Coordinate(int m, double place)
    {
        var q = motion.Of(m);
        var i = (int)Math.Floor(place);
        var u = place - i;
        var a = q[i % q.Length];
        if (u == 0)
        {
            return a.Value;
        }

        var b = q[(i + 1) % q.Length];

        // A shaft that goes round starts again at the seam; only its speed matters there.
        var next = i + 1 == q.Length && machine.Turns[m] is not null ? a.Value + step * a.First : b.Value;
        return (1 + 2 * u) * (1 - u) * (1 - u) * a.Value + u * (1 - u) * (1 - u) * step * a.First + u * u * (3 - 2 * u) * next - u * u * (1 - u) * step * b.First;
    }
}
