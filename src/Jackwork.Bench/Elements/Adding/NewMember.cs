using Jackwork.Bench.Sessions;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding;

/// <summary>A member to begin with: its joint and drive laid out by plain rules where the driver is and where there is room; the maker goes on from there.</summary>
/// <remarks>The sizes are a start, common practice, no source: levers of some 40 mm, cams with a base circle of 24 mm, wheels of module 2, or of what the design has or its cutter asks.</remarks>
internal sealed class NewMember
{
    /// <summary>What a member can be driven by, in the words of the format.</summary>
    public static readonly IReadOnlyList<string> Drives = ["cam", "rod", "gear", "belt", "slot", "geneva"];

    private const double Base = 24, Roller = 8, Lever = 40, Crank = 8, Arm = 25, Rise = 70;

    // Of a module, the widest cutter that passes the gaps of the wheels below.
    private const double Passed = 1.1;

    private readonly Work work;
    private readonly Room room;
    private readonly int driver;
    private readonly Joint joint;
    private readonly Vec3 along, up, side;

    private NewMember(Work work, string driver)
    {
        this.work = work;
        this.driver = work.Machine.IndexOf(driver);
        room = new(work.Proof.Assembly.Parts);
        joint = work.Machine.Members[this.driver].Joint;
        along = joint.Along;
        up = Math.Abs(along.Y) < 0.9 ? new Vec3(0, 1, 0).Across(along).Unit() : new(0, 0, 1);
        side = along.Cross(up);
    }

    /// <summary>The design's text with a new member in it; an acted one comes with a chart of two moves.</summary>
    /// <param name="work">The design as worked out.</param>
    /// <param name="text">Its text.</param>
    /// <param name="name">Name of the new member.</param>
    /// <param name="drive">What it shall be driven by: one of <see cref="Drives"/>.</param>
    /// <param name="driver">Name of the driving member.</param>
    /// <param name="slides">Whether it slides instead of turning.</param>
    public static TextEdit Add(Work work, string text, string name, string drive, string driver, bool slides)
    {
        if (!Names.IsName(name))
        {
            return DesignText.Add(text, "members", name, "{}");
        }

        var made = new NewMember(work, driver);
        if (made.Refusal(drive, slides) is { } refusal)
        {
            return TextEdit.Refused(text, refusal);
        }

        var value = drive switch
        {
            "cam" => made.Cam(slides),
            "rod" => made.Rod(slides),
            "gear" => made.Gear(),
            "belt" => made.Belt(),
            "geneva" => made.Geneva(),
            _ => made.Slot(slides),
        };
        var added = DesignText.Add(text, "members", name, value);
        return added.IsDone && drive == "cam"
            ? Chart(added.Text, name, driver, slides)
            : added;
    }

    /// <summary>The design's text with a chart for a member: out by a little and back, to begin with.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">The member.</param>
    /// <param name="shaft">The shaft whose turn it covers.</param>
    /// <param name="slides">Whether the member slides: then 8 mm out, else 10 degrees.</param>
    public static TextEdit Chart(string text, string name, string shaft, bool slides) => DesignText.Add(
        text, "timing", name, $"{{over: {shaft}, moves: [{{from: 60, to: 150, reach: {(slides ? 8 : 10)}}}, {{from: 210, to: 300, reach: rest}}]}}");

    private bool IsShaft => work.Machine.Turns[driver] is not null;

    private string Name => work.Machine.NameOf(driver);

    private string? Refusal(string drive, bool slides) => drive switch
    {
        "cam" or "gear" or "belt" or "geneva" when !IsShaft => $"'{Name}' doesn't go round; a {drive} needs a driver that wheels tie to the crank",
        "gear" or "belt" or "geneva" when slides => $"a {drive} turns its member; let it turn, or choose another drive",
        "slot" when joint.Kind == JointKind.Slide => $"'{Name}' slides; let a rod lead on from it",
        _ => null,
    };

    // A cam on the shaft, its follower above it: on a lever like those that are there, or of its own behind the shaft; or straight up.
    private string Cam(bool slides)
    {
        var like = slides ? null : work.Machine.Drives.OfType<CamDrive>()
            .FirstOrDefault(c => c.Driver == driver && work.Machine.Members[c.Driven].Joint.Kind == JointKind.Pivot && c.Spec.Follower.Roller is not null);
        var (at, pivot) = like is null
            ? (joint.Through + (Base + Roller / 2) * up, joint.Through + (Base + Roller / 2) * up + -Lever * side)
            : (like.Spec.Follower.At, work.Machine.Members[like.Driven].Joint.Through);
        var outward = (at - joint.Through).Across(along).Unit();
        var radius = like is null ? Base + 12 : (at - joint.Through).Across(along).Length + 6;
        var (from, to) = room.Reach(driver, joint.Through, along);
        Point3 On(Point3 p, double station) => joint.Foot(p) is var foot ? p + ((joint.Through - foot).Dot(along) + station) * along : p;
        var middle = (from + to) / 2;
        var stations = Enumerable.Range(0, Math.Max(1, (int)(to - from) - 24)).Select(i => Math.Round(from + 12 + i)).OrderBy(s => Math.Abs(s - middle));
        var station = room.Best(stations, s => slides
            ? Room.Disc(joint.Through + s * along, along, radius, 4, 12)
            : Room.Disc(joint.Through + s * along, along, radius, 4, 12).Around(Room.Points(5, On(at, s), On(pivot, s))));
        (at, pivot) = (On(at, station), On(pivot, station));
        var spec = like?.Spec;
        var cam = Invariant($"cam: {{on: {Name}, follower: {{roller: {spec?.Follower.Roller ?? Roller}, at: {P(at)}}}, base: {(spec?.Base is { Word: null, Number: var b } ? b : Base)}, hub: {spec?.Hub ?? 14}, bore: {spec?.Bore ?? 6}{(spec?.HubSide is { } hub ? $", hub-side: {hub}" : "")}}}");
        if (slides)
        {
            return $"{{slide: {{along: {V(outward)}}}, {cam}}}";
        }

        // The lever turns so that a positive angle lifts the follower off the cam.
        var lifts = along.Cross(at - pivot).Dot(outward) > 0 ? along : -along;
        var shared = like is not null && room.Reach(like.Driven, joint.Through, along) is var (low, high) && low < station && station < high ? ", body: {axle: 0}" : "";
        return $"{{pivot: {{through: {P(pivot)}, along: {V(lifts)}}}, {cam}{shared}}}";
    }

