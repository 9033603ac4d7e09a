using Jackwork.Cams;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;
using Jackwork.Timing.Laws;

namespace Jackwork.Parts;

/// <summary>Where the bodies of a machine stand over its performance.</summary>
public sealed class BodyFrames
{
    /// <summary>Share of a step within which something happens at its end: rounding.</summary>
    private const double OnStep = 1e-6;

    private readonly Motion.Motion motion;
    private readonly Machine machine;
    private readonly double step;
    private readonly bool[] byFits;
    private readonly bool[] startsAtOnce;
    private readonly Dictionary<int, CordPieces> cords;
    private readonly Dictionary<(int Member, int Step), double> landings;

    /// <summary>The bodies of the machine that was solved.</summary>
    public BodyFrames(Motion.Motion motion)
    {
        this.motion = motion;
        machine = motion.Machine;
        step = machine.Performance.Step;
        cords = machine.Drives.OfType<CordDrive>().ToDictionary(d => d.Driven, d => CordPieces.Of(motion, d));
        landings = Landings();
        startsAtOnce = [.. machine.Turns.Select((t, m) => t is not null && StartsAtOnce(m))];
        byFits = [.. machine.Turns.Select((t, m) => t is not null && !ShaftTurn.IsEven(machine.Drives, m) && !startsAtOnce[m])];
    }

    /// <summary>Steps in the performance.</summary>
    public int Steps => motion.Steps;

    /// <summary>What floats between members: rods and bars between two pins, and the straight lengths of cords.</summary>
    public IEnumerable<Body> Floating => machine.Drives.SelectMany(d => d.Link is not null ? [new(d.Driven, true)] : cords.TryGetValue(d.Driven, out var cord) ? Enumerable.Range(0, cord.All.Count).Select(i => new Body(d.Driven, true, i)) : []);

    /// <summary>The frame of a body at a place between steps (0 is the crank at 0, 1 one step on; the end runs on into the start), seen from the case or from a member that carries it.</summary>
    /// <remarks>Between steps the coordinates are read by their own speeds (cubic Hermite): the error is of the fourth order in the step, far below a micron. Shafts that go round by fits, whose speed may jump, are worked out afresh.</remarks>
    /// <param name="body">The body.</param>
    /// <param name="place">The place, steps.</param>
    /// <param name="seenFrom">The case, or a member that carries the body. A rod is seen from the case.</param>
    public Frame At(Body body, double place, int seenFrom = Member.Case)
    {
        if (!body.IsRod)
        {
            return OfMember(body.Member, place, seenFrom);
        }

        if (cords.TryGetValue(body.Member, out var cord))
        {
            return cord.At(body.Piece, machine, m => Coordinate(m, place));
        }

        var link = machine.Drives[body.Member].Link!;
        var hinge = RodFrame.Hinge(machine, link);
        return RodFrame.Of(
            OfMember(link.From.Member, place, Member.Case).Apply(link.From.At),
            OfMember(link.To.Member, place, Member.Case).Apply(link.To.At),
            OfMember(hinge.Member, place, Member.Case).Apply(hinge.Axis));
    }

    /// <summary>The innermost member, or the case, that carries both bodies (or is one of them).</summary>
    public int CommonCarrier(Body a, Body b)
    {
        if (a.IsRod || b.IsRod)
        {
            return Member.Case;
        }

        for (var c = a.Member; c != Member.Case; c = machine.Members[c].Carrier)
        {
            for (var d = b.Member; d != Member.Case; d = machine.Members[d].Carrier)
            {
                if (c == d)
                {
                    return c;
                }
            }
        }

        return Member.Case;
    }

    private Frame OfMember(int m, double place, int seenFrom)
    {
        if (m == seenFrom)
        {
            return Frame.Identity;
        }

        var own = OnCarrier(m, place);
        var carrier = machine.Members[m].Carrier;
        return carrier == seenFrom ? own : OfMember(carrier, place, seenFrom).Compose(own);
    }

