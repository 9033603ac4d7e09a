using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Pins;

namespace Jackwork.PartialGears;

/// <summary>A driver with teeth on part of its rim, the wheel that it turns on, and the rim and disc that lock it.</summary>
/// <remarks>
/// <para>The motion is that of <see cref="IntermittentLaw"/> with teeth for pins (<see cref="ToothPair"/>): the wheel stands where the driver's last tooth, going over the tip of its flank, has left it,
/// and each turn carries it on by N - 1 + m teeth, m of which wait within reach of the first.</para>
/// <para>The first tooth must come in between two waiting teeth. At the driven's tip circle the corner of the one that it picks up stands  w - W  past the place where the two tip circles cross,
/// the front corner of the one behind  -(Y0 + s) - (w - t)  short of it. Shortening the first tooth moves that place towards the line of centres; it is shortened until both are a third of a module.
/// The tooth that it then picks up may wait before the line of action, and is struck at more than its even speed; shortened farther the first tooth passes over that one and
/// takes the next, flank on flank at the even speed: the least shortening that does so is chosen.</para>
/// <para>The lock turns in a plane beside the teeth: rim of radius r1, disc of radius r2 + 2 m, see <see cref="ParallelLock"/>. The driver's plate without teeth is its root circle, which clears
/// the wheel's tips all round. Proportions are common practice, no source.</para>
/// </remarks>
public sealed record PartialGear
{
    /// <summary>Room for a tip corner on either side at pick-up that is aimed at, modules.</summary>
    private const double WantedRoom = 1.0 / 3;

    /// <summary>The farthest that a first tooth is shortened by, and the steps tried, modules.</summary>
    private const double MostShort = 1.4, Tried = 0.02;

    /// <summary>How much faster than its even speed the wheel may be picked up by choice, and a difference of that which is none.</summary>
    private const double Gentle = 1.1, Gentler = 1e-6;

    /// <summary>By how much the disc stands out beyond the pitch circle, modules.</summary>
    private const double DiscModules = 2;

    /// <summary>Places of the drive at which the horns are looked at.</summary>
    private const int Looked = 720;

    private PartialGear(SpurPair pair, SpurGear first, IntermittentLaw law) => (Pair, First, Law) = (pair, first, law);

    /// <summary>The two wheels as if both had all their teeth, the driver's first.</summary>
    public SpurPair Pair { get; }

    /// <summary>The wheel of which the driver's first tooth is one: its tip is shortened.</summary>
    public SpurGear First { get; }

    /// <summary>How it goes.</summary>
    public IntermittentLaw Law { get; }

    /// <summary>By how much the first tooth is shortened, mm.</summary>
    public double Shortened => Pair.First.TipRadius - First.TipRadius;

    /// <summary>Least room of a tip corner from the first tooth's corner at pick-up, as an arc of the driven's tip circle, mm; below 0 tooth lands on tooth.</summary>
    public double PickUpRoom
    {
        get
        {
            var first = (ToothPair)Law.First;
            return Pair.Second.TipRadius * Math.Min(Law.Waits - first.Wedge, Law.DrivenPitch - Law.Waits - first.Reach - first.Thick.Driven);
        }
    }

    /// <summary>Speed ratio just after pick-up.</summary>
    public double PickUp => Law.Driven(Jet.Variable(0)).First;

    /// <summary>Speed ratio while flank drives flank.</summary>
    public double Even => Pair.First.BaseRadius / Pair.Second.BaseRadius;

    /// <summary>The lock with a clearance, mm.</summary>
    public ParallelLock Lock(double clearance)
    {
        var stops = Law.DrivenPins / (int)System.Numerics.BigInteger.GreatestCommonDivisor(Law.DrivenPins, Law.Steps);
        return new(Pair.CentreDistance, Pair.WorkingRadius1, clearance, Pair.WorkingRadius2 + DiscModules * Pair.First.Module) { Stops = stops, Drives = Law.Drives };
    }

    /// <summary>The teeth for what is wanted; null where the driver would need more than it has room for, or its first tooth can't come in.</summary>
    /// <param name="driver">The driver's wheel as if it had all its teeth.</param>
    /// <param name="driven">The driven wheel.</param>
    /// <param name="distance">Distance of the axes, mm.</param>
    /// <param name="steps">Teeth by which the driven goes on for each turn.</param>
    /// <param name="shorten">How far the first tooth is shortened, mm; null to find it.</param>
    public static PartialGear? Of(SpurGear driver, SpurGear driven, double distance, int steps, double? shorten)
    {
        var pair = new SpurPair(driver, driven, distance);
        if (shorten is { } given)
        {
            return Of(pair, given, steps);
        }

        // From the full tooth on: the first that enters with room and gently; failing that the gentlest with room, or the one with most room.
        PartialGear? gentlest = null, roomiest = null;
        for (var i = 0; i * Tried <= MostShort; i++)
        {
            if (Of(pair, i * Tried * driver.Module, steps) is not { Law: { IsClear: true, IsUnbroken: true } } gear)
            {
                continue;
            }

            roomiest = roomiest is null || gear.PickUpRoom > roomiest.PickUpRoom ? gear : roomiest;
            if (gear.PickUpRoom >= WantedRoom * driver.Module)
            {
                gentlest = gentlest is null || gear.PickUp < gentlest.PickUp - Gentler * gear.Even ? gear : gentlest;
                if (gear.PickUp <= Gentle * gear.Even)
                {
                    return gear;
                }
            }
        }

        return gentlest ?? roomiest ?? Of(pair, 0, steps);
    }

