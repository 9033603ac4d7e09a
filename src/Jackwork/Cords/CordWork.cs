using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Cords;

/// <summary>A cord of a machine: its pulleys, drums, lengths and tension.</summary>
/// <param name="proof">The proof that it is part of.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class CordWork(Proof proof, CordDrive drive) : Mechanism(proof.Machine, drive.Driven)
{
    private static readonly Material Pulley = Material.Named("beech"), Steel = Material.Named("steel"), Braid = Material.Named("polyester");

    private readonly Lazy<CordTension?> tension = new(() => CordTension.Of(proof, drive));
    private readonly Lazy<CordRange> range = new(() => CordRange.Of(proof.Motion, drive));

    /// <summary>The drive that it serves.</summary>
    public CordDrive Drive => drive;

    /// <summary>Its tension over the performance; null where it never closes.</summary>
    public CordTension? Tension => tension.Value;

    /// <summary>How its pieces and wraps range over the performance.</summary>
    public CordRange Range => range.Value;

    /// <summary>Diameter of the cord, mm.</summary>
    public double Diameter => CordSizes.Diameter(drive.Spec);

    /// <summary>Load at which it breaks, N.</summary>
    public double Strength => drive.Spec.Strength ?? CordSizes.UsualStrength * Diameter * Diameter;

    /// <summary>Length to cut, knots and the turns that stay on a drum included, mm.</summary>
    public double CutLength => drive.Length + 2 * CordSizes.Knot(drive.Spec);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "cords";

    /// <inheritdoc/>
    public override string Contents => "each cord: length to cut, eyes to drill, grooves to turn; outlines of its pulleys and drums";

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => [.. Enumerable.Range(0, drive.Run.Leads.Count).SelectMany(PlatesAt)];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => [new($"{Name}-cord", [.. CordRows.Of(this)])];

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines
    {
        get
        {
            MemberState[] drawn = [.. Machine.Members.Select(m => m.Joint.At(default))];
            var strands = new CordStrand[drive.Run.Leads.Count - 1];
            drive.Run.Follow(drawn, strands, new Jet[strands.Length + 1]);
            return [.. strands.Select((s, k) => new BodyLine((drive.Run.Leads[k].Member, s.Begins), (drive.Run.Leads[k + 1].Member, s.Ends)))];
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            // The lengths share what the whole cord weighs.
            var (pieces, area) = (CordPieces.Of(proof.Motion, drive), Math.PI * Diameter * Diameter / 4);
            for (var i = 0; i < pieces.All.Count; i++)
            {
                var mm = pieces.All[i].Mm;
                yield return new($"{Name} cord {pieces.Called(i)}", PartKind.Cord, new(drive.Driven, true, i), [ConvexPiece.Capsule(default, new(mm, 0, 0), Diameter / 2)], area * (mm + 2 * Diameter / 3), Braid)
                {
                    Filled = area * CutLength / pieces.All.Count,
                };
            }

            foreach (var (k, pin) in Enumerable.Range(0, drive.Run.Leads.Count).Where(k => drive.Run.Leads[k].Kind == LeadKind.Pulley).Select(k => (k, drive.Spec.Run[k].Pin ?? CordSizes.UsualPin)))
            {
                var (lead, n) = (drive.Run.Leads[k], drive.Run.Normal!.Value);
                var half = CordSizes.PulleyThickness(drive.Spec.Run[k], Diameter) / 2;
                var (front, back) = (lead.At + (half + CordSizes.PinBeyond) * n, lead.At + -(half + CordSizes.PinInto) * n);
                yield return new($"{Name} {Called(k)} pin", PartKind.Pin, new(lead.Member), [ConvexPiece.Cylinder(back, front, pin / 2)], Math.PI * pin * pin / 4 * front.DistanceTo(back), Steel);
            }
        }
    }

    /// <summary>What stands at a lead, with its number where there are more of its kind: "pulley 2".</summary>
    public string Called(int lead)
    {
        var kind = drive.Run.Leads[lead].Kind;
        return drive.Run.Leads.Count(l => l.Kind == kind) == 1 ? drive.Called(lead) : FormattableString.Invariant($"{drive.Called(lead)} {drive.Run.Leads.Take(lead + 1).Count(l => l.Kind == kind)}");
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["lengthMm"] = ResultJson.Number(drive.Length),
        ["cutMm"] = ResultJson.Number(CutLength),
        ["diameterMm"] = ResultJson.Number(Diameter),
        ["leads"] = new JsonArray([.. drive.Run.Leads.Select((l, k) => new JsonObject
        {
            ["kind"] = drive.Called(k),
            ["on"] = Machine.NameOf(l.Member),
            ["radiusMm"] = ResultJson.Number(l.Radius),
            ["minWrapDeg"] = ResultJson.Number(Proof.Deg(Range.Wraps[k].Least)),
            ["maxWrapDeg"] = ResultJson.Number(Proof.Deg(Range.Wraps[k].Most)),
        })]),
        ["minTensionN"] = ResultJson.Number(Tension?.Least.Newton ?? double.NaN),
        ["minTensionCrankDeg"] = ResultJson.Number(Tension is { } t ? Proof.Deg(proof.At(t.Least.Step)) : double.NaN),
        ["maxTensionN"] = ResultJson.Number(Tension?.Most.Newton ?? double.NaN),
        ["maxTensionCrankDeg"] = ResultJson.Number(Tension is { } u ? Proof.Deg(proof.At(u.Most.Step)) : double.NaN),
        ["strengthN"] = ResultJson.Number(Strength),
    };

    private IEnumerable<Plate> PlatesAt(int k)
    {
        var (lead, spec, d) = (drive.Run.Leads[k], drive.Spec.Run[k], Diameter);
        if (lead.Kind == LeadKind.Eye)
        {
            yield break;
        }

        var name = $"{Name} {Called(k)}";
        if (lead.Kind == LeadKind.Pulley)
        {
            var (rim, half) = (CordSizes.PulleyRim(spec, d), CordSizes.PulleyThickness(spec, d) / 2);
            yield return new(name, lead.Member, Outline.Circle(Point2.Origin, rim), Frame.Along(lead.At, drive.Run.Normal!.Value), -half, half)
            {
                Holes = [new(Point2.Origin, (spec.Pin ?? CordSizes.UsualPin) + Fits.Running)],
                Shell = (Outline.Circle(Point2.Origin, rim), []),
                Material = Pulley,
                Note = FormattableString.Invariant($"groove to {spec.Pulley:0.##}, r {CordSizes.GrooveRadius(d):0.##}"),
            };
            yield break;
        }

        var joint = Machine.Members[lead.Member].Joint;
        var (place, length, core, cheek) = (Station.Of(joint, lead.At), DrumLength(k), spec.Drum!.Value / 2, CordSizes.CheekRim(spec, d));
        (string What, double From, double To, double Radius)[] discs =
        [
            ("", place - length / 2, place + length / 2, core),
            (" front cheek", place + length / 2, place + length / 2 + CordSizes.Cheek, cheek),
            (" back cheek", place - length / 2 - CordSizes.Cheek, place - length / 2, cheek),
        ];
        foreach (var disc in discs)
        {
            yield return new($"{name}{disc.What}", lead.Member, Outline.Circle(Point2.Origin, disc.Radius), Plate.On(joint), disc.From, disc.To)
            {
                Bore = spec.Bore ?? Design.HubbedSpec.UsualBore,
                Holes = disc.What.Length == 0 ? [] : [new(new(0, core + d), CordSizes.EyeHole(d))],
                Shell = (Outline.Circle(Point2.Origin, disc.Radius), []),
                Material = Pulley,
            };
        }
    }

    /// <summary>Length of a drum between its cheeks, mm.</summary>
    public double DrumLength(int lead) => drive.Spec.Run[lead].Thickness ?? CordSizes.DrumLength(Range.Wraps[lead].Most / (2 * Math.PI), Diameter);
}