    /// <summary>The frame of a member at a place, seen from its carrier.</summary>
    internal Frame OnCarrier(int m, double place)
    {
        var joint = machine.Members[m].Joint;
        var (turn, lift) = joint.Pose(Coordinate(m, place));
        if (!joint.Turns)
        {
            return Frame.Translation(lift * joint.Along);
        }

        var turned = Frame.Rotation(joint.Through, joint.Along, turn);
        return turned with { Origin = turned.Origin + lift * joint.Along };
    }

    /// <summary>The coordinate of a member at a place, rad or mm.</summary>
    internal double Coordinate(int m, double place)
    {
        var q = motion.Of(m);
        var i = (int)Math.Floor(place);
        var u = place - i;
        var a = q[i % q.Length];
        if (u == 0)
        {
            return a.Value;
        }

        if (byFits[m])
        {
            return ShaftTurn.At(machine, m, place * step);
        }

        var b = q[(i + 1) % q.Length];

        // What goes round starts again at the seam.
        var next = i + 1 == q.Length && machine.Members[m].Joint.Kind == JointKind.Pivot ? b.Value + Math.Tau * Math.Round((a.Value - b.Value) / Math.Tau) : b.Value;
        if (a.First == 0 && b.First != 0 && startsAtOnce[m])
        {
            // It rests until the motion that it has at the end of the step meets it.
            var s = (u - 1) * step;
            var come = next + s * (b.First + s / 2 * b.Second);
            return b.First > 0 ? Math.Max(a.Value, come) : Math.Min(a.Value, come);
        }

        var speed = a.First;
        if (landings.Count > 0 && landings.TryGetValue((m, i % q.Length), out var until))
        {
            if (until == 0)
            {
                speed = 0;
            }
            else
            {
                // It falls on as it did at the beginning of the step, to where it rests then.
                double On(double x) => a.Value + x * step * (a.First + x * step / 2 * a.Second);
                var fallen = Math.Min(u, until);
                return On(fallen) + Math.Pow(fallen / until, 3) * (next - On(until));
            }
        }

        return (1 + 2 * u) * (1 - u) * (1 - u) * a.Value + u * (1 - u) * (1 - u) * step * speed + u * u * (3 - 2 * u) * next - u * u * (1 - u) * step * b.First;
    }

    // Within which steps a member that a cam lets fall comes down, and after which share of the step, above 0 up to 1. Where it does so at a step, that may have
    // either speed by rounding: the one after has it rest from its beginning, share 0.
    private Dictionary<(int Member, int Step), double> Landings()
    {
        var found = new Dictionary<(int, int), double>();
        foreach (var acted in machine.Acted.Where(a => a.Chart.Pieces.Any(p => p.Law == MotionLaws.Drop)))
        {
            var rate = Math.Abs(machine.Turns[acted.Shaft]!.Value.Value);
            var falling = MovedBy(acted.Cam.Driven);
            foreach (var crank in acted.Chart.Pieces.Where(p => p.Law == MotionLaws.Drop).SelectMany(p => Fall.At(p.To / rate, Math.Tau / rate, machine.Performance.Length)))
            {
                var i = (int)Math.Ceiling(crank / step - OnStep) - 1;
                foreach (var m in falling)
                {
                    found[(m, (i + motion.Steps) % motion.Steps)] = crank / step - i;
                    if (crank / step - i > 1 - OnStep)
                    {
                        found.TryAdd((m, (i + 1) % motion.Steps), 0);
                    }
                }
            }
        }

        return found;
    }

    // A member and all that is driven from it in turn.
    private HashSet<int> MovedBy(int member)
    {
        HashSet<int> moved = [member];
        for (var before = 0; before < moved.Count;)
        {
            before = moved.Count;
            moved.UnionWith(machine.Drives.OfType<Relation>().Where(r => r.Drivers.Any(moved.Contains)).Select(r => r.Driven));
        }

        return moved;
    }

    // Whether a member, or a shaft on the way from it to the crank, starts at once.
    private bool StartsAtOnce(int m) => machine.Drives[m] is Relation r && (r.StartsAtOnce || StartsAtOnce(r.Driver));
}
