using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Differentials;

/// <summary>A differential of a machine: its wheels, planets, arm and pins. Of bevel wheels only the ratio is known.</summary>
/// <remarks>Along the arm's axis from the arm outwards: the arm, the first wheel with the planets that mesh with it, the second wheel; with all marks up as drawn they go together in mesh.</remarks>
public sealed class DifferentialWork : Mechanism
{
    /// <summary>Sizes unless given, mm (common practice, no source): room between what turns beside each other, wood outside the roots of a ring in modules.</summary>
    private const double Apart = 1, UsualPin = 4, UsualThinning = 0.1, FixedBore = 6, LooseBore = 6.2, RingModules = 4;

    /// <summary>Radius of the arm beyond the middle of a planet's pin, in its diameters (common practice, no source).</summary>
    private const double ArmBeyond = 1.75;

    private static readonly Material Steel = Material.Named("steel");

    private readonly DifferentialSpec spec;
    private readonly SpurGear? first;
    private readonly SpurGear? second;
    private readonly SpurGear? planet;
    private readonly string? impossible;
    private IReadOnlyList<Plate>? plates;

    /// <summary>Works out the wheels.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="drive">The drive that it serves.</param>
    public DifferentialWork(Machine machine, DifferentialDrive drive)
        : base(machine, drive.Driven)
    {
        (Drive, spec) = (drive, drive.Spec);
        if (spec.Module is not { } module || drive.Law.Form == DifferentialForm.Bevel)
        {
            return;
        }

        Sizes = new(drive.Law, module, spec.Planet ?? DifferentialSizes.UsualPlanet(drive.Law), spec.Planets ?? DifferentialSizes.UsualCount);
        try
        {
            first = new(module, drive.Law.First, thinning: Thinning);
            second = new(module, drive.Law.Second, thinning: Thinning, inside: drive.Law.Form == DifferentialForm.Ring);
            planet = new(module, Sizes.Planet, thinning: Thinning);
            _ = (GearOutline.Of(first), GearOutline.Of(second), GearOutline.Of(planet));
        }
        catch (ArgumentException e)
        {
            // The wheels' own contracts say in a sentence which figure leaves no tooth.
            impossible = e.Message.Split(" (Parameter", 2)[0].TrimEnd('.');
        }
    }

    /// <summary>The drive that it serves.</summary>
    public DifferentialDrive Drive { get; }

    /// <summary>Its planets; null for bevel wheels.</summary>
    public DifferentialSizes? Sizes { get; }

    /// <inheritdoc/>
    public override string Word => Drive.Word;

    /// <inheritdoc/>
    public override string Folder => "differentials";

    /// <inheritdoc/>
    public override string Contents => "the wheels, planets and arm of each differential: teeth to cut, pins to drill";

    /// <inheritdoc/>
    public override string? Impossible => impossible
        ?? (Sizes is { Law.Form: DifferentialForm.Spur } s && !double.IsFinite(s.Between) ? FormattableString.Invariant($"planets of {s.Planet} teeth do not reach each other between wheels of {s.Law.First} and {s.Law.Second}") : null);

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Sizes is null || Impossible is not null ? [] : [.. Made(Sizes)];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            if (Sizes is null || Impossible is not null)
            {
                yield break;
            }

