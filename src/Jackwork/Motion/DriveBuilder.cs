using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>Makes the drive of each member.</summary>
internal sealed class DriveBuilder(DesignSpec spec, IReadOnlyList<Member> members, IReadOnlySet<int> unsound, ProblemList problems)
{
    /// <summary>Sine of the angle up to which two directions count as parallel; a tenth of what a bored hole can be trusted to.</summary>
    private const double Parallel = 1e-6;

    /// <summary>Distance below which a pin counts as standing on an axis, mm.</summary>
    private const double OnAxis = 1e-6;

    /// <summary>How far a diameter may lie from a whole number of tenths, tenths of mm: the rounding of a decimal figure.</summary>
    private const double WholeTenth = 1e-6;

    private readonly List<string> names = [.. members.Select(m => m.Name)];

    /// <summary>The drives by member; null, with problems noted, if any can't be made.</summary>
    public IReadOnlyList<Drive>? Build()
    {
        if (!names.Contains(spec.Crank.Turns))
        {
            problems.Add("crank.turns", $"there is no member '{spec.Crank.Turns}' for the crank to turn", Names.Suggest(spec.Crank.Turns, names));
        }

        var drives = new List<Drive?>();
        for (var m = 0; m < members.Count; m++)
        {
            drives.Add(DriveOf(m));
        }

        return drives.TrueForAll(d => d is not null) && problems.IsEmpty ? drives.ConvertAll(d => d!) : null;
    }

    private Drive? DriveOf(int m)
    {
        var s = spec.Members[names[m]];
        var path = $"members.{names[m]}";
        var isCrank = spec.Crank.Turns == names[m];
        string?[] given = [isCrank ? "the crank" : null, s.Gear is null ? null : "gear", s.Belt is null ? null : "belt", s.Rod is null ? null : "rod", s.Slot is null ? null : "slot", s.Geneva is null ? null : "geneva", s.Cam is null ? null : "cam"];
        var drives = given.Where(g => g is not null).ToList();
        if (drives.Count != 1)
        {
            problems.Add(path, drives.Count == 0 ? $"'{names[m]}' has no drive: nothing makes it move" : $"'{names[m]}' has {drives.Count} drives: {string.Join(", ", drives)}", drives.Count == 0 ? "Give it one of gear, belt, rod, slot, geneva and cam, or let the crank turn it" : "Keep exactly one of them");
            return null;
        }

        if (isCrank)
        {
            return Crank(m, path);
        }

        return s switch
        {
            { Gear: { } g } => Driver(g.With, m, $"{path}.gear.with") is { } d ? Gear(g, d, m, $"{path}.gear") : null,
            { Belt: { } b } => Driver(b.With, m, $"{path}.belt.with") is { } d ? Belt(b, d, m, $"{path}.belt") : null,
            { Rod: { } r } => Driver(r.From, m, $"{path}.rod.from") is { } d ? Rod(r, d, m, $"{path}.rod") : null,
            { Slot: { } t } => Driver(t.From, m, $"{path}.slot.from") is { } d ? Slot(t, d, m, $"{path}.slot") : null,
            { Geneva: { } w } => Driver(w.From, m, $"{path}.geneva.from") is { } d ? Geneva(w, d, m, $"{path}.geneva") : null,
            _ => Driver(s.Cam!.On, m, $"{path}.cam.on") is { } d ? Cam(s.Cam, d, m, $"{path}.cam") : null,
        };
    }

    private CrankDrive? Crank(int m, string path)
    {
        if (unsound.Contains(m) || (members[m].Joint.Kind == JointKind.Pivot && members[m].Carrier == Member.Case))
        {
            return new(m);
        }

        problems.Add(path, $"the crank turns '{names[m]}', which is not a pivot on the case", "Let the crank turn a member with 'pivot' that sits on the case");
        return null;
    }

