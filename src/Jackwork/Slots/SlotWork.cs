using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Linkages;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Slots;

/// <summary>A pin and slot of a machine: the slot's sizes, and its bar and pin where the design wants them made.</summary>
public sealed class SlotWork : Mechanism
{
    /// <summary>Thickness of the bar unless given, half the thickness of the lever beside it with the room between, and what the pin stands out beyond the bar, mm (common practice, no source).</summary>
    private const double UsualThickness = 4, BesideLever = 4, Beyond = 1;

    /// <summary>Sine of the angle up to which the pin counts as standing along the axis of the slotted member.</summary>
    private const double AlongAxis = 1e-6;

    private static readonly Material Steel = Material.Named("steel");

    private readonly Design.SlotSpec spec;

    /// <summary>The pin and slot of a drive, the slot as long as the motion asks.</summary>
    /// <param name="motion">The performance.</param>
    /// <param name="drive">The drive.</param>
    public SlotWork(Motion.Motion motion, SlotDrive drive)
        : base(motion.Machine, drive.Driven)
    {
        (Drive, spec) = (drive, motion.Machine.Design.Members[motion.Machine.NameOf(drive.Driven)].Slot!);
        Sizes = SlotSizes.Of(motion, drive);
    }

    /// <summary>The drive that it serves.</summary>
    public SlotDrive Drive { get; }

    /// <summary>The slot's sizes.</summary>
    public SlotSizes Sizes { get; }

    /// <summary>Width of the bar, mm; null where none is made.</summary>
    public double? Bar => spec.Bar;

    /// <summary>Distance of the slot's edge from the axis of the slotted member, mm; null where that does not turn.</summary>
    public double? FromAxis
    {
        get
        {
            var joint = Machine.Members[Drive.SlotIn].Joint;
            if (!joint.Turns)
            {
                return null;
            }

            var foot = Math.Clamp(Drive.Along.Dot(joint.Foot(Drive.Pin) - Drive.Pin), Sizes.From, Sizes.To);
            return (Drive.Pin + foot * Drive.Along - joint.Through).Across(joint.Along).Length - Sizes.Width / 2;
        }
    }

    /// <inheritdoc/>
    public override string Word => Drive.Word;

    /// <inheritdoc/>
    public override string Folder => "slots";

    /// <inheritdoc/>
    public override string Contents => "each slot: its sizes, and its bar where one is made: outline and slot to cut";

    /// <inheritdoc/>
    public override string? Impossible => Bar is not { } bar ? null
        : bar <= Sizes.Width ? FormattableString.Invariant($"a bar {bar:0.##} mm wide has no room for a slot of {Sizes.Width:0.##} mm")
        : Machine.Members[Drive.SlotIn].Joint is { Turns: true } joint && Across.Cross(joint.Along).Length > AlongAxis ? $"its pin does not stand along the axis of '{Machine.NameOf(Drive.SlotIn)}', to which the bar lies square"
        : null;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => Bar is not { } bar || Impossible is not null
        ? []
        :
        [
            new($"{Name} slot bar", Drive.SlotIn, LinkOutline.Of([new(-Half, 0), new(Half, 0)], bar / 2), new(Drive.Along, -Drive.Normal, Across, Middle), Beside - Thickness / 2, Beside + Thickness / 2)
            {
                Openings = [LinkOutline.Of([new(-Half, 0), new(Half, 0)], Sizes.Width / 2)],
                Note = FormattableString.Invariant($"pin {Pin:0.##}"),
            },
        ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables =>
    [
        new($"{Name} slot", [
            ("pin diameter", Pin, "mm"), ("slot width", Sizes.Width, "mm"), ("slot length over its round ends", Sizes.To - Sizes.From + Sizes.Width, "mm"),
            ("from the pin as drawn to the middle of the first end", Sizes.From, "mm"), ("to the middle of the other end", Sizes.To, "mm"), ("travel of the pin", Sizes.Most - Sizes.Least, "mm")]),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            if (Bar is not null)
            {
                var length = (Math.Abs(Beside) + Thickness / 2 + Beyond) * (Beside < 0 ? -1 : 1);
                yield return new($"{Name} slot pin", PartKind.Pin, new(Drive.PinOn), [ConvexPiece.Cylinder(Drive.Pin, Drive.Pin + length * Across, Pin / 2)], Math.PI * Pin * Pin / 4 * Math.Abs(length), Steel);
            }
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["pinOn"] = Machine.NameOf(Drive.PinOn),
        ["slotIn"] = Machine.NameOf(Drive.SlotIn),
        ["leastMm"] = ResultJson.Number(Sizes.Least),
        ["mostMm"] = ResultJson.Number(Sizes.Most),
        ["fromMm"] = ResultJson.Number(Sizes.From),
        ["toMm"] = ResultJson.Number(Sizes.To),
        ["widthMm"] = ResultJson.Number(Sizes.Width),
    };

    /// <summary>Where the slotted lever's arm ends: in the bar's plane, beyond the slot's end that is nearer to its axis by half its own width, so that it reaches to the slot and not into it.</summary>
    /// <param name="width">Width of the arm, mm.</param>
    internal Point3 Root(double width)
    {
        var foot = Drive.Along.Dot(Machine.Members[Drive.SlotIn].Joint.Foot(Drive.Pin) - Drive.Pin);
        var past = (Sizes.Width + width) / 2;
        var at = Math.Abs(foot - Sizes.From) <= Math.Abs(foot - Sizes.To) ? Sizes.From - past : Sizes.To + past;
        return Drive.Pin + at * Drive.Along + Beside * Across;
    }

    private double Pin => spec.Diameter ?? SlotSizes.UsualPin;

    private double Thickness => spec.Thickness ?? UsualThickness;

    private double Beside => spec.Beside ?? BesideLever + Thickness / 2;

    private double Half => (Sizes.To - Sizes.From) / 2;

    private Point3 Middle => Drive.Pin + (Sizes.From + Half) * Drive.Along;

    private Vec3 Across => Drive.Normal.Cross(Drive.Along);
}
