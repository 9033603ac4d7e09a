using System.Collections.Immutable;
using Jackwork.Cams;
using Jackwork.Cords;
using Jackwork.Design;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>Gathers the lines, points and lengths of a machine's skeleton.</summary>
internal sealed class SkeletonBuilder(Motion.Motion motion, IReadOnlyList<Cam> cams, IEnumerable<Mechanism> mechanisms, IReadOnlyList<GearWork> gears)
{
    /// <summary>How far an axis or the line of a slide is drawn beyond the last thing on it, mm.</summary>
    private const double Beyond = 6;

    /// <summary>How far the flattened outline of a cam or plate may stand off, mm: less than a line's breadth.</summary>
    private const double Sagitta = 0.1;

    /// <summary>Corners of a circle.</summary>
    private const int Round = 48;

    /// <summary>Half the length and half the width that a slot is shown with, mm.</summary>
    private const double SlotReach = 8, SlotHalf = 2;

    /// <summary>Length below which an arm is none, mm.</summary>
    private const double NoArm = 0.01;

    private readonly Machine machine = motion.Machine;
    private readonly ImmutableArray<Stroke>.Builder strokes = ImmutableArray.CreateBuilder<Stroke>();
    private readonly ImmutableArray<Handle>.Builder handles = ImmutableArray.CreateBuilder<Handle>();
    private readonly ImmutableArray<Length>.Builder lengths = ImmutableArray.CreateBuilder<Length>();

    // What stands along each member's axis, to draw the axis as long.
    private readonly List<Point3>[] onAxis = [.. motion.Machine.Members.Select(_ => new List<Point3>())];

    /// <summary>The skeleton.</summary>
    public Skeleton Build()
    {
        Case();
        for (var m = 0; m < machine.Members.Count; m++)
        {
            switch (machine.Drives[m])
            {
                case RatioDrive drive:
                    Wheels(drive);
                    break;
                case CamDrive drive:
                    Follower(drive);
                    break;
                case RodDrive drive:
                    Rod(drive);
                    break;
                case SlotDrive drive:
                    Slot(drive);
                    break;
                case CordDrive drive:
                    Cord(drive);
                    break;
            }
        }

        foreach (var work in mechanisms)
        {
            Made(work);
        }

        for (var m = 0; m < machine.Members.Count; m++)
        {
            Joint(m);
        }

        return new(strokes.ToImmutable(), handles.ToImmutable(), lengths.ToImmutable());
    }

    private void Case()
    {
        if (machine.Design.Case is not { } box)
        {
            return;
        }

        var (a, b) = (box.Inside[0], box.Inside[1]);
        foreach (var x in (ReadOnlySpan<double>)[a.X, b.X])
        {
            Loop(StrokeKind.Case, Member.Case, Member.Case, [new(x, a.Y, a.Z), new(x, b.Y, a.Z), new(x, b.Y, b.Z), new(x, a.Y, b.Z)]);
        }

        foreach (var (y, z) in (ReadOnlySpan<(double, double)>)[(a.Y, a.Z), (a.Y, b.Z), (b.Y, a.Z), (b.Y, b.Z)])
        {
            Line(StrokeKind.Case, Member.Case, Member.Case, new(Member.Case, new(a.X, y, z)), new(Member.Case, new(b.X, y, z)));
        }
    }

    private void Joint(int m)
    {
        var (member, name) = (machine.Members[m], machine.NameOf(m));
        var (joint, spec) = (member.Joint, machine.Design.Members[name]);
        if (joint.Turns)
        {
            var key = joint.Kind == JointKind.Pivot ? "pivot" : "guide";
            if (spec.Body is { From: { } from, To: { } to })
            {
                onAxis[m].AddRange([joint.Through + from * joint.Along, joint.Through + to * joint.Along]);
            }

            Centre(StrokeKind.Axis, m, joint.Through, onAxis[m].Append(joint.Through).Select(p => (p - joint.Through).Dot(joint.Along)));
            handles.Add(new($"members.{name}.{key}.through", m, new(member.Carrier, joint.Through), $"{key} of {name}", m));
            return;
        }

        var line = SlideLine(m);
        Centre(StrokeKind.Slide, m, line, motion.Of(m).ToArray().Select(q => q.Value).Append(0));
        if (spec.Slide!.Through is { } through)
        {
            handles.Add(new($"members.{name}.slide.through", m, new(member.Carrier, through), $"slide of {name}", m));
        }
    }