    private int? Driver(string name, int driven, string path)
    {
        var d = names.IndexOf(name);
        if (d < 0)
        {
            problems.Add(path, $"there is no member '{name}' to drive '{names[driven]}'", Names.Suggest(name, [.. names.Where(n => n != names[driven])]));
            return null;
        }

        if (d == driven || Carriers.IsCarriedBy(members, d, driven))
        {
            problems.Add(path, d == driven ? $"'{name}' drives itself" : $"'{name}' drives '{names[driven]}', which carries it", "Name a driver that does not depend on the driven member");
            return null;
        }

        // Of the geometry of a member without a sound joint nothing can be said.
        return unsound.Contains(d) || unsound.Contains(driven) ? null : d;
    }

    private RatioDrive? Gear(GearSpec g, int driver, int driven, string path)
    {
        if (!TwoShafts(driver, driven, path, "toothed wheels"))
        {
            return null;
        }

        var (z1, z2) = (g.Teeth[0], g.Teeth[1]);
        var sameWay = AxisCosine(driver, driven) is var cos && Math.Abs(cos) > 1 - Parallel * Parallel;
        if (!sameWay)
        {
            if (g.Sense is null)
            {
                problems.Add(path, "the shafts are not parallel, so the sense can't be told from the teeth", "Add 'sense: same' or 'sense: opposite'");
                return null;
            }

            return new(driver, driven, new Rational(g.Sense == "same" ? z1 : -z1, z2), g, null);
        }

        if (g.Module is null)
        {
            problems.Add(path, "wheels on parallel shafts need a module", "Add 'module: 2.5', or what your teeth have");
            return null;
        }

        if (g.Sense is not null)
        {
            problems.Add($"{path}.sense", "on parallel shafts the sense follows from the wheels", "Remove 'sense'; use 'inside: true' for a ring with inside teeth");
            return null;
        }

        if (Math.Min(z1, z2) < 5)
        {
            problems.Add($"{path}.teeth", $"a spur wheel of {Math.Min(z1, z2)} teeth can't be made with involute teeth", "Use 5 teeth or more; 12 or more run well");
            return null;
        }

        if (g.Inside && z1 == z2)
        {
            problems.Add($"{path}.teeth", $"a ring and its pinion both have {z1} teeth", "Give the ring at least 8 teeth more");
            return null;
        }

        var sign = (g.Inside ? 1 : -1) * Math.Sign(cos);
        return new(driver, driven, new Rational(sign * z1, z2), g, null);
    }

    private RatioDrive? Belt(BeltSpec b, int driver, int driven, string path)
    {
        if (!TwoShafts(driver, driven, path, "belts and chains"))
        {
            return null;
        }

        if (Math.Abs(AxisCosine(driver, driven)) < 1 - Parallel * Parallel)
        {
            problems.Add(path, "the shafts of a belt or chain are not parallel", "Set both along the same direction");
            return null;
        }

        if (b.Teeth is not null == b.Diameters is not null)
        {
            problems.Add(path, "a belt or chain is given by exactly one of 'teeth' and 'diameters'", "Give 'teeth: [a, b]' for a chain or toothed belt, 'diameters: [a, b]' for a smooth one");
            return null;
        }

        if (b.Teeth is not null && b.Crossed)
        {
            problems.Add($"{path}.crossed", "a chain or toothed belt can't be crossed", "Remove 'crossed', or use a smooth belt");
            return null;
        }

        if (b.Diameters?.Any(d => Math.Abs(10 * d - Math.Round(10 * d)) > WholeTenth) == true)
        {
            problems.Add($"{path}.diameters", FormattableString.Invariant($"the diameters {b.Diameters[0]} and {b.Diameters[1]} mm are not both whole tenths of a millimetre"), "Round them to a tenth, so that the ratio is exact");
            return null;
        }

        var sign = (b.Crossed ? -1 : 1) * Math.Sign(AxisCosine(driver, driven));
        var ratio = b.Teeth is { } z ? new Rational(z[0], z[1]) : new Rational(Tenths(b.Diameters![0]), Tenths(b.Diameters[1]));
        return new(driver, driven, sign > 0 ? ratio : -ratio, null, b);
    }

