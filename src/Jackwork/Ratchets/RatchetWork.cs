using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Ratchets;

/// <summary>A ratchet of a machine: its wheel, the pawl that feeds it, the pawl that holds it, and their pins.</summary>
/// <remarks>The pawls are drawn with their noses in, on their faces; on the way back they swing out by <see cref="RatchetSizes.Lift"/>.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class RatchetWork(Machine machine, RatchetDrive drive) : Mechanism(machine, drive.Driven)
{
    /// <summary>Sizes unless given, mm (common practice, no source).</summary>
    private const double UsualPin = 3, UsualCutter = 3, Beyond = 1;

    /// <summary>Diameter of a pawl's boss over that of its pin unless given (common practice, no source).</summary>
    private const double UsualBoss = 3;

    private static readonly Material Steel = Material.Named("steel");

    /// <summary>The drive that it serves.</summary>
    public RatchetDrive Drive => drive;

    /// <summary>What the arm's motion does to the wheel.</summary>
    public RatchetFeed Feed => drive.Feed!;

    /// <summary>Its sizes.</summary>
    public RatchetSizes Sizes { get; } = new(
        drive.Law,
        drive.Spec.Radius,
        drive.Spec.Depth ?? RatchetSizes.UsualDepth * Math.Tau * drive.Spec.Radius / drive.Law.Teeth,
        drive.Spec.Undercut is { } deg ? deg * Math.PI / 180 : RatchetSizes.UsualUndercut,
        (machine.Design.Cutter ?? UsualCutter) / 2,
        (drive.Spec.Pawl - machine.Members[drive.Driven].Joint.Through).Across(machine.Members[drive.Driven].Joint.Along).Length);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "ratchets";

    /// <inheritdoc/>
    public override string Contents => "each ratchet wheel and its pawls: outline to cut";

    /// <inheritdoc/>
    public override string? Impossible =>
        Sizes.Radius - Sizes.Depth <= Bore / 2 ? FormattableString.Invariant($"teeth {Sizes.Depth:0.##} mm deep reach into its bore of {Bore:0.##} mm")
        : !(Sizes.Seat > RatchetOutlines.Clear) ? FormattableString.Invariant($"a cutter of {2 * Sizes.Corner:0.##} mm rounds away the whole face of teeth {Sizes.Depth:0.##} mm deep")
        : Sizes.Rounded >= Sizes.OnFace(Sizes.Face).DistanceTo(Sizes.Tip.Turned(-drive.Law.Pitch)) ? FormattableString.Invariant($"a cutter of {2 * Sizes.Corner:0.##} mm does not fit between teeth {Sizes.Depth:0.##} mm deep")
        : !RatchetOutlines.HasBody(Sizes, Boss / 2) ? FormattableString.Invariant($"a pawl with a boss of {Boss:0.##} mm, {Sizes.PivotRadius:0.##} mm from the axis, has no room beside tips on a radius of {Sizes.Radius:0.##} mm")
        : null;

    /// <summary>How far, mm along the tips, the wheel falls back onto the holding pawl at the worst: none where all strokes end alike.</summary>
    public double FallsBack => Held.Worst * Sizes.Radius;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates
    {
        get
        {
            if (Impossible is not null)
            {
                return [];
            }

            var wheel = Of("wheel", drive.Driven, Facing(RatchetOutlines.Wheel(Sizes), Nose + drive.Sense * Feed.First)) with
            {
                Bore = Bore,
                Hub = new(drive.Spec.HubDiameter, drive.Spec.HubLength, drive.Spec.HubSide == "ahead", drive.Spec.Grub),
                Note = FormattableString.Invariant($"{drive.Law.Teeth} teeth"),
            };
            return HoldNose is { } hold ? [wheel, Pawl("pawl", drive.Driver, Nose), Pawl("holding pawl", Machine.Members[drive.Driven].Carrier, hold)] : [wheel, Pawl("pawl", drive.Driver, Nose)];
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables
    {
        get
        {
            List<(string, double, string)> rows =
            [
                ("angle from tooth to tooth", Proof.Deg(drive.Law.Pitch), "deg"),
                ("best stroke for one tooth", Proof.Deg(drive.Law.StrokeFor(1)), "deg"),
                .. Feed.Strokes.Select((s, i) => (FormattableString.Invariant($"stroke {i + 1}"), Proof.Deg(s.Size), "deg")),
                .. Feed.Strokes.Select((s, i) => (FormattableString.Invariant($"teeth fed by stroke {i + 1}"), (double)s.Fed, "")),
                ("length of the pawl from pin to the middle of its seat", Sizes.PawlLength, "mm"),
                ("swing of the pawl over a tip", Proof.Deg(Sizes.Lift), "deg"),
            ];
            return [new($"{Name} ratchet", rows)];
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var own = Machine.Members[drive.Driven].Joint;
            var reach = Thickness / 2 + Beyond;
            var plane = Station.Of(own, Middle);

            // From the arm's plane through the pawl; the holding pawl's through itself, to be set in a board or post.
            var arm = Station.Of(own, drive.Spec.Pawl);
            yield return Pin("pawl pin", drive.Driver, Pivot(Nose), Math.Min(arm, plane - reach), Math.Max(arm, plane + reach));
            if (HoldNose is { } hold)
            {
                yield return Pin("holding pawl pin", Machine.Members[drive.Driven].Carrier, Pivot(hold), plane - reach, plane + reach);
            }
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["teeth"] = drive.Law.Teeth,
        ["pitchDeg"] = ResultJson.Number(Proof.Deg(drive.Law.Pitch)),
        ["fedTeeth"] = Feed.Teeth,
        ["overCrankTurns"] = Feed.CrankTurns,
        ["strokesDeg"] = new JsonArray([.. Feed.Strokes.Select(s => (JsonNode?)ResultJson.Number(Proof.Deg(s.Size)))]),
        ["drawsInDeg"] = ResultJson.Number(Proof.Deg(Sizes.DrawsIn)),
        ["seatMm"] = ResultJson.Number(Sizes.Seat),
        ["pawlMm"] = ResultJson.Number(Sizes.PawlLength),
        ["fallsBackMm"] = HoldNose is null ? null : ResultJson.Number(FallsBack),
    };

    private double Thickness => drive.Spec.Thickness ?? PlateParts.Thickness;

    private double Bore => drive.Spec.BoreDiameter;

    private double PinDiameter => drive.Spec.Pin ?? UsualPin;

    private double Boss => drive.Spec.Boss ?? UsualBoss * PinDiameter;

    private Point3 Middle => drive.Spec.At ?? Machine.Members[drive.Driven].Joint.Through;

    private CamPlane Plane => new(Machine.Members[drive.Driven].Joint);

    // Angle, in the plane of the shaft, of the middle of the feeding pawl's seat as drawn.
    private double Nose => Plane.Point(drive.Spec.Pawl).FromOrigin.Angle + drive.Sense * Sizes.PivotBehind;

    // The place of the faces at rest that the holding pawl is set to, as the angle from the nose as drawn, and how far others come to rest ahead of it.
    private (double Face, double Worst) Held
    {
        get
        {
            var rests = Feed.Strokes.Where(s => s.Fed > 0).Select(s => Feed.First + Feed.Wheel[s.Step]).DefaultIfEmpty(Feed.First).ToList();
            return rests.Select(r => (r, rests.Max(o => Ahead(o - r)))).MinBy(x => x.Item2);
        }
    }

    private double? HoldNose
    {
        get
        {
            if (drive.Spec.HoldTowards is not { } towards)
            {
                return null;
            }

            var (pitch, from) = (drive.Law.Pitch, Nose + drive.Sense * Held.Face);
            return from + pitch * Math.Round((Plane.Direction(towards).Angle - from) / pitch);
        }
    }

    // An angle within a tooth, not counting rounding.
    private double Ahead(double angle)
    {
        var pitch = drive.Law.Pitch;
        var rest = angle - pitch * Math.Floor(angle / pitch);
        return pitch - rest < RatchetLaw.Rounding ? 0 : rest;
    }

    // An outline whose tooth's tip lies on the x axis, fed counter-clockwise, turned so that the middle of that tooth's seat stands at an angle.
    private Outline Facing(Outline outline, double seat)
    {
        var own = Sizes.Middle.FromOrigin.Angle;
        return drive.Sense > 0 ? outline.Turned(seat - own) : Mirrored(outline).Turned(seat + own);
    }

    // Mirrored in the x axis and run the other way, so that it stays counter-clockwise.
    private static Outline Mirrored(Outline outline) => new([.. outline.Segments.Reverse().Select(s => new Segment(new(s.End.X, -s.End.Y), new(s.Start.X, -s.Start.Y), s.Bulge))]);

    private Point2 PivotPoint(double nose) => Point2.Origin + Sizes.PivotRadius * Vec2.FromAngle(nose - drive.Sense * Sizes.PivotBehind);

    // The pivot of a pawl in the middle plane of the wheel.
    private Point3 Pivot(double nose)
    {
        var (own, at) = (Plate.On(Machine.Members[drive.Driven].Joint), PivotPoint(nose));
        return own.Apply(new Point3(at.X, at.Y, Station.Of(Machine.Members[drive.Driven].Joint, Middle)));
    }

    private Plate Pawl(string name, int member, double nose)
    {
        var (pivot, plate) = (PivotPoint(nose), Of(name, member, Facing(RatchetOutlines.Pawl(Sizes, Boss / 2), nose)));
        return plate with
        {
            Rim = plate.Rim.Moved(Point2.Origin - pivot),
            Frame = plate.Frame with { Origin = plate.Frame.Apply(new Point3(pivot.X, pivot.Y, 0)) },
            Holes = [new(Point2.Origin, PinDiameter + Fits.Running)],
        };
    }

    private Plate Of(string name, int member, Outline rim)
    {
        var own = Machine.Members[drive.Driven].Joint;
        var at = Station.Of(own, Middle);
        return new($"{Name} ratchet {name}", member, rim, Plate.On(own), at - Thickness / 2, at + Thickness / 2);
    }

    private Part Pin(string name, int member, Point3 at, double from, double to)
    {
        var own = Machine.Members[drive.Driven].Joint;
        var foot = at + -Station.Of(own, at) * own.Along;
        return new($"{Name} ratchet {name}", PartKind.Pin, new(member), [ConvexPiece.Cylinder(foot + from * own.Along, foot + to * own.Along, PinDiameter / 2)], Math.PI * PinDiameter * PinDiameter / 4 * (to - from), Steel);
    }
}
