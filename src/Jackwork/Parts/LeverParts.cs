using Jackwork.Checks;
using Jackwork.Eccentrics;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Slots;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The members between shafts and figure: levers on axles, slides, and what touches the cams.</summary>
internal static class LeverParts
{
    /// <summary>Sizes unless given, mm (common practice, no source).</summary>
    private const double Thickness = 6, Width = 9, PinDiameter = 3;

    /// <summary>Diameter of a lever's axle unless given, mm (common practice, no source).</summary>
    public const double Axle = 4;

    /// <summary>Diameter of a slide's rod unless given, mm (common practice, no source).</summary>
    public const double SlideRod = 5;

    /// <summary>How far along the axis a pin may lie from a bar that carries it, mm; beyond, it gets a bar of its own.</summary>
    private const double Near = 12;

    /// <summary>How far an axle stands out beyond its lever unless given, mm.</summary>
    private const double Overhang = 3;

    /// <summary>Room between a lever without pins and the cam that it rides on, mm.</summary>
    private const double Clear = 1;

    private static readonly Material Steel = Material.Named("steel");

    /// <summary>The parts of every member that is neither shaft nor coupler and not bare.</summary>
    public static IEnumerable<Part> Of(Proof proof)
    {
        var machine = proof.Machine;
        for (var m = 0; m < machine.Members.Count; m++)
        {
            var body = machine.Design.Members[machine.Members[m].Name].Body;
            if (ShaftParts.IsShaft(machine, m) || machine.Drives[m] is CouplerDrive || body is { Bare: true })
            {
                continue;
            }

            var parts = machine.Members[m].Joint.Kind switch
            {
                JointKind.Pivot => Lever(proof, m, body),
                JointKind.Slide => Slide(proof, m, body),
                _ => Arms(machine, m, body),
            };
            foreach (var part in parts.Concat(Contact(proof, m)))
            {
                yield return part;
            }
        }
    }

    /// <summary>What the shaft, axle or slide rod of a member is made of.</summary>
    public static Material AxleMaterial(Design.BodySpec? body) => Material.Named(body?.AxleMaterial ?? "steel");

    /// <summary>The pins at which drives take hold of a member, as drawn.</summary>
    public static IEnumerable<Point3> Pins(Machine machine, int m) => machine.Drives.SelectMany(d => d.Pins).Where(p => p.Member == m).Select(p => p.At);

    private static IEnumerable<Part> Lever(Proof proof, int m, Design.BodySpec? body)
    {
        var machine = proof.Machine;
        var joint = machine.Members[m].Joint;
        var name = machine.Members[m].Name;
        var pins = Pins(machine, m).Select(p => SlotRoot(proof, m, p, body) ?? p).ToList();
        var roller = proof.Cams.FirstOrDefault(c => c.FollowerMember == m);
        var touch = roller is null ? Touch(machine, m) : FollowerPlace.Middle(machine, roller);
        if (pins.Count == 0 && touch is null)
        {
            if (Wheels(proof, m) is { } alone && body?.Axle != 0)
            {
                yield return Turning(machine, m, body, alone.From - Overhang, alone.To + Overhang, alone.Bore);
            }

            yield break;
        }

        // A flat bar stands in the plane of the first pin, or, having none, beside its cam, and carries what is near it on pins of their own; what lies farther
        // along the axis has a bar in its own plane, and a spindle joins the two.
        var half = (body?.Thickness ?? Thickness) / 2;
        var make = new BarMaker(name, m, joint, half, (body?.Width ?? Width) / 2, Material.Named(body?.Material ?? "birch-plywood"));
        var first = Station.Of(joint, pins.Count > 0 ? pins[0] : Beside(machine, m, touch!.Value, half));
        var spindle = (From: first, To: first);
        for (var i = 0; i < pins.Count; i++)
        {
            var station = Station.Of(joint, pins[i]);
            var plane = Math.Abs(station - first) <= Near ? first : station;
            spindle = (Math.Min(spindle.From, plane), Math.Max(spindle.To, plane));
            yield return make.Bar(pins.Count > 1 ? $" arm {i + 1}" : " arm", plane, pins[i]);
            if (Math.Abs(station - plane) > half)
            {
                yield return make.Pin($" pin {i + 1}", plane, pins[i], PinDiameter);
            }
        }

        if (touch is { } t)
        {
            yield return make.Bar(roller is null ? " arm" : " roller arm", first, t);
            if (roller is not null && FollowerPlace.Second(roller) is { } second)
            {
                yield return make.Bar(" second roller arm", first, second.At);
            }
        }

        var axle = body?.Axle ?? Axle;
        if (axle == 0)
        {
            yield break;
        }

        if (Wheels(proof, m) is { } wheels)
        {
            // A hub is held on what turns with it.
            yield return Turning(machine, m, body, Math.Min(spindle.From - half, wheels.From) - Overhang, Math.Max(spindle.To + half, wheels.To) + Overhang, wheels.Bore);
        }
        else if (spindle.To > spindle.From)
        {
            yield return Turning(machine, m, body, spindle.From - half, spindle.To + half, axle);
        }
        else
        {
            yield return make.Spindle(" axle", new(machine.Members[m].Carrier), body?.From ?? first - half - Overhang, body?.To ?? first + half + Overhang, axle) with { Bears = m, Material = AxleMaterial(body) };
        }
    }