    // A centre line as long as what stands on it.
    private void Centre(StrokeKind kind, int m, Point3 through, IEnumerable<double> stations)
    {
        var (along, carrier, s) = (machine.Members[m].Joint.Along, machine.Members[m].Carrier, stations.ToList());
        Line(kind, m, m, new(carrier, through + (s.Min() - Beyond) * along), new(carrier, through + (s.Max() + Beyond) * along));
    }

    // A point of the line that a slide runs on: as given, else its pin.
    private Point3 SlideLine(int m) => machine.Design.Members[machine.NameOf(m)].Slide!.Through ?? machine.Drives[m] switch
    {
        RodDrive rod => rod.DrivenPin,
        SlotDrive slot => slot.Pin,
        CamDrive cam => cam.Spec.Follower.At,
        BarrelDrive barrel => barrel.Spec.At,
        CordDrive cord => cord.Pins.Where(p => p.Member == m).Select(p => p.At).FirstOrDefault(),
        _ => default,
    };

    private void Rod(RodDrive rod)
    {
        var (from, to) = (machine.NameOf(rod.Driver), machine.NameOf(rod.Driven));
        var (a, b) = (new BodyPoint(rod.Driver, rod.DriverPin), new BodyPoint(rod.Driven, rod.DrivenPin));
        Arm(rod.Driven, a, $"{from}, axis to pin");
        Arm(rod.Driven, b, $"{to}, axis to pin");
        Line(StrokeKind.Rod, rod.Driven, rod.Driven, a, b);
        lengths.Add(new(rod.Driven, a, b, rod.Length, $"rod from {from} to {to}"));
        handles.Add(new($"members.{to}.rod.pins.1", rod.Driven, a, $"pin on {from} of the rod to {to}"));
        handles.Add(new($"members.{to}.rod.pins.2", rod.Driven, b, $"pin on {to} of the rod from {from}"));
    }

    // Its straight pieces and pulleys are those of its mechanism.
    private void Cord(CordDrive cord)
    {
        var name = machine.NameOf(cord.Driven);
        for (var k = 0; k < cord.Run.Leads.Count; k++)
        {
            var lead = cord.Run.Leads[k];
            var at = new BodyPoint(lead.Member, lead.At);
            var what = $"{cord.Called(k)} on {machine.NameOf(lead.Member)}";
            if (lead.Member != Member.Case && lead.Kind != LeadKind.Drum)
            {
                Arm(cord.Driven, at, $"{machine.NameOf(lead.Member)}, axis to {cord.Called(k)}");
            }

            handles.Add(new(FormattableString.Invariant($"members.{name}.cord.run.{k + 1}.at"), cord.Driven, at, FormattableString.Invariant($"{what}, place {k + 1} of the cord to {name}")));
        }
    }

    private void Slot(SlotDrive slot)
    {
        var name = machine.NameOf(slot.Driven);
        var pin = new BodyPoint(slot.PinOn, slot.Pin);
        Arm(slot.Driven, pin, $"{machine.NameOf(slot.PinOn)}, axis to pin");
        Arm(slot.Driven, new(slot.SlotIn, slot.Pin), $"{machine.NameOf(slot.SlotIn)}, axis to pin in the slot as drawn");
        var (l, w) = (SlotReach * slot.Along, SlotHalf * slot.Normal);
        Loop(StrokeKind.Slot, slot.Driven, slot.SlotIn, [slot.Pin + (l + w), slot.Pin + (w - l), slot.Pin + -(l + w), slot.Pin + (l - w)]);
        handles.Add(new($"members.{name}.slot.pin", slot.Driven, pin, $"pin on {machine.NameOf(slot.PinOn)} in the slot of {machine.NameOf(slot.SlotIn)}"));
    }