            var (pin, k) = (Pin, 0);
            foreach (var (angle, radius, isFirst) in Sizes.Planets())
            {
                var (from, to) = (-1.5 * T - Apart, isFirst && IsSpur ? 1.5 * T + Apart : IsSpur ? 2.5 * T + 2 * Apart : T / 2);
                var (a, b) = (Axis(from) + Out(angle, radius), Axis(to) + Out(angle, radius));
                yield return new($"{Name} planet pin {++k}", PartKind.Pin, new(Drive.Driven), [ConvexPiece.Cylinder(a, b, pin / 2)], Math.PI * pin * pin / 4 * (to - from), Steel);
            }
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(Drive.Driver),
        ["with"] = Drive.With == Motion.Member.Case ? null : Machine.NameOf(Drive.With),
        ["driven"] = Name,
        ["driverShare"] = ResultJson.Number(Drive.Law.FirstShare.Value),
        ["withShare"] = ResultJson.Number(Drive.Law.SecondShare.Value),
        ["planetTeeth"] = Sizes?.Planet,
        ["planets"] = Sizes?.Count,
        ["planetRadiusMm"] = Sizes is null ? null : ResultJson.Number(Sizes.FirstRadius),
        ["planetRoomMm"] = Sizes is null || double.IsInfinity(Sizes.Room) ? null : ResultJson.Number(Sizes.Room),
    };

    private bool IsSpur => Drive.Law.Form == DifferentialForm.Spur;

    private double T => spec.Thickness ?? PlateParts.Thickness;

    private double Pin => spec.Pin ?? UsualPin;

    private double Thinning => spec.Thinning ?? UsualThinning;

    private double Fixed => spec.Bores?[0] ?? FixedBore;

    private double Loosely => spec.Bores?[1] ?? LooseBore;

    private Joint Own => Machine.Members[Drive.Driven].Joint;

    // +1 where the arm's axis points from the arm to the wheels.
    private int Faces => spec.Side == "ahead" ? -1 : 1;

    // The direction of the first planet in the plane of the shaft.
    private double Start => spec.PlanetTowards is { } v ? new CamPlane(Own).Direction(v).Angle : Math.PI / 2;

    private Frame Plane => Plate.On(Own);

    // A place along the axis, from the middle of the first wheel away from the arm, as a station of the arm's axis.
    private double Place(double along) => Station.Of(Own, spec.At ?? Own.Through) + Faces * along;

    private Point3 Axis(double along) => Station.At(Own, Place(along));

    private Vec3 Out(double angle, double radius)
    {
        var v = radius * Vec2.FromAngle(Start + angle);
        return Plane.Apply(new Vec3(v.X, v.Y, 0));
    }

    private IEnumerable<Plate> Made(DifferentialSizes s)
    {
        var half = T / 2;
        var reach = Math.Max(s.FirstRadius, s.SecondRadius) + ArmBeyond * Pin;
        yield return Of("arm", Drive.Driven, Outline.Circle(Point2.Origin, reach), -3 * half - Apart, -half - Apart) with
        {
            Bore = Loosely,
            Holes = [.. s.Planets().Select(p => new Hole(Point2.Origin + p.Radius * Vec2.FromAngle(Start + p.Angle), Pin))],
        };

        // A tooth of the first wheel stands up; all others are turned to mesh. Its hub has room beside it, within the planets.
        yield return Wheel("first wheel", Drive.Driver, first!, Math.PI / 2, -half, half) with
        {
            Bore = Fixed,
            Hub = IsSpur ? new(spec.Hub ?? 2 * Fixed, T + Apart, Faces > 0, spec.Grub) : null,
        };
        var (k, last) = (0, 0.0);
        foreach (var (angle, radius, isFirst) in s.Planets())
        {
            var towards = Start + angle;
            last = isFirst ? new SpurPair(first!, planet!).SecondAngle(Math.PI / 2, towards) : new SpurPair(planet!, planet!).SecondAngle(last, PairDirection(s, towards));
            var (from, to) = !IsSpur ? (-half, half) : isFirst ? (-half, 3 * half + Apart) : (half + Apart, 5 * half + 2 * Apart);
            yield return PlanetPlate(++k, towards, radius, last, from, to);
        }

        var (lastAngle, lastRadius, _) = s.Planets().Last();
        if (IsSpur)
        {
            yield return Wheel("second wheel", Second, second!, new SpurPair(planet!, second!).SecondAngle(last, Start + lastAngle + Math.PI), 3 * half + 2 * Apart, 5 * half + 2 * Apart);
            yield break;
        }

        // The ring reaches past the wheel and planets by the room that these need before its back.
        var (outside, turn) = (second!.RootRadius + RingModules * s.Module, new SpurPair(planet!, second).SecondAngle(last, Start + lastAngle + Math.PI));
        yield return Of("ring", Second, Outline.Circle(Point2.Origin, outside), -half + Apart, half + Apart) with
        {
            Openings = [GearOutline.Of(second).Turned(turn)],
            Shell = (Outline.Circle(Point2.Origin, outside), [Outline.Circle(Point2.Origin, second.TipRadius)]),
            Note = Teeth(second),
        };
        if (Drive.With != Motion.Member.Case)
        {
            yield return Of("ring back", Second, Outline.Circle(Point2.Origin, outside), half + Apart, 3 * half + Apart) with { Bore = Loosely };
        }
    }

    // From the first planet of a pair to the other, which stands on the angle given.
    private double PairDirection(DifferentialSizes s, double other) =>
        (s.SecondRadius * Vec2.FromAngle(other) - s.FirstRadius * Vec2.FromAngle(other - s.Between)).Angle;

    private int Second => Drive.With == Motion.Member.Case ? Machine.Members[Drive.Driven].Carrier : Drive.With;

    private Plate Wheel(string name, int member, SpurGear gear, double turn, double from, double to) => Of(name, member, GearOutline.Of(gear).Turned(turn), from, to) with
    {
        Bore = Loosely,
        Shell = (Outline.Circle(Point2.Origin, gear.TipRadius), []),
        Note = Teeth(gear),
    };

    private Plate PlanetPlate(int k, double towards, double radius, double turn, double from, double to)
    {
        var at = radius * Vec2.FromAngle(towards);
        var plate = Of(FormattableString.Invariant($"planet {k}"), Drive.Driven, GearOutline.Of(planet!).Turned(turn), from, to);
        return plate with
        {
            Frame = plate.Frame with { Origin = plate.Frame.Apply(new Point3(at.X, at.Y, 0)) },
            Holes = [new(Point2.Origin, Pin + Fits.Running)],
            Shell = (Outline.Circle(Point2.Origin, planet!.TipRadius), []),
            Note = Teeth(planet),
        };
    }

    private Plate Of(string name, int member, Outline rim, double from, double to)
    {
        var (a, b) = (Place(from), Place(to));
        return new($"{Name} differential {name}", member, rim, Plane, Math.Min(a, b), Math.Max(a, b));
    }

    private static string Teeth(SpurGear gear) => FormattableString.Invariant($"m {gear.Module:0.###} z {gear.Teeth}");
}
