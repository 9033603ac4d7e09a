using System.Collections.Immutable;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Hardware;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The plates on shafts, cams and spur wheels, with their hubs.</summary>
internal static class PlateParts
{
    /// <summary>How far a plate's solid may stand out beyond its curved edge, mm: a fifth of what a router holds.</summary>
    public const double Sagitta = 0.05;

    /// <summary>Thickness of a plate unless given, mm.</summary>
    public const double Thickness = 6;

    /// <summary>Length of a hub unless given, mm.</summary>
    public const double HubLength = 8;

    private static readonly Material Plywood = Material.Named("birch-plywood");
    private static readonly Material Brass = Material.Named("brass");

    /// <summary>The cams and wheels.</summary>
    public static IEnumerable<Part> Of(Proof proof)
    {
        foreach (var cam in proof.Cams)
        {
            var spec = cam.Spec;
            var joint = proof.Machine.Members[cam.Shaft].Joint;
            var half = (spec.Thickness ?? Thickness) / 2;
            var serves = Serving(cam);
            var face = half + (cam.Return is GrooveWall wall ? wall.Back : 0);
            yield return Plate($"{cam.Name} cam", PartKind.Cam, cam.Shaft, joint, cam.AsCut, cam.Station, half, cam.Bore) with { Serves = serves };
            foreach (var part in Hub($"{cam.Name} cam hub", cam.Shaft, joint, cam.Station, face, cam.HubRadius, cam.Bore, spec.HubLength, spec.HubSide, spec.Grub))
            {
                yield return part;
            }
        }

        foreach (var work in proof.Gears.Where(g => g.Pair is not null && !g.DriverGear!.Inside && !g.DrivenGear!.Inside))
        {
            foreach (var part in Wheels(proof.Machine, work))
            {
                yield return part;
            }
        }
    }

    /// <summary>The mechanism that the disc and the followers of a positive cam belong to; null for a cam with one side.</summary>
    public static Serving? Serving(Cam cam) => cam.Return is { Word: var word } ? new(cam.FollowerMember, word) : null;

    private static IEnumerable<Part> Wheels(Machine machine, GearWork work)
    {
        var spec = work.Drive.Spec;
        (SpurGear Gear, int Member, double Bore, double Hub, GearSector? Sector, double ToothAt)[] wheels =
        [
            (work.DriverGear!, work.Drive.Driver, work.Bores.Driver, work.Hubs.Driver, work.DriverSector?.Sector, work.TeethAt.Driver),
            (work.DrivenGear!, work.Drive.Driven, work.Bores.Driven, work.Hubs.Driven, work.DrivenSector?.Sector, work.TeethAt.Driven),
        ];
        foreach (var (gear, member, bore, hub, sector, toothAt) in wheels)
        {
            var joint = machine.Members[member].Joint;
            var name = FormattableString.Invariant($"{machine.NameOf(member)} wheel {gear.Teeth}");
            var station = Station.OfWheel(machine, work.Drive, member);
            var half = (spec.Thickness ?? Thickness) / 2;

            // For clearance a wheel is its tip circle: what clears that clears its teeth at every angle.
            var rim = Outline.Circle(Point2.Origin, gear.TipRadius);
            yield return sector is not null
                ? Sector(name, member, sector, toothAt, PlaneFrame(joint, station), half, bore)
                : Plate(name, PartKind.Wheel, member, joint, rim, station, half, bore) with { Volume = Math.PI * (gear.ReferenceRadius * gear.ReferenceRadius - bore * bore / 4) * 2 * half };
            foreach (var part in Hub($"{name} hub", member, joint, station, half, hub / 2, bore, spec.HubLength, spec.HubSide, spec.Grub))
            {
                yield return part;
            }
        }
    }

    // For clearance the teeth are filled to the tip circle, and the bore as it is by its shaft; what lies in the open part of the circle, or in a window, is clear.
    private static Part Sector(string name, int member, GearSector sector, double toothAt, in Frame frame, double half, double bore)
    {
        var (rim, shell) = (sector.Outline().Turned(toothAt), sector.Shell().Turned(toothAt));
        ImmutableArray<Outline> windows = [.. sector.Windows.Select(w => w.Turned(toothAt))];
        ImmutableArray<Outline> holes = [.. windows, Outline.Circle(Point2.Origin, bore / 2)];
        var pieces = ConvexCut.PlateOrNull(shell, windows, Sagitta, frame, -half, half) ?? Hull(shell, frame, -half, half);
        return new(name, PartKind.Wheel, new(member), pieces, (rim.SignedArea - holes.Sum(h => h.SignedArea)) * 2 * half, Plywood)
        {
            Plates = [new(rim, holes, frame, -half, half)],
        };
    }

    private static Part Plate(string name, PartKind kind, int member, Joint joint, Outline rim, double station, double half, double bore)
    {
        var frame = PlaneFrame(joint, station);
        var pieces = kind == PartKind.Wheel
            ? ImmutableArray.Create(ConvexPiece.Cylinder(Station.At(joint, station - half), Station.At(joint, station + half), rim.Segments[0].Radius))
            : ConvexCut.PlateOrNull(rim, [], Sagitta, frame, -half, half) ?? Hull(rim, frame, -half, half);
        var area = rim.SignedArea - Math.PI * bore * bore / 4;
        return new(name, kind, new(member), pieces, area * 2 * half, Plywood)
        {
            RoundAbout = kind == PartKind.Wheel ? (joint.Through, joint.Along) : null,
            Plates = [new(rim, [Outline.Circle(Point2.Origin, bore / 2)], frame, -half, half)],
        };
    }

    // A plate that crosses itself can't be cut, which its own checks say; what it sweeps is held by the hull of its outline.
    internal static ImmutableArray<ConvexPiece> Hull(Outline rim, in Frame frame, double bottom, double top)
    {
        var place = frame;
        return [ConvexPiece.Hull([.. PlateLoop.Of(rim, true, Sagitta).SelectMany(p => (Point3[])[place.Apply(new Point3(p.X, p.Y, bottom)), place.Apply(new Point3(p.X, p.Y, top))])])];
    }

    // The hub and its grub screw, which stands in its middle, up as drawn.
    internal static IEnumerable<Part> Hub(string name, int member, Joint joint, double station, double half, double radius, double bore, double? length, string? side, string? grub)
    {
        var l = length ?? HubLength;
        if (l == 0)
        {
            yield break;
        }

        var sign = side == "behind" ? -1 : 1;
        var (from, to) = (Station.At(joint, station + sign * half), Station.At(joint, station + sign * (half + l)));
        var volume = Math.PI * (radius * radius - bore * bore / 4) * l;
        var (size, wall) = (GrubSize.Named(grub), radius - bore / 2);
        yield return new(name, PartKind.Hub, new(member), [ConvexPiece.Cylinder(from, to, radius)], volume, Brass)
        {
            RoundAbout = (joint.Through, joint.Along),
            Plates = [PlateShape.Ring(from, to, radius, bore)],
            Filled = volume - size.Thread.StressArea * wall,
        };
        yield return ScrewParts.Grub(name, new(member), from + 0.5 * (to - from), joint.Along.AnyPerpendicular(), bore, wall, size);
    }

    // The cam's plane (see CamPlane): x right, y up as drawn, z along the shaft.
    private static Frame PlaneFrame(Joint joint, double station)
    {
        var up = joint.Along.AnyPerpendicular();
        return new(up.Cross(joint.Along), up, joint.Along, Station.At(joint, station));
    }
}