    private GenevaDrive? Geneva(GenevaSpec w, int driver, int driven, string path)
    {
        if (!TwoShafts(driver, driven, path, "a pin and a Geneva wheel"))
        {
            return null;
        }

        var (a, b) = (members[driver].Joint, members[driven].Joint);
        if (Math.Abs(AxisCosine(driver, driven)) < 1 - Parallel * Parallel)
        {
            problems.Add(path, "the shafts of a Geneva wheel are not parallel", "Set both along the same direction");
            return null;
        }

        if ((b.Through - a.Through).Across(a.Along).Length < OnAxis)
        {
            problems.Add(path, $"'{names[driver]}' and '{names[driven]}' turn about one axis, so a Geneva wheel has no size", "Set the axes apart: the wheel's size follows from their distance");
            return null;
        }

        if (w.PinTowards.Unit().Across(a.Along).Length < Parallel)
        {
            problems.Add($"{path}.pin-towards", "the pin is drawn along the driver's axis", "Give a direction across it");
            return null;
        }

        return new(members, driver, driven, w);
    }

    private static long Tenths(double mm) => (long)Math.Round(10 * mm);

    private bool TwoShafts(int driver, int driven, string path, string what)
    {
        foreach (var m in (ReadOnlySpan<int>)[driver, driven])
        {
            if (members[m].Joint.Kind != JointKind.Pivot)
            {
                problems.Add(path, $"'{names[m]}' slides, but {what} join two members that turn", "Give it a pivot, or another drive");
                return false;
            }
        }

        return SameCarrier(driver, driven, path, what);
    }

    private bool SameCarrier(int driver, int driven, string path, string what)
    {
        if (members[driver].Carrier == members[driven].Carrier)
        {
            return true;
        }

        problems.Add(path, $"'{names[driver]}' and '{names[driven]}' sit on different carriers, and {what} can't be worked out between moving carriers", "Set both on the case, or both on the same member");
        return false;
    }

    private double AxisCosine(int a, int b) => members[a].Joint.Along.Dot(members[b].Joint.Along);

    private RodDrive? Rod(RodSpec r, int driver, int driven, string path)
    {
        var (p, q) = (r.Pins[0], r.Pins[1]);
        if (p.DistanceTo(q) < OnAxis)
        {
            problems.Add($"{path}.pins", "both pins stand at the same point, so the rod has no length", "Give the driver's pin first, then this member's");
            return null;
        }

        return PinOffAxis(driver, p, $"{path}.pins.1") & PinOffAxis(driven, q, $"{path}.pins.2")
            ? new(members, driver, p, driven, q, r.Length ?? p.DistanceTo(q))
            : null;
    }

    private bool PinOffAxis(int m, Point3 pin, string path)
    {
        var joint = members[m].Joint;
        if (joint.Kind == JointKind.Slide || pin.DistanceTo(joint.Foot(pin)) >= OnAxis)
        {
            return true;
        }

        problems.Add(path, FormattableString.Invariant($"the pin [{pin.X}, {pin.Y}, {pin.Z}] stands on the axis of '{names[m]}', where it can't turn it"), "Set the pin off the axis");
        return false;
    }

    private SlotDrive? Slot(SlotSpec t, int driver, int driven, string path)
    {
        var inDriven = t.In != "from";
        var (pinOn, slotIn) = inDriven ? (driver, driven) : (driven, driver);
        var pinAlong = t.PinAlong
            ?? (members[slotIn].Joint.Kind == JointKind.Pivot ? members[slotIn].Joint.Along
            : members[pinOn].Joint.Kind == JointKind.Pivot ? members[pinOn].Joint.Along : null as Vec3?);
        if (pinAlong is null)
        {
            problems.Add(path, "both members slide, so the direction of the pin can't be told", "Add 'pin-along: x', or where the pin points");
            return null;
        }

        var along = t.Along.Unit();
        var normal = along.Cross(pinAlong.Value.Unit());
        if (normal.Length < Parallel)
        {
            problems.Add($"{path}.along", "the slot runs along the pin, so it holds nothing", "Let the slot run across the pin");
            return null;
        }

        normal = normal.Unit();
        var slotJoint = members[slotIn].Joint;
        if (!PinOffAxis(pinOn, t.Pin, $"{path}.pin"))
        {
            return null;
        }

        var grip = slotJoint.Kind == JointKind.Slide ? Math.Abs(normal.Dot(slotJoint.Along)) : normal.Across(slotJoint.Along).Length;
        if (grip < Parallel)
        {
            problems.Add($"{path}.along", $"the slot's sides can't push '{names[slotIn]}' along its freedom", "Turn the slot across the direction in which the member moves");
            return null;
        }

        if (slotJoint.Kind == JointKind.Pivot && t.Pin.DistanceTo(slotJoint.Foot(t.Pin)) < OnAxis)
        {
            problems.Add($"{path}.pin", $"the pin stands on the axis of '{names[slotIn]}', where it can't turn it", "Set the pin off the axis");
            return null;
        }

        return new(members, driver, driven, inDriven, t.Pin, along, normal);
    }