    private void Wheels(RatioDrive drive)
    {
        var (a, b) = (machine.Members[drive.Driver].Joint, machine.Members[drive.Driven].Joint);
        var at = (drive as GearDrive)?.Spec.At ?? b.Through;
        var distance = (b.Through - a.Through).Across(a.Along).Length;
        var radii = drive switch
        {
            // The circles that roll on each other, at the distance at which the shafts stand.
            GearDrive { Spec: { Module: not null, Sense: null, Teeth: var z, Inside: var inside } } =>
                (distance * z[0] / (inside ? Math.Abs(z[1] - z[0]) : z[0] + z[1]), distance * z[1] / (inside ? Math.Abs(z[1] - z[0]) : z[0] + z[1])),
            BeltDrive { Spec.Diameters: { } d } => (d[0] / 2, d[1] / 2),
            _ => ((double, double)?)null,
        };
        if (radii is not { } r)
        {
            return;
        }

        var work = gears.FirstOrDefault(g => g.Drive == drive);
        foreach (var (member, joint, radius, sector, toothAt) in (ReadOnlySpan<(int, Joint, double, GearSector?, double)>)
        [
            (drive.Driver, a, r.Item1, work?.DriverSector?.Sector, work?.TeethAt.Driver ?? 0),
            (drive.Driven, b, r.Item2, work?.DrivenSector?.Sector, work?.TeethAt.Driven ?? 0),
        ])
        {
            onAxis[member].Add(joint.Foot(at));
            if (sector is not null)
            {
                var frame = Plate.On(joint) with { Origin = joint.Foot(at) };
                foreach (var loop in sector.Windows.Append(sector.Outline()))
                {
                    Loop(StrokeKind.Plate, drive.Driven, member, [.. loop.Turned(toothAt).Flatten(Sagitta).Select(p => frame.Apply(new Point3(p.X, p.Y, 0)))]);
                }

                continue;
            }

            Circle(StrokeKind.Wheel, drive.Driven, member, joint.Foot(at), joint.Along, radius);
        }
    }

    // Plates by their outlines, and what has none by its lines.
    private void Made(Mechanism work)
    {
        foreach (var plate in work.Plates.Where(p => !p.OnLink))
        {
            Point3 At(Point2 p, double z) => plate.Frame.Apply(new Point3(p.X, p.Y, z));
            var middle = (plate.Bottom + plate.Top) / 2;
            if (plate is { Bore: not null, Member: var m } && machine.Members[m].Joint.Turns)
            {
                onAxis[m].AddRange([At(Point2.Origin, plate.Bottom), At(Point2.Origin, plate.Top)]);
            }

            foreach (var loop in plate.Openings.Concat(plate.Holes.Select(h => Outline.Circle(h.Centre, h.Diameter / 2))).Append(plate.Rim))
            {
                Loop(StrokeKind.Plate, work.Member, plate.Member, [.. loop.Flatten(Sagitta).Select(p => At(p, middle))]);
            }
        }

        foreach (var turned in work.Turnings)
        {
            // Its profile on both sides of the axis, in one plane that holds that.
            var joint = machine.Members[turned.Member].Joint;
            var up = joint.Along.AnyPerpendicular();
            onAxis[turned.Member].AddRange([joint.Through + turned.Profile[0].Station * joint.Along, joint.Through + turned.Profile[^1].Station * joint.Along]);
            foreach (var across in (ReadOnlySpan<Vec3>)[up, up.Cross(joint.Along)])
            {
                Loop(StrokeKind.Plate, work.Member, turned.Member, [.. turned.Profile.Concat(turned.Profile.Reverse().Select(p => (p.Station, -p.Radius))).Select(p => joint.Through + (p.Item1 * joint.Along + p.Item2 * across))]);
            }

            var widest = turned.Profile.MaxBy(p => p.Radius);
            Circle(StrokeKind.Plate, work.Member, turned.Member, joint.Through + widest.Station * joint.Along, joint.Along, widest.Radius);
        }

        foreach (var line in work.Lines)
        {
            Line(StrokeKind.Rod, work.Member, line.From.Member, new(line.From.Member, line.From.At), new(line.To.Member, line.To.At));
        }
    }

