using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The shafts that wheels tie to the crank, and the handle.</summary>
internal static class ShaftParts
{
    /// <summary>How far a shaft stands out beyond the outermost thing on it unless given, mm.</summary>
    private const double Overhang = 6;

    /// <summary>Sizes of the handle's arm and grip, mm (common practice, no source).</summary>
    private const double ArmWidth = 10, ArmThickness = 6, GripDiameter = 14, GripLength = 35;

    /// <summary>Whether a member is a shaft: one that wheels tie to the crank.</summary>
    public static bool IsShaft(Machine machine, int member) => machine.Turns[member] is not null;

    /// <summary>The shafts and the handle.</summary>
    public static IEnumerable<Part> Of(Proof proof)
    {
        var machine = proof.Machine;
        for (var m = 0; m < machine.Members.Count; m++)
        {
            var body = machine.Design.Members[machine.Members[m].Name].Body;
            if (!IsShaft(machine, m) || body is { Bare: true })
            {
                continue;
            }

            var joint = machine.Members[m].Joint;
            var (from, to) = Extent(proof, m);
            from = body?.From ?? from;
            to = body?.To ?? to;
            var diameter = body?.Axle ?? Bore(proof, m);
            var name = machine.Members[m].Name;
            yield return new($"{name} shaft", PartKind.Shaft, new(m), [ConvexPiece.Cylinder(Station.At(joint, from), Station.At(joint, to), diameter / 2)], Math.PI * diameter * diameter / 4 * (to - from), LeverParts.AxleMaterial(body)) { RoundAbout = (joint.Through, joint.Along) };
            if (m == machine.Crank && machine.Design.Crank.Radius is { } radius)
            {
                foreach (var part in Handle(joint, m, to, radius))
                {
                    yield return part;
                }
            }
        }
    }

    // The handle's arm stands at the far end of its shaft, straight up as drawn, the grip beyond it.
    private static IEnumerable<Part> Handle(Joint joint, int m, double end, double radius)
    {
        var middle = Station.At(joint, end - ArmThickness / 2);
        var grip = middle + radius * joint.Along.AnyPerpendicular();
        yield return new("handle arm", PartKind.Handle, new(m), [ConvexPiece.Bar(middle + -ArmThickness / 2 * joint.Along, ArmWidth / 2, grip + -ArmThickness / 2 * joint.Along, ArmWidth / 2, ArmThickness * joint.Along)], (radius * ArmWidth + Math.PI * ArmWidth * ArmWidth / 4) * ArmThickness, Material.Named("brass"));
        var start = grip + ArmThickness / 2 * joint.Along;
        yield return new("handle grip", PartKind.Handle, new(m), [ConvexPiece.Cylinder(start, start + GripLength * joint.Along, GripDiameter / 2)], Math.PI * GripDiameter * GripDiameter / 4 * GripLength, Material.Named("walnut")) { Process = Process.Turned };
    }

    // From the first to the last face of the plates on the shaft and a little beyond; no farther than a plate that ends it.
    private static (double From, double To) Extent(Proof proof, int m)
    {
        var machine = proof.Machine;
        var stations = proof.Cams.Where(c => c.Shaft == m).Select(c => c.Station)
            .Concat(machine.Drives.OfType<GearDrive>().Where(d => d.Spec.Module is not null && (d.Driver == m || d.Driven == m)).Select(d => Station.OfWheel(machine, d, m)))
            .ToList();
        var half = PlateParts.Thickness / 2 + PlateParts.HubLength;
        var plates = proof.Mechanisms.SelectMany(w => w.Plates).Where(p => p.Member == m && !p.OnLink).ToList();
        var reaches = stations.Select(s => (From: s - half, To: s + half))
            .Concat(plates.Select(p => MechanismParts.Reach(machine, p)))
            .Concat(proof.Mechanisms.SelectMany(w => w.Turnings).Where(t => t.Member == m).Select(t => t.Reach))
            .DefaultIfEmpty((From: -half, To: half)).ToList();
        var ends = plates.Where(p => p is { EndsShaft: true, Hub: not null }).Select(p => (p.Hub!.Value.Above, Station: MechanismParts.Reach(machine, p))).ToList();
        return (
            ends.Where(e => e.Above).Select(e => e.Station.From).Append(reaches.Min(r => r.From) - Overhang).Max(),
            ends.Where(e => !e.Above).Select(e => e.Station.To).Append(reaches.Max(r => r.To) + Overhang).Min());
    }

    // A shaft is as thick as the bores on it; without any, 6 mm as a cam's bore would be.
    private static double Bore(Proof proof, int m)
    {
        var bores = proof.Cams.Where(c => c.Shaft == m).Select(c => c.Bore)
            .Concat(proof.Gears.Where(g => g.Drive.Driver == m).Select(g => g.Bores.Driver))
            .Concat(proof.Gears.Where(g => g.Drive.Driven == m).Select(g => g.Bores.Driven))
            .Concat(proof.Mechanisms.SelectMany(w => w.Plates).Where(p => p.Member == m && p.Bore is not null).Select(p => p.Bore!.Value))
            .Concat(proof.Mechanisms.SelectMany(w => w.Turnings).Where(t => t.Member == m).Select(t => t.Bore));
        return bores.DefaultIfEmpty(6).Min();
    }
}
