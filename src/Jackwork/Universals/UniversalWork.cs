using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Universals;

/// <summary>A universal joint of a machine: its forks, cross block and pins.</summary>
/// <remarks>The block rocks about the driver's pin, about which it is round: as a solid it goes with the driver.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class UniversalWork(Machine machine, UniversalDrive drive) : Mechanism(machine, drive.Driven)
{
    private static readonly Material Brass = Material.Named("brass"), Steel = Material.Named("steel");

    private IReadOnlyList<Plate>? plates;

    /// <summary>The drive that it serves.</summary>
    public UniversalDrive Drive => drive;

    /// <summary>Its sizes.</summary>
    public UniversalSizes Sizes { get; } = new(drive.Spec, drive.Angle);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "universals";

    /// <inheritdoc/>
    public override string Contents => "the discs and cheeks of each universal joint's forks, and the sizes of its cross";

    /// <inheritdoc/>
    public override string? Impossible =>
        Sizes.BlockWall <= 0 ? FormattableString.Invariant($"within cheeks of {Sizes.Thickness:0.##} mm on a diameter of {2 * Sizes.Outer:0.##} mm no block is left round pins of {Sizes.Pin:0.##} mm")
        : Sizes.CheekWall <= 0 ? FormattableString.Invariant($"pins of {Sizes.Pin:0.##} mm leave nothing of cheeks that are {Sizes.Width:0.##} mm wide")
        : Sizes.CheekRoom < 0 ? FormattableString.Invariant($"at {Proof.Deg(drive.Angle):0.#}° cheeks of {Sizes.Width:0.##} mm, {2 * Sizes.Inner:0.##} mm apart, scrape along those of the other fork")
        : null;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [.. Fork(true), .. Fork(false)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => Impossible is not null ? [] :
    [
        new($"{Name} universal joint",
        [
            ("angle between the shafts", Proof.Deg(drive.Angle), "deg"),
            ("from the middle to the near face of each disc", Sizes.Reach, "mm"),
            ("diameter of the cross block, turned", 2 * Sizes.Block, "mm"),
            ("length of the cross block", 2 * Sizes.Block, "mm"),
            ("hole along the block", Sizes.Pin, "mm"),
            ("hole across its middle", Sizes.Pin, "mm"),
            ("length of the pin along the block", 2 * Sizes.Outer, "mm"),
            ("length of each of the two half pins across", Sizes.Outer - Sizes.Pin / 2, "mm"),
            ("holes in the cheeks", Sizes.Pin + Fits.Running, "mm"),
            ("washers between block and cheeks", UniversalSizes.Beside, "mm"),
        ]),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var (m, e) = (drive.Middle, Sizes.Block);
            var block = Round("cross block", PartKind.Pin, drive.Driver, m, e * drive.DriverArm, e, Brass);
            yield return block with { Filled = block.Volume - 4 * Math.PI / 4 * Sizes.Pin * Sizes.Pin * e };
            yield return Round("driver pin", PartKind.Pin, drive.Driver, m, Sizes.Outer * drive.DriverArm, Sizes.Pin / 2, Steel);
            yield return Round("driven pins", PartKind.Pin, drive.Driven, m, Sizes.Outer * drive.DrivenArm, Sizes.Pin / 2, Steel);
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["angleDeg"] = ResultJson.Number(Proof.Deg(drive.Angle)),
        ["mostSpeedRatio"] = ResultJson.Number(1 / Math.Cos(drive.Angle)),
        ["leastSpeedRatio"] = ResultJson.Number(Math.Cos(drive.Angle)),
        ["discAtMm"] = ResultJson.Number(Sizes.Reach),
        ["cheekRoomMm"] = ResultJson.Number(Sizes.CheekRoom),
    };

    /// <summary>Where a shaft ends at its fork's disc, mm along its axis from the point that it is drawn through, and +1 where it goes on along its direction from there, else -1.</summary>
    internal (double Station, int Way) ShaftEnd(bool onDriver) =>
        (Station.Of(Machine.Members[onDriver ? drive.Driver : drive.Driven].Joint, drive.Middle) + Lies(onDriver) * Sizes.Reach, Lies(onDriver));

    // +1 where a shaft lies along its own direction from the middle, else -1: the driver's on one side, the driven's on the other.
    private int Lies(bool onDriver) => (drive.Spec.Side == "behind" ? -1 : 1) * (onDriver ? -1 : drive.Sense);

    // A disc with its hub away from the middle, and two cheeks that stand on it towards the middle.
    private IEnumerable<Plate> Fork(bool onDriver)
    {
        var (member, arm, word) = onDriver ? (drive.Driver, drive.DriverArm, "driver fork") : (drive.Driven, drive.DrivenArm, "driven fork");
        var (joint, s, way, i) = (Machine.Members[member].Joint, Sizes, Lies(onDriver), onDriver ? 0 : 1);
        var near = ShaftEnd(onDriver).Station;
        var far = near + way * s.Thickness;
        yield return new($"{Name} {word} disc", member, Outline.Circle(Point2.Origin, s.Disc), Plate.On(joint), Math.Min(near, far), Math.Max(near, far))
        {
            Shell = (Outline.Circle(Point2.Origin, s.Disc), []),
            Bore = drive.Spec.BoreOf(i),
            Hub = new(drive.Spec.HubOf(i), drive.Spec.HubLength, way > 0, drive.Spec.Grub),
            EndsShaft = true,
            Material = Brass,
        };
        foreach (var side in (int[])[1, -1])
        {
            var (z, x) = (side * arm, -way * joint.Along);
            yield return new($"{Name} {word} cheek {(side > 0 ? 1 : 2)}", member, Cheek(s), new(x, z.Cross(x), z, drive.Middle + -s.Reach / 2 * x), s.Inner, s.Outer)
            {
                Holes = [new(new(s.Reach / 2, 0), s.Pin + Fits.Running)],
                Material = Brass,
            };
        }
    }

    // From the disc, at -Reach/2, to round about the pin, at Reach/2.
    private static Outline Cheek(UniversalSizes s)
    {
        var (half, w) = (s.Reach / 2, s.Width / 2);
        var end = Segment.Arc(new(half, 0), w, -Math.PI / 2, Math.PI);
        return new([new(new(-half, -w), end.Start, 0), end, new(end.End, new(-half, w), 0), new(new(-half, w), new(-half, -w), 0)]);
    }

    private Part Round(string what, PartKind kind, int member, Point3 middle, Vec3 half, double radius, Material material) =>
        new($"{Name} {what}", kind, new(member), [ConvexPiece.Cylinder(middle + -half, middle + half, radius)], 2 * Math.PI * radius * radius * half.Length, material) { Process = Process.Turned };
}