    private void Follower(CamDrive drive)
    {
        var (name, spec) = (machine.NameOf(drive.Driven), drive.Spec.Follower);
        var (shaft, joint) = (machine.Members[drive.Driver].Joint, machine.Members[drive.Driven].Joint);
        var cam = cams.FirstOrDefault(c => c.Name == name && c.Shaft == drive.Driver);
        var foot = shaft.Foot(spec.At);
        onAxis[drive.Driver].Add(foot);
        var set = SetOver(shaft, joint, cam);
        var middle = new BodyPoint(drive.Driven, set.Apply(spec.At));
        Arm(drive.Driven, middle, $"{name}, axis to {(spec.Flat is null ? "roller" : "middle of the face")}");
        if (spec.Flat is { } width)
        {
            var face = (width / 2) * set.Apply(Face(spec, shaft, joint));
            Line(StrokeKind.Roller, drive.Driven, drive.Driven, middle with { Drawn = middle.Drawn + face }, middle with { Drawn = middle.Drawn + -face });
        }
        else
        {
            Circle(StrokeKind.Roller, drive.Driven, drive.Driven, middle.Drawn, shaft.Along, (spec.Roller ?? spec.Round ?? 0) / 2);
        }

        if (cam is not null)
        {
            // See CamPlane: x to the right and y up, seen from the tip of the shaft.
            var up = shaft.Along.AnyPerpendicular();
            var right = up.Cross(shaft.Along);
            Loop(StrokeKind.Cam, drive.Driven, drive.Driver, [.. cam.Outline.Flatten(Sagitta).Select(p => foot + (p.X * right + p.Y * up))]);
        }

        handles.Add(new($"members.{name}.cam.follower.at", drive.Driven, new(drive.Driven, spec.At), $"{(spec.Flat is null ? "roller" : "face")} of {name}"));
    }

    // How a follower is set over on its member to touch its cam's base circle; counted about the shaft's direction.
    private static Frame SetOver(Joint shaft, Joint joint, Cam? cam) =>
        cam is null ? Frame.Identity
        : joint.Kind == JointKind.Slide ? Frame.Translation(cam.Follower.SetOver * joint.Along)
        : Frame.Rotation(joint.Through, joint.Along, Math.Sign(shaft.Along.Dot(joint.Along)) * cam.Follower.SetOver);

    // The direction of a flat face in the cam's plane as drawn: square to where it looks, else square to the travel or along the lever.
    private static Vec3 Face(FollowerSpec spec, Joint shaft, Joint joint) =>
        spec.Facing is { } facing ? facing.Cross(shaft.Along).Unit()
        : joint.Kind == JointKind.Slide ? joint.Along.Cross(shaft.Along).Unit()
        : (spec.At - joint.Foot(spec.At)).Unit();

    private void Arm(int owner, BodyPoint pin, string what)
    {
        var joint = machine.Members[pin.Body].Joint;
        var foot = joint.Turns ? joint.Foot(pin.Drawn) : (joint with { Through = SlideLine(pin.Body) }).Foot(pin.Drawn);
        if (joint.Turns)
        {
            onAxis[pin.Body].Add(foot);
        }

        if (foot.DistanceTo(pin.Drawn) > NoArm)
        {
            Line(StrokeKind.Lever, owner, pin.Body, pin with { Drawn = foot }, pin);
            if (joint.Turns)
            {
                lengths.Add(new(owner, pin with { Drawn = foot }, pin, foot.DistanceTo(pin.Drawn), what));
            }
        }
    }

    private void Circle(StrokeKind kind, int owner, int member, Point3 centre, Vec3 axis, double radius)
    {
        var frame = Frame.Along(centre, axis);
        Loop(kind, owner, member, [.. Enumerable.Range(0, Round).Select(i => (2 * Math.PI * i / Round) is var t ? frame.Apply(new Point3(radius * Math.Cos(t), radius * Math.Sin(t), 0)) : default)]);
    }

    private void Loop(StrokeKind kind, int owner, int member, IEnumerable<Point3> points) => strokes.Add(new(kind, owner, member, [.. points.Select(p => new BodyPoint(member, p))], true));

    private void Line(StrokeKind kind, int owner, int member, BodyPoint a, BodyPoint b) => strokes.Add(new(kind, owner, member, [a, b]));
}