    // Where the arm of a slotted bar ends; null where the pin is none in such a bar of the member.
    private static Point3? SlotRoot(Proof proof, int m, Point3 pin, Design.BodySpec? body) =>
        proof.MechanismsOf<SlotWork>().FirstOrDefault(s => s.Drive.SlotIn == m && s.Drive.Pin == pin && s is { Bar: not null, Impossible: null })?.Root(body?.Width ?? Width);

    // A rod that turns with the member.
    private static Part Turning(Machine machine, int m, Design.BodySpec? body, double from, double to, double diameter)
    {
        var make = new BarMaker(machine.Members[m].Name, m, machine.Members[m].Joint, 0, 0, Steel);
        return make.Spindle(" spindle", new(m), body?.From ?? from, body?.To ?? to, body?.Axle ?? diameter) with { Kind = PartKind.Shaft, Material = AxleMaterial(body) };
    }

    // From where to where spur wheels with hubs reach along a member's axis, and their least bore, mm; null where it has none.
    private static (double From, double To, double Bore)? Wheels(Proof proof, int m)
    {
        var reaches = new List<(double From, double To, double Bore)>();
        foreach (var g in proof.Gears.Where(g => g.Pair is not null && !g.Drive.Spec.Inside && g.Drive.Spec.HubLength != 0 && (g.Drive.Driver == m || g.Drive.Driven == m)))
        {
            var (station, half) = (Station.OfWheel(proof.Machine, g.Drive, m), (g.Drive.Spec.Thickness ?? PlateParts.Thickness) / 2);
            var (hub, behind) = (g.Drive.Spec.HubLength ?? PlateParts.HubLength, g.Drive.Spec.HubSide == "behind");
            reaches.Add((station - half - (behind ? hub : 0), station + half + (behind ? 0 : hub), g.Drive.Driver == m ? g.Bores.Driver : g.Bores.Driven));
        }

        return reaches.Count == 0 ? null : (reaches.Min(r => r.From), reaches.Max(r => r.To), reaches.Min(r => r.Bore));
    }

    // A bar to each pin of a guided member; its rod, pin and sleeve are those of its guide.
    private static IEnumerable<Part> Arms(Machine machine, int m, Design.BodySpec? body)
    {
        var member = machine.Members[m];
        var make = new BarMaker(member.Name, m, member.Joint, (body?.Thickness ?? Thickness) / 2, (body?.Width ?? Width) / 2, Material.Named(body?.Material ?? "birch-plywood"));
        var pins = Pins(machine, m).ToList();
        return pins.Select((pin, i) => make.Bar(pins.Count > 1 ? $" arm {i + 1}" : " arm", Station.Of(member.Joint, pin), pin));
    }

    // The roller that lies on an eccentric, or the back of the face that does.
    private static Point3? Touch(Machine machine, int m) => machine.Drives[m] is EccentricDrive { Spec: { Strap: null } spec } e ? spec.At + -EccentricWork.Depth * e.Facing : null;

    /// <summary>A point beside what rides on a cam or eccentric, clear of the plate on the side away from its hub, for the middle of a bar of half a thickness, mm.</summary>
    internal static Point3 Beside(Machine machine, int m, Point3 touch, double half)
    {
        var (thickness, side) = machine.Drives[m] switch
        {
            CamDrive cam => (cam.Spec.Thickness, cam.Spec.HubSide),
            EccentricDrive eccentric => (eccentric.Spec.Thickness, eccentric.Spec.HubSide),
            var drive => throw new ArgumentException($"nothing rides on a {drive.Kind}", nameof(m)),
        };
        var off = (thickness ?? PlateParts.Thickness) / 2 + half + Clear;
        return touch + (side == "behind" ? off : -off) * machine.Members[machine.Drives[m].Driver].Joint.Along;
    }