    private static PartialGear? Of(SpurPair pair, double shorten, int steps)
    {
        var whole = pair.First;
        if (whole.TipRadius - shorten <= Math.Max(whole.RootRadius, whole.BaseRadius))
        {
            return null;
        }

        var first = new SpurGear(whole.Module, whole.Teeth, whole.Shift, whole.Rack, whole.Thinning, whole.NominalTipRadius - whole.TipRadius + shorten);
        var (one, others) = (new ToothPair(new SpurPair(first, pair.Second, pair.CentreDistance)), new ToothPair(pair));
        if (one.Ends <= one.Begins || others.Ends <= others.Begins || !(one.Driven(Jet.Variable(one.ReachAt)).First > 0) || !(others.Driven(Jet.Variable(others.ReachAt)).First > 0))
        {
            return null;
        }

        // How many wait does not depend on how many the driver has.
        var waiting = new IntermittentLaw(one, others, 2, whole.Pitch, pair.Second.Teeth, 0).Spaces;
        var teeth = steps + 1 - waiting;
        return teeth < 2 || new IntermittentLaw(one, others, teeth, whole.Pitch, pair.Second.Teeth, 0) is not { Picks: true } law || law.Drives > 2 * Math.PI - whole.Pitch
            ? null
            : new(pair, first, law);
    }

    /// <summary>The driver's plate at pick-up, seen as <see cref="PinLock"/> says.</summary>
    public Outline DriverPlate()
    {
        var (root, n) = (Pair.First.RootRadius, Law.DriverPins);
        var (full, entering) = (Tooth(Pair.First), Tooth(First));
        var path = new LoopPath(full[0].Start.Turned(Middle(n - 1)));
        for (var i = n - 1; i >= 0; i--)
        {
            var tooth = i == 0 ? entering : full;
            path.Round(Point2.Origin, tooth[0].Start.Turned(Middle(i)));
            foreach (var s in tooth)
            {
                path.Add(s.Turned(Middle(i)));
            }
        }

        path.Round(Point2.Origin, full[0].Start.Turned(Middle(n - 1)));
        return path.Close();

        double Middle(int i) => Law.PinAt(i) - Law.Others.Thick.Driver / 2;
        List<Segment> Tooth(SpurGear gear) => ToothedRim.Tooth(GearOutline.Side(gear, Tolerance), gear.TipRadius);
    }

    /// <summary>The driven wheel at pick-up, seen as <see cref="PinLock"/> says.</summary>
    public Outline Wheel() => GearOutline.Of(Pair.Second, Tolerance).Turned(-Law.Waits - Law.Others.Thick.Driven / 2);

    /// <summary>Greatest distance of an outline from the true flanks, mm.</summary>
    private const double Tolerance = 0.005;

    /// <summary>Least room, mm, between the ends of the locking rim and the horns of the hollow that move past them while it drives; below 0 they strike.</summary>
    /// <remarks>The rim's rear end goes ahead of the lower horn at pick-up, its front end comes up behind the upper horn at let-go; each is looked at while the horn lies within the rim's radius.</remarks>
    public double HornRoom(ParallelLock held)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i <= Looked; i++)
        {
            var a = Law.Drives * i / Looked;
            var b = i == Looked ? Law.Step : Law.Driven(Jet.Constant(a)).Value;
            if (Seen(b - held.HalfStop) is var (low, at) && low < held.Rim)
            {
                least = Math.Min(least, (a - at) * low);
            }

            if (Seen(b - Law.Step + held.HalfStop) is var (high, from) && high < held.Rim)
            {
                least = Math.Min(least, (from - (a - Law.Drives)) * high);
            }
        }

        return least;

        // A horn at an angle past the line of centres, seen from the driver's axis.
        (double Distance, double Angle) Seen(double horn)
        {
            var v = new Vec2(held.CentreDistance - held.Disc * Math.Cos(horn), held.Disc * Math.Sin(horn));
            return Math.Abs(horn) < Math.PI / 2 ? (v.Length, v.Angle) : (double.PositiveInfinity, 0);
        }
    }
}
