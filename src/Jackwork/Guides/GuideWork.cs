using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Guides;

/// <summary>The guide of a member: the rod with its pin, and the sleeve with the slot that the pin runs in.</summary>
/// <remarks>Places along the axis count from the point that the guide is drawn through, mm.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="member">Index of the guided member.</param>
public sealed class GuideWork(Machine machine, int member) : Mechanism(machine, member)
{
    /// <summary>Clearance of pin and slot unless given, mm: what a file or a cutter holds on both sides.</summary>
    private const double UsualClearance = 0.15;

    /// <summary>Diameter of the rod unless given, as a share of the sleeve's; how far it stands out of the sleeve at the ends of its travel, and the pin out of the slot, mm (common practice, no source).</summary>
    private const double RodShare = 0.5, Overhang = 4, Proud = 0.5;

    /// <summary>Least wall of a sleeve that can be slotted, mm (common practice, no source).</summary>
    private const double LeastWall = 0.5;

    private GuideSlot? slot;

    /// <summary>The joint.</summary>
    public Joint Joint => Machine.Members[Member].Joint;

    /// <summary>The track.</summary>
    public GuideTrack Track => Joint.Track!;

    /// <summary>The slot on the developed sleeve; y = 0 is where the pin stands as drawn.</summary>
    public GuideSlot Slot => slot ??= new(Track, Pin + (Spec.Clearance ?? UsualClearance));

    /// <summary>Diameter of the pin, mm.</summary>
    public double Pin => Spec.Pin ?? GuideJointMaker.UsualPin;

    /// <summary>Diameter of the rod, mm.</summary>
    public double Rod => Body?.Axle ?? RodShare * Spec.Outside;

    /// <summary>Bore of the sleeve, mm.</summary>
    public double Bore => Rod + Fits.Running;

    /// <summary>From where to where the slot reaches.</summary>
    public (double From, double To) SlotReach => (Slot.Reach.From + Spec.PinAt, Slot.Reach.To + Spec.PinAt);

    /// <summary>From where to where the sleeve reaches.</summary>
    public (double From, double To) Sleeve => Spec.Sleeve is { } given
        ? (Math.Min(given[0], given[1]), Math.Max(given[0], given[1]))
        : (SlotReach.From - Spec.Outside / 2, SlotReach.To + Spec.Outside / 2);

    /// <summary>From where to where the rod reaches as drawn: as far as its arms, and out of the sleeve at both ends of the track.</summary>
    public (double From, double To) RodReach
    {
        get
        {
            var arms = LeverParts.Pins(Machine, Member).Select(p => Station.Of(Joint, p)).ToList();
            var (low, high) = (Slot.Reach.From + Slot.Half, Slot.Reach.To - Slot.Half);
            var from = arms.Append(Sleeve.From - high).Min() - Overhang;
            var to = arms.Append(Sleeve.To - low).Max() + Overhang;
            return (Body?.From ?? from, Body?.To ?? to);
        }
    }

    /// <inheritdoc/>
    public override string Word => "guide";

    /// <inheritdoc/>
    public override string Folder => "guides";

    /// <inheritdoc/>
    public override string Contents => "each guide's sleeve rolled out, to wrap round the tube: the slot to cut and its holes to drill, with a table of sizes";

    /// <inheritdoc/>
    public override string? Impossible =>
        Slot.Undercut is { } join ? FormattableString.Invariant($"where leg {join.Leg + 1} begins the middle of the slot bends with a radius of {join.Rounding:0.##} mm, and half its width is {Slot.Half:0.##} mm, so its inner wall would be cut away")
        : Spec.Outside - Bore < 2 * LeastWall ? FormattableString.Invariant($"a sleeve of {Spec.Outside:0.##} mm with a bore of {Bore:0.##} mm has no wall for a slot")
        : null;

