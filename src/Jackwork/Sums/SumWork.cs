using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Sums;

/// <summary>A summing lever of a machine: its bar and pins.</summary>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class SumWork(Machine machine, SumDrive drive) : Mechanism(machine, drive.Driven)
{
    /// <summary>Thickness of the bar unless given, and what a pin stands out beyond it, mm (common practice, no source).</summary>
    private const double UsualThickness = 4, Beyond = 1;

    /// <summary>Half the thickness of the levers beside it and the room between, mm, unless told otherwise.</summary>
    private const double BesideLever = 4;

    private static readonly Material Steel = Material.Named("steel");

    private SumBar? bar;

    /// <summary>The drive that it serves.</summary>
    public SumDrive Drive => drive;

    /// <summary>The bar, as long as the performance needs it.</summary>
    public SumBar Bar => bar ??= SumBar.Of(drive, Motion.Motion.Solve(Machine), Pin, drive.Spec.Clearance ?? SumBar.UsualClearance, drive.Spec.Width ?? SumBar.UsualWidth * Pin);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "sums";

    /// <inheritdoc/>
    public override string Contents => "the bar of each summing lever: outline, hole and slots to cut";

    /// <inheritdoc/>
    public override string? Impossible => Bar.Wall > 0
        ? null
        : FormattableString.Invariant($"the openings for pins of {Pin:0.##} mm run into each other or out of the bar of {Bar.Width:0.##} mm");

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => Impossible is not null
        ? []
        :
        [
            new($"{Name} summing bar", drive.Driven, Bar.Rim, new(new(1, 0, 0), new(0, 0, -1), new(0, 1, 0), default), Beside - Thickness / 2, Beside + Thickness / 2)
            {
                OnLink = true,
                Openings = Bar.Holes,
                Note = FormattableString.Invariant($"pins {Pin:0.##}"),
            },
        ];

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines
    {
        get
        {
            var (p, q, r) = ((drive.Driver, drive.Drawn[0]), (drive.With, drive.Drawn[1]), (drive.Driven, drive.Drawn[2]));
            return [new(p, q), new(p, r)];
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var length = (Math.Abs(Beside) + Thickness / 2 + Beyond) * Math.Sign(Beside == 0 ? 1 : Beside);
            foreach (var (member, at) in drive.Pins)
            {
                yield return new(
                    $"{Name} summing pin on {Machine.NameOf(member)}", PartKind.Pin, new(member), [ConvexPiece.Cylinder(at, at + length * drive.Normal, Pin / 2)],
                    Math.PI * Pin * Pin / 4 * Math.Abs(length), Steel);
            }
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["with"] = Machine.NameOf(drive.With),
        ["driven"] = Name,
        ["share"] = ResultJson.Number((drive.Drawn[2] - drive.Drawn[0]).Dot((drive.Drawn[1] - drive.Drawn[0]).Unit()) / drive.Drawn[0].DistanceTo(drive.Drawn[1])),
        ["barMm"] = ResultJson.Number(Bar.Ends.To - Bar.Ends.From + Bar.Width),
        ["withSlotMm"] = ResultJson.Number(Bar.With.High - Bar.With.Low),
        ["drivenSlotMm"] = ResultJson.Number(Bar.Driven.High - Bar.Driven.Low),
        ["wallMm"] = ResultJson.Number(Bar.Wall),
    };

    private double Pin => drive.Spec.Pin ?? SumBar.UsualPin;

    private double Thickness => drive.Spec.Thickness ?? UsualThickness;

    private double Beside => drive.Spec.Beside ?? BesideLever + Thickness / 2;
}