    // A rod up from a pin on the driver: from a shaft as crank and rocker, else as a parallelogram whose arms are square to the rod in mid-move.
    private string Rod(bool slides)
    {
        var arm = IsShaft ? Crank * up : joint.Kind == JointKind.Slide ? 0 * up : Arm * MidMove();
        var from = joint.Through + 8 * along + arm;
        if (slides)
        {
            return $"{{slide: {{along: {V(up)}}}, rod: {{from: {Name}, pins: [{P(from)}, {P(from + Rise * up)}]}}}}";
        }

        var (to, rocker) = IsShaft || joint.Kind == JointKind.Slide ? (joint.Through + 8 * along + Rise * up, Arm * side) : (from + Rise * up, arm);
        return $"{{pivot: {{through: {P(to + -1.0 * rocker)}, along: {V(along)}}}, rod: {{from: {Name}, pins: [{P(from)}, {P(to)}]}}}}";
    }

    // The direction that stands sideways when the driver is halfway through what it does.
    private Vec3 MidMove()
    {
        var (least, most) = (double.MaxValue, double.MinValue);
        foreach (var q in work.Proof.Motion.Of(driver))
        {
            (least, most) = (Math.Min(least, q.Value), Math.Max(most, q.Value));
        }

        var (sin, cos) = Math.SinCos(-(least + most) / 2);
        return cos * side + sin * along.Cross(side);
    }

    // Half as fast, on the side where its wheel is least in the way.
    private string Gear()
    {
        var module = work.Machine.Design.Members.Select(m => m.Value.Gear?.Module).FirstOrDefault(m => m is not null) ?? Math.Max(2, Math.Ceiling(2 * work.Proof.Cutter / Passed) / 2);
        var (pinion, wheel) = (16, 32);
        var middle = room.Reach(driver, joint.Through, along) is var (from, to) ? Math.Round((from + to) / 2) : 0;
        var distance = module * (pinion + wheel) / 2;
        var through = room.Best(
            Around(distance).Select(p => p + middle * along),
            p => Room.Disc(p, along, module * (wheel + 2) / 2, 4, 12));
        return Invariant($"{{pivot: {{through: {P(through)}, along: {V(along)}}}, gear: {{with: {Name}, teeth: [{pinion}, {wheel}], module: {module}}}}}");
    }

    private string Belt() => $"{{pivot: {{through: {P(room.Best(Around(80), p => Room.Disc(p, along, 20, 4, 12)))}, along: {V(along)}}}, belt: {{with: {Name}, teeth: [12, 24]}}}}";

    // Six slots on the side where the wheel is least in the way, standing locked.
    private string Geneva()
    {
        var through = room.Best(Around(50), p => Room.Disc(p, along, 44, 4, 12));
        return $"{{pivot: {{through: {P(through)}, along: {V(along)}}}, geneva: {{from: {Name}, slots: 6, pin-towards: {V((joint.Through - through).Unit())}}}}}";
    }

    // A pin on the driver, beside whose axis the driven one's stands, in a slot that runs out from there.
    private string Slot(bool slides)
    {
        var pin = joint.Through + (IsShaft ? Crank + 2 : Arm) * up + 8 * along;
        var pivot = joint.Through + 8 * along + -Lever * side;
        return slides
            ? $"{{slide: {{along: {V(up)}}}, slot: {{from: {Name}, pin: {P(pin)}, along: {V(side)}}}}}"
            : $"{{pivot: {{through: {P(pivot)}, along: {V(along)}}}, slot: {{from: {Name}, pin: {P(pin)}, along: {V((pin - pivot).Unit())}}}}}";
    }

    // All round, the four plain directions first.
    private IEnumerable<Point3> Around(double distance) =>
        Enumerable.Range(0, 24).OrderBy(i => i % 6 == 0 ? 0 : 1).Select(i => i * Math.PI / 12).Select(a => joint.Through + distance * (Math.Cos(a) * up + Math.Sin(a) * side));

    // Exact enough that two wheels' axes stand as far apart as their teeth ask.
    private static string P(Point3 p) => $"[{N(p.X)}, {N(p.Y)}, {N(p.Z)}]";

    private static string V(Vec3 v) => (Math.Round(v.X, 9), Math.Round(v.Y, 9), Math.Round(v.Z, 9)) switch
    {
        (1, 0, 0) => "x",
        (-1, 0, 0) => "-x",
        (0, 1, 0) => "y",
        (0, -1, 0) => "-y",
        (0, 0, 1) => "z",
        (0, 0, -1) => "-z",
        _ => $"[{DesignText.Number(v.X, 6)}, {DesignText.Number(v.Y, 6)}, {DesignText.Number(v.Z, 6)}]",
    };

    private static string N(double v) => DesignText.Number(v, 3);
}