    private CamDrive? Cam(CamSpec c, int shaft, int follower, string path)
    {
        var before = problems.Count;
        var (a, f) = (members[shaft].Joint, members[follower].Joint);
        if (a.Kind != JointKind.Pivot)
        {
            problems.Add($"{path}.on", $"'{names[shaft]}' slides and can't carry a cam", "Name a shaft");
            return null;
        }

        SameCarrier(shaft, follower, path, "a cam");
        var cos = Math.Abs(a.Along.Dot(f.Along));
        if (f.Kind == JointKind.Pivot && cos < 1 - Parallel * Parallel)
        {
            problems.Add(path, $"the axis of the follower '{names[follower]}' is not parallel to the shaft '{names[shaft]}'", "Set both along the same direction");
        }

        if (f.Kind == JointKind.Slide && cos > Parallel)
        {
            problems.Add(path, $"the travel of the follower '{names[follower]}' is not square to the shaft '{names[shaft]}'", "Let it slide in the plane of the cam");
        }

        var touch = (c.Follower.Roller is null ? 0 : 1) + (c.Follower.Round is null ? 0 : 1) + (c.Follower.Flat is null ? 0 : 1);
        if (touch != 1)
        {
            problems.Add($"{path}.follower", touch == 0 ? "the follower has neither roller, round end nor flat face" : "the follower has more than one of roller, round end and flat face", "Give exactly one: 'roller: 8', 'round: 6' or 'flat: 20'");
        }

        if (c.Follower.Flat is null && f.Kind == JointKind.Pivot && (c.Follower.At - f.Through).Across(f.Along).Length < OnAxis)
        {
            problems.Add($"{path}.follower.at", $"the roller stands on the axis of '{names[follower]}'", "Set it out on the lever's arm");
        }

        if (c.Follower.Flat is null && (c.Follower.At - a.Through).Across(a.Along).Length < OnAxis)
        {
            problems.Add($"{path}.follower.at", $"the roller stands on the axis of the shaft '{names[shaft]}'", "Set it out on the cam's edge");
        }

        if (c.Follower.Facing is not null && c.Follower.Flat is null)
        {
            problems.Add($"{path}.follower.facing", "only a flat face looks somewhere", "Remove 'facing', or give 'flat'");
        }

        FacesTheCam(c.Follower, a, f, path);
        if (c.Hub is { } hub && c.Bore is { } bore && hub < bore)
        {
            problems.Add($"{path}.hub", FormattableString.Invariant($"the hub of {hub} mm is smaller than its bore of {bore} mm"), "Give the outside of the hub or collet");
        }

        return problems.Count == before ? new(shaft, follower, c) : null;
    }

    // A flat face looks within the cam's plane; unsaid on a lever, along its arm's side, so it needs an arm.
    private void FacesTheCam(FollowerSpec spec, Joint shaft, Joint follower, string path)
    {
        if (spec is { Flat: not null, Facing: { } facing } && Math.Abs(facing.Unit().Dot(shaft.Along)) > Parallel)
        {
            problems.Add($"{path}.follower.facing", "the face does not look across the shaft, so it can't lie on the cam", "Give a direction square to the shaft");
        }

        if (spec is { Flat: not null, Facing: null } && follower.Kind == JointKind.Pivot && (spec.At - follower.Through).Across(follower.Along).Length < OnAxis)
        {
            problems.Add($"{path}.follower.at", "the middle of the face stands on the lever's axis, so it can't be told which way it looks", "Set it out on the lever's arm, or add 'facing'");
        }
    }
}
