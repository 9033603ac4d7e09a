using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Bevels;

/// <summary>A bevel pair of a machine: turned blanks, templates of their teeth, sizes.</summary>
/// <remarks>
/// Teeth taper to where the axes meet, so no straight cutter leaves them true along their length: the blanks are turned, and the teeth sawn, filed or milled down to the templates on both ends.
/// As drawn a tooth of the driver's wheel faces a gap of the driven's.
/// </remarks>
public sealed class BevelWork : Mechanism
{
    /// <summary>Thinning and material behind the teeth unless given, mm and modules (common practice, no source).</summary>
    private const double UsualThinning = 0.1, BackingModules = 2;

    /// <summary>Steepest pitch cone that is made, rad: beyond it the wheel is nearly a flat crown and its back cone nearly a cylinder.</summary>
    private const double Steepest = 85 * Math.PI / 180;

    private readonly BevelDrive drive;
    private IReadOnlyList<Turned>? turnings;
    private IReadOnlyList<Template>? templates;

    /// <summary>The pair of a drive.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="drive">The drive.</param>
    public BevelWork(Machine machine, BevelDrive drive)
        : base(machine, drive.Driven)
    {
        this.drive = drive;
        var s = drive.Spec;
        var angle = Math.Acos(Math.Clamp(Away(0).Dot(Away(1)), -1, 1));
        var rack = BasicRack.Of(s.PressureAngle is { } deg ? deg * Math.PI / 180 : BasicRack.A.PressureAngle);
        Pair = new(s.Module!.Value, s.Teeth[0], s.Teeth[1], angle, s.Bevel?.Face, s.Shift?[0] ?? 0, rack, s.Thinning ?? UsualThinning);
        Impossible = Why(0) ?? Why(1);
    }

    /// <summary>The drive that it serves.</summary>
    public BevelDrive Drive => drive;

    /// <summary>The pair; the driver's wheel is its first.</summary>
    public BevelPair Pair { get; }

    /// <inheritdoc/>
    public override string? Impossible { get; }

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "bevels";

    /// <inheritdoc/>
    public override string Contents => "each bevel wheel: section of its blank to turn, templates of its teeth for both ends, sizes (CSV)";

    /// <summary>Material below the roots at the large end, mm along the back cone.</summary>
    public double Backing => drive.Spec.Bevel?.Backing ?? BackingModules * Pair.Module;

    /// <summary>The driver's wheel (0) or the driven's (1).</summary>
    public BevelWheel Wheel(int k) => k == 0 ? Pair.First : Pair.Second;

    /// <summary>The shaft that a wheel sits on.</summary>
    public int Shaft(int k) => k == 0 ? drive.Driver : drive.Driven;

    /// <summary>Bore of a wheel, mm.</summary>
    public double Bore(int k) => drive.Spec.BoreOf(k);

    /// <summary>What is left between the roots of the small end and the bore, mm.</summary>
    public double Wall(int k) => Wheel(k).Taper * Wheel(k).At(Pair.ConeDistance, Wheel(k).Dedendum).Out - Bore(k) / 2;

