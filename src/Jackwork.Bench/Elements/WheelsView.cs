using Jackwork.Bench.Sessions;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;

namespace Jackwork.Bench.Elements;

/// <summary>One wheel of a pair in the drawing.</summary>
/// <param name="Gear">The wheel.</param>
/// <param name="On">Name of the shaft that carries it.</param>
/// <param name="Centre">Its axis, mm.</param>
/// <param name="AtDeg">Where the tooth stands that lies on the x axis of its outline, with the crank at 0, deg.</param>
/// <param name="Rate">Turns for a turn of the crank, counter-clockwise in the drawing; null where no wheels tie its shaft to the crank.</param>
/// <param name="Table">Its angle at every step of the performance, deg, where there is no rate.</param>
/// <param name="Outline">Its path; null where its teeth have no outline.</param>
/// <param name="Bore">Its bore, mm.</param>
/// <param name="WorkingRadius">Radius of its pitch circle at the shafts' distance, mm.</param>
/// <param name="Cut">What of it is cut where the design asks for a sector; else null.</param>
public sealed record Wheel(SpurGear Gear, string On, Point2 Centre, double AtDeg, double? Rate, string? Table, string? Outline, double Bore, double WorkingRadius, SectorWork? Cut)
{
    /// <summary>How far its timing mark reaches from its axis, mm.</summary>
    public double MarkTo => Cut?.Sector?.Boss ?? Gear.RootRadius;
}

/// <summary>A pair of wheels in mesh, ready to be drawn: seen from the tip of the driver's axis, y up, the driver's axis at the origin.</summary>
public sealed class WheelsView
{
    /// <summary>How far a drawn tooth may stray, mm.</summary>
    private const double Stray = 0.01;

    /// <summary>How far a ring goes on beyond its root circle in the drawing, modules.</summary>
    private const double Rim = 2.5;

    /// <summary>The pair.</summary>
    /// <param name="work">What was worked out.</param>
    /// <param name="gear">One of its pairs that can mesh.</param>
    public WheelsView(Work work, GearWork gear)
    {
        (Work, Gear, Pair) = (work, gear, gear.Pair!);
        var machine = work.Machine;
        var (a, b) = (machine.Members[gear.Drive.Driver].Joint, machine.Members[gear.Drive.Driven].Joint);
        var between = new CamPlane(a).Direction(b.Through - a.Through);
        var sameWay = Math.Sign(a.Along.Dot(b.Along));
        var toSecond = gear.DriverIsSecond ? -between : between;
        var second = Pair.SecondAngle(Up, toSecond.Angle);
        var (atDriver, atDriven) = gear.DriverIsSecond ? (second, Up) : (Up, second);
        var (radiusDriver, radiusDriven) = gear.DriverIsSecond ? (Pair.WorkingRadius2, Pair.WorkingRadius1) : (Pair.WorkingRadius1, Pair.WorkingRadius2);
        var (rateDriver, rateDriven) = (machine.Turns[gear.Drive.Driver]?.Value, machine.Turns[gear.Drive.Driven]?.Value * sameWay);

        // As they run: the driver's flanks touch, all the backlash is behind them.
        var sense = Math.Sign(rateDriven ?? 0);
        atDriven -= sense * Math.Max(0, Pair.NormalBacklash) / 2 / gear.DrivenGear!.BaseRadius;
        Driver = Of(gear.DriverGear!, gear.Drive.Driver, Point2.Origin, atDriver, rateDriver, 1, gear.Bores.Driver, radiusDriver, gear.DriverSector);
        Driven = Of(gear.DrivenGear, gear.Drive.Driven, Point2.Origin + between, atDriven, rateDriven, sameWay, gear.Bores.Driven, radiusDriven, gear.DrivenSector);

        // The line of action touches the first wheel's base circle behind the pitch point, seen in the sense in which it drives.
        var first = gear.DriverIsSecond ? Driven : Driver;
        var mesh = (Pair.Second.Inside ? -toSecond : toSecond).Unit();
        var side = (gear.DriverIsSecond ? -1 : 1) * (first.Rate < 0 ? -1 : 1);
        var (sin, cos) = Math.SinCos(Pair.WorkingPressureAngle);
        var start = first.Centre + Pair.First.BaseRadius * (cos * mesh - side * sin * mesh.Left);
        var along = sin * mesh + side * cos * mesh.Left;
        PitchPoint = first.Centre + Pair.WorkingRadius1 * mesh;
        var s = Pair.Line.PitchPoint;
        Contact = (start + (s - Pair.Approach) * along, start + (s + Pair.Recess) * along);
        var reach = 2 * gear.DriverGear!.Module;
        Action = (PitchPoint - (Pair.Approach + reach) * along, PitchPoint + (Pair.Recess + reach) * along);

        Wheel Of(SpurGear wheel, int member, Point2 centre, double at, double? rate, int way, double bore, double radius, SectorWork? cut) => new(
            wheel, machine.NameOf(member), centre, Proof.Deg(at), rate,
            rate is null ? Figure.Table(work.Proof.Motion.Of(member).ToArray().Select(q => way * Proof.Deg(q.Value))) : null,
            cut?.Sector is { } sector ? Path(sector, bore, way) : Path(wheel, bore), bore, radius, cut);
    }

    /// <summary>Where the first wheel's tooth with the timing mark stands at the start, rad: up, as it is cut.</summary>
    private const double Up = Math.PI / 2;

    /// <summary>What was worked out.</summary>
    public Work Work { get; }

    /// <summary>The pair in the machine.</summary>
    public GearWork Gear { get; }

    /// <summary>The pair in mesh.</summary>
    public SpurPair Pair { get; }

    /// <summary>The driver's wheel.</summary>
    public Wheel Driver { get; }

    /// <summary>The driven wheel.</summary>
    public Wheel Driven { get; }

    /// <summary>Where the pitch circles touch, mm.</summary>
    public Point2 PitchPoint { get; }

    /// <summary>Where teeth begin to touch and where they part, mm.</summary>
    public (Point2 From, Point2 To) Contact { get; }

    /// <summary>The line of action, a little beyond the contact, mm.</summary>
    public (Point2 From, Point2 To) Action { get; }

    /// <summary>Both wheels.</summary>
    public IReadOnlyList<Wheel> Both => [Driver, Driven];

    // The other wheel of a pair on axes that point apart is seen from behind.
    private static string Path(GearSector sector, double bore, int way) =>
        string.Concat(sector.Windows.Select(w => w.Reversed()).Prepend(sector.Outline()).Select(o => Figure.Loop(way < 0 ? o.Mirrored() : o))) + Figure.Hole(bore / 2);

    private static string? Path(SpurGear gear, double bore)
    {
        try
        {
            var teeth = Figure.Loop(GearOutline.Of(gear, Stray));
            return teeth + Figure.Hole(gear.Inside ? gear.RootRadius + Rim * gear.Module : bore / 2);
        }
        catch (ArgumentException)
        {
            // Teeth that undercut has cut through have no outline; the findings say so.
            return null;
        }
    }
}