    /// <inheritdoc/>
    public override IReadOnlyList<Wrap> Wraps
    {
        get
        {
            if (Impossible is not null)
            {
                return [];
            }

            // The seam stands opposite to the middle of the slot.
            var (edge, by) = (Slot.Outline(), new Vec2(0, Spec.PinAt - Sleeve.From));
            var (min, max) = edge.Bounds();
            by += new Vec2(Math.PI * Track.Radius - (min.X + max.X) / 2, 0);
            return
            [
                new($"{Name} sleeve", Machine.Members[Member].Carrier, Track.Radius, Sleeve.To - Sleeve.From, [edge.Moved(by)], [.. Slot.Drills.Select(d => new Hole(d + by, Slot.Width))],
                    FormattableString.Invariant($"slot {Slot.Width:0.##}, bore {Bore:0.##}, pin as drawn at {by.X:0.##}, {by.Y:0.##}")),
            ];
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => Impossible is not null ? [] :
    [
        new($"{Name}-guide",
        [
            ("sleeve outside", Spec.Outside, "mm"),
            ("sleeve bore", Bore, "mm"),
            ("sleeve length", Sleeve.To - Sleeve.From, "mm"),
            ("slot width", Slot.Width, "mm"),
            ("slot length along its middle, corners as sharp", Track.Length, "mm"),
            ("rod diameter", Rod, "mm"),
            ("rod length", RodReach.To - RodReach.From, "mm"),
            ("pin diameter", Pin, "mm"),
            ("pin length", PinTo + Rod / 2, "mm"),
            ("pin from the rod's lower end", Spec.PinAt - RodReach.From, "mm"),
        ]),
    ];

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines
    {
        get
        {
            var carrier = Machine.Members[Member].Carrier;
            Point3[] line = [.. Enumerable.Range(0, 49).Select(i => Track.Ends.From + i / 48.0 * Track.Length).Select(OnSleeve)];
            foreach (var (a, b) in line.Zip(line.Skip(1)))
            {
                yield return new((carrier, a), (carrier, b));
            }

            yield return new((Member, Station.At(Joint, Spec.PinAt)), (Member, Station.At(Joint, Spec.PinAt) + PinTo * Towards));
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            if (Body?.Bare == true)
            {
                yield break;
            }

            var (from, to) = (Station.At(Joint, RodReach.From), Station.At(Joint, RodReach.To));
            yield return new($"{Name} guided rod", PartKind.Slide, new(Member), [ConvexPiece.Cylinder(from, to, Rod / 2)], Math.PI * Rod * Rod / 4 * from.DistanceTo(to), LeverParts.AxleMaterial(Body))
            {
                RoundAbout = (Joint.Through, Joint.Along),
            };
            var middle = Station.At(Joint, Spec.PinAt);
            yield return new($"{Name} guide pin", PartKind.Pin, new(Member), [ConvexPiece.Cylinder(middle + -Rod / 2 * Towards, middle + PinTo * Towards, Pin / 2)], Math.PI * Pin * Pin / 4 * (PinTo + Rod / 2), Jackwork.Material.Named("steel"));
            yield return new SleeveSolid(Joint, Sleeve, Spec.Outside, Bore, Slot, Spec.PinAt, Towards).Part($"{Name} sleeve", new(Machine.Members[Member].Carrier), Jackwork.Material.Named(Spec.Material ?? "brass"));
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["member"] = Name,
        ["trackMm"] = ResultJson.Number(Track.Length),
        ["legs"] = Track.Legs.Length,
        ["outsideMm"] = ResultJson.Number(Spec.Outside),
        ["boreMm"] = ResultJson.Number(Bore),
        ["slotMm"] = ResultJson.Number(Slot.Width),
        ["sleeveMm"] = ResultJson.Number(Sleeve.To - Sleeve.From),
    };

    /// <summary>The balance of a push on the member at a travel, mm; see <see cref="GuideBalance.Of"/>.</summary>
    public GuideBalance Balance(double travel, (Vec3 Line, Point3 At) push) => GuideBalance.Of(Joint, travel, push, (Towards, Spec.PinAt), Sleeve, Rod / 2);

    private GuideJointSpec Spec => Machine.Design.Members[Name].Guide!;

    private BodySpec? Body => Machine.Design.Members[Name].Body;

    // How far the pin reaches from the axis.
    private double PinTo => Spec.Outside / 2 + Proud;

    private Vec3 Towards => (Spec.PinTowards ?? Joint.Along.AnyPerpendicular()).Across(Joint.Along).Unit();

    // Where the pin's middle stands on the outside of the sleeve at a travel.
    private Point3 OnSleeve(double travel)
    {
        var (turn, lift) = Joint.Pose(travel);
        var (sin, cos) = Math.SinCos(turn);
        return Station.At(Joint, Spec.PinAt + lift) + Track.Radius * (cos * Towards + sin * Joint.Along.Cross(Towards));
    }
}