    private static IEnumerable<Part> Slide(Proof proof, int m, Design.BodySpec? body)
    {
        var machine = proof.Machine;
        var joint = machine.Members[m].Joint;
        var pin = Pins(machine, m).Cast<Point3?>().FirstOrDefault();
        var cam = proof.Cams.FirstOrDefault(c => c.FollowerMember == m);
        var touch = cam is null ? Touch(machine, m) : FollowerPlace.Middle(machine, cam);
        var through = machine.Design.Members[machine.Members[m].Name].Slide!.Through;
        var diameter = body?.Axle ?? SlideRod;
        if ((through ?? pin ?? (InGroove(cam) ? Beside(machine, m, touch!.Value, diameter / 2) : touch)) is not { } p)
        {
            yield break;
        }

        // Round its pin; on a roller alone it stands as a stem, away from the cam; where that runs in a groove, before the disc.
        if (diameter == 0)
        {
            yield break;
        }

        var stem = through is null && pin is null ? Math.Sign((p - machine.Members[machine.Drives[m].Driver].Joint.Foot(p)).Dot(joint.Along)) : 0;
        var travel = GuideParts.Travel(proof.Motion, m);
        var reach = GuideParts.Reach(travel, diameter);
        var (from, to) = stem switch { 0 => (-2 * diameter, reach), > 0 => (0, reach), _ => (-reach, 0) };
        from = body?.From ?? (body?.To is { } t ? Math.Min(from, t - diameter) : from);
        to = body?.To ?? Math.Max(to, from + diameter);
        var rod = new Part($"{machine.Members[m].Name} slide rod", PartKind.Slide, new(m), [ConvexPiece.Cylinder(p + from * joint.Along, p + to * joint.Along, diameter / 2)], Math.PI * diameter * diameter / 4 * (to - from), AxleMaterial(body)) { RoundAbout = (p, joint.Along) };
        yield return rod;
        if (GuideParts.Place(body?.Guide, (from, to), travel, diameter, through is null) is { } place)
        {
            yield return GuideParts.Of(machine, rod, place, p, diameter);
        }
    }

    // The rollers or round ends in the planes of their cams, and the pins that carry them.
    private static IEnumerable<Part> Contact(Proof proof, int m)
    {
        var machine = proof.Machine;
        if (proof.Cams.FirstOrDefault(c => c.FollowerMember == m) is not { } cam || FollowerPlace.Middle(machine, cam) is not { } middle)
        {
            yield break;
        }

        var (drive, serves) = ((CamDrive)machine.Drives[m], PlateParts.Serving(cam));
        var along = machine.Members[cam.Shaft].Joint.Along;
        var half = (drive.Spec.Thickness ?? PlateParts.Thickness) / 2;
        var body = machine.Design.Members[machine.Members[m].Name].Body;
        var carrying = Pins(machine, m).Cast<Point3?>().FirstOrDefault()
            ?? (machine.Members[m].Joint.Kind == JointKind.Pivot ? Beside(machine, m, middle, (body?.Thickness ?? Thickness) / 2)
                : InGroove(cam) ? machine.Design.Members[machine.Members[m].Name].Slide!.Through ?? Beside(machine, m, middle, (body?.Axle ?? SlideRod) / 2)
                : null);
        var first = (At: middle, Radius: (drive.Spec.Follower.Roller ?? drive.Spec.Follower.Round!.Value) / 2);
        foreach (var (name, (at, radius)) in FollowerPlace.Second(cam) is { } second ? [("roller", first), ("second roller", second)] : ((string, (Point3, double))[])[("roller", first)])
        {
            yield return new($"{cam.Name} {name}", PartKind.Roller, new(m), [ConvexPiece.Cylinder(at + -half * along, at + half * along, radius)], Math.PI * radius * radius * 2 * half, Material.Named("brass")) { Serves = serves };
            if (carrying is { } pin && (pin - at).Dot(along) is var off && Math.Abs(off) > half)
            {
                yield return new($"{cam.Name} {name} pin", PartKind.Pin, new(m), [ConvexPiece.Cylinder(at, at + off * along, Math.Min(PinDiameter, radius) / 2)], Math.PI * PinDiameter * PinDiameter / 4 * Math.Abs(off), Steel) { Serves = serves };
            }
        }
    }

    private static bool InGroove(Cams.Cam? cam) => cam?.Return is Cams.GrooveWall;
}