    /// <inheritdoc/>
    public override IReadOnlyList<Turned> Turnings => turnings ??= Impossible is null ? [Blank(0), Blank(1)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Template> Templates => templates ??= Impossible is null ? [.. Fans(0), .. Fans(1)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => [.. Turnings.Select(t => t.Sizes)];

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        var json = new JsonObject
        {
            ["driver"] = Machine.NameOf(drive.Driver),
            ["driven"] = Name,
            ["ratio"] = drive.Ratio.Value,
            ["moduleMm"] = ResultJson.Number(Pair.Module),
            ["shaftAngleDeg"] = ResultJson.Number(Proof.Deg(Pair.ShaftAngle)),
            ["missMm"] = ResultJson.Number(drive.Meeting.Distance),
            ["coneDistanceMm"] = ResultJson.Number(Pair.ConeDistance),
            ["faceMm"] = ResultJson.Number(Pair.Face),
            ["contactRatio"] = ResultJson.Number(Impossible is null ? Pair.ContactRatio : double.NaN),
        };
        foreach (var (key, w) in new[] { ("driverWheel", Pair.First), ("drivenWheel", Pair.Second) })
        {
            json[key] = new JsonObject
            {
                ["teeth"] = w.Teeth,
                ["pitchAngleDeg"] = ResultJson.Number(Proof.Deg(w.PitchAngle)),
                ["tipAngleDeg"] = ResultJson.Number(Proof.Deg(w.TipAngle)),
                ["rootAngleDeg"] = ResultJson.Number(Proof.Deg(w.RootAngle)),
                ["outsideDiameterMm"] = ResultJson.Number(w.OutsideDiameter),
                ["meetingToCrownMm"] = ResultJson.Number(w.MeetingToCrown),
                ["virtualTeeth"] = ResultJson.Number(w.Teeth / Math.Cos(w.PitchAngle)),
            };
        }

        return json;
    }

    private string Label(int k) => $"{Name} {(k == 0 ? "driver" : "driven")} bevel wheel";

    private int Side(int k) => k == 0 ? drive.Sides.Driver : drive.Sides.Driven;

    private Vec3 Away(int k) => Side(k) * Machine.Members[Shaft(k)].Joint.Along;

    private string? Why(int k)
    {
        var (w, name) = (Wheel(k), Machine.NameOf(Shaft(k)));
        return w.PitchAngle > Steepest
            ? FormattableString.Invariant($"the pitch cone of the wheel on '{name}' opens to {Proof.Deg(w.PitchAngle):0.#}°, beyond the {Proof.Deg(Steepest):0}° that a bevel wheel can have")
            : w.Taper <= 0 ? FormattableString.Invariant($"teeth {Pair.Face:0.##} mm long reach past the meeting of the axes, {Pair.ConeDistance:0.##} mm away")
            : Wall(k) <= 0 ? FormattableString.Invariant($"the roots at the small end of the wheel on '{name}' lie within its bore of {Bore(k):0.##} mm")
            : Back(k).Out <= Bore(k) / 2 ? FormattableString.Invariant($"a backing of {Backing:0.##} mm takes the back of the wheel on '{name}' down into its bore of {Bore(k):0.##} mm")
            : null;
    }

    private (double Along, double Out) Back(int k) => Wheel(k).At(Pair.ConeDistance, Wheel(k).Dedendum + Backing);

    private Turned Blank(int k)
    {
        var (w, side, bore, joint) = (Wheel(k), Side(k), Bore(k), Machine.Members[Shaft(k)].Joint);
        var middle = Station.Of(joint, k == 0 ? drive.Meeting.OnDriver : drive.Meeting.OnDriven);
        var (crown, back) = (w.At(Pair.ConeDistance, -w.Addendum), Back(k));
        var small = (Along: w.Taper * crown.Along, Out: w.Taper * crown.Out);
        var (root, rootOut) = w.At(w.Taper * Pair.ConeDistance, w.Taper * w.Dedendum);
        (double Station, double Radius)[] profile = [(middle + side * small.Along, small.Out), (middle + side * crown.Along, crown.Out), (middle + side * back.Along, back.Out)];
        var (hub, hubLength) = (drive.Spec.HubOf(k), drive.Spec.HubLength ?? PlateParts.HubLength);
        Point2 At((double Along, double Out) p) => new(middle + side * p.Along, p.Out);
        Point2[] section = [At((root, bore / 2)), At((back.Along, bore / 2)), At(back), At(crown), At(small), At((root, rootOut))];
        return new(Label(k), Shaft(k), [.. side > 0 ? profile : profile.Reverse()], bore)
        {
            Section = Outline.Polygon(side > 0 ? section : [.. section.Reverse()]),
            Hub = new(hub, hubLength, side > 0, drive.Spec.Grub),
            Note = FormattableString.Invariant($"m {Pair.Module:0.###} z {w.Teeth} to {Wheel(1 - k).Teeth}"),
            Sizes = new(Label(k),
            [
                ("teeth", w.Teeth, ""),
                ("module at the large end", w.Module, "mm"),
                ("pitch angle from the axis", Proof.Deg(w.PitchAngle), "deg"),
                ("tip angle from the axis, to turn", Proof.Deg(w.TipAngle), "deg"),
                ("root angle from the axis, to cut the teeth", Proof.Deg(w.RootAngle), "deg"),
                ("angle of both ends from the axis, to turn", 90 - Proof.Deg(w.PitchAngle), "deg"),
                ("outside diameter", w.OutsideDiameter, "mm"),
                ("diameter over the small end", w.SmallDiameter, "mm"),
                ("length of the teeth along the cone", w.Face, "mm"),
                ("crown to crown along the axis", w.CrownToCrown, "mm"),
                ("meeting of the axes to the crown", w.MeetingToCrown, "mm"),
                ("meeting of the axes to the back of the hub (mounting distance)", back.Along + hubLength, "mm"),
                ("crown to the back of the hub", back.Along + hubLength - crown.Along, "mm"),
                ("diameter of the back", 2 * back.Out, "mm"),
                ("bore", bore, "mm"),
                ("hub diameter", hub, "mm"),
                ("hub length", hubLength, "mm"),
                ("depth of the gaps at the large end", w.Addendum + w.Dedendum, "mm"),
                ("depth of the gaps at the small end", w.Taper * (w.Addendum + w.Dedendum), "mm"),
                ("virtual teeth", w.Virtual.Teeth, ""),
            ]),
        };
    }

    // One for each end of the teeth.
    private IEnumerable<Template> Fans(int k)
    {
        var w = Wheel(k);
        foreach (var (end, scale, below) in new[] { ("large end", 1.0, Backing), ("small end", w.Taper, 0.0) })
        {
            // The small end's face ends at the roots: the sheet has a margin there, to glue on.
            var fan = BackCone.Fan(w, end == "large end" ? below : Pair.Module, k == 0, scale);
            var v = w.Virtual;
            var (from, to) = (scale * (v.RootRadius - 0.5 * Pair.Module), scale * v.TipRadius);
            yield return new($"{Label(k)} {end}", Shaft(k), fan, [new(new(from, 0), new(to, 0), 0)], FormattableString.Invariant($"cone {Proof.Deg(w.PitchAngle):0.##} deg, {v.Teeth:0.##} virtual teeth, the {(k == 0 ? "tooth" : "gap")} with the line faces the mate, crank at 0"));
        }
    }
}
