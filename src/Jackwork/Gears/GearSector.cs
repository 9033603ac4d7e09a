using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>A sector of an outside gear: some of its teeth on a fan-shaped plate about its axis, tooth 0 with its middle on the x axis.</summary>
/// <remarks>
/// <para>The root circle r_f runs on by one pitch from the middles of the outermost teeth to the angles b1 and b2. From there straight sides go down to the boss of radius R, which they touch at
/// b1 - g and b2 + g,  cos(g) = R/r_f. The corners are rounded, the round ones of the root circle by c = 0.4 of a pitch along it, so that they end before the gap of the outermost tooth does.
/// All of it lies within the root circle, but for the teeth: the sector is a part of the whole wheel, and what clears that clears the sector.</para>
/// <para>The boss must show between the two sides, which leaves room for at most  (2 pi - 2 g)/p - 1  teeth. Common practice, no source.</para>
/// </remarks>
public sealed record GearSector
{
    /// <summary>Radius of a corner, in pitches along the root circle.</summary>
    private const double CornerPitches = 0.4;

    /// <summary>The widest window, rad: a wider one is parted by arms.</summary>
    private const double WidestWindow = Math.PI / 3;

    private readonly ImmutableArray<Segment> tooth;

    private GearSector(SpurGear gear, int first, int last, double boss, (double Rim, double Arm)? window, double cutter)
    {
        (Gear, First, Last, Boss) = (gear, first, last, boss);
        tooth = [.. ToothedRim.Tooth(GearOutline.Side(gear, Tolerance), gear.TipRadius)];
        Corner = CornerOf(gear);
        var (root, p) = (gear.RootRadius, gear.Pitch);
        (From, To) = ((first - 1) * p, (last + 1) * p);
        (Behind, Ahead) = (FanSide.Touching(boss, root, From, false), FanSide.Touching(boss, root, To, true));
        Windows = window is var (rim, arm) ? [.. Open(rim, arm, Math.Max(Corner, cutter / 2))] : [];
    }

    /// <summary>Greatest distance of the outline from the true flanks, mm.</summary>
    private const double Tolerance = 0.005;

    /// <summary>The whole gear.</summary>
    public SpurGear Gear { get; }

    /// <summary>Number of the first tooth, counter-clockwise from tooth 0.</summary>
    public int First { get; }

    /// <summary>Number of the last tooth.</summary>
    public int Last { get; }

    /// <summary>Teeth that are cut.</summary>
    public int Teeth => Last - First + 1;

    /// <summary>Radius of the boss R, mm.</summary>
    public double Boss { get; }

    /// <summary>Radius of the outer corners c, mm.</summary>
    public double Corner { get; }

    /// <summary>Angle b1 at which the root circle begins, rad.</summary>
    public double From { get; }

    /// <summary>Angle b2 at which it ends, rad.</summary>
    public double To { get; }

    /// <summary>Windows in the plate, each counter-clockwise.</summary>
    public ImmutableArray<Outline> Windows { get; }

    private FanSide Behind { get; }

    private FanSide Ahead { get; }

    /// <summary>The most teeth that a sector with such a boss can have; below 1 where the boss leaves no room for a plate.</summary>
    public static int MostTeeth(SpurGear gear, double boss) =>
        boss > gear.RootRadius - 2 * CornerOf(gear) ? 0 : (int)Math.Ceiling((2 * Math.PI - 2 * Math.Acos(boss / gear.RootRadius)) / gear.Pitch - 1) - 1;

    /// <summary>A sector; its windows are left out where there is no room for them.</summary>
    /// <param name="gear">The whole gear, not a ring.</param>
    /// <param name="first">Number of the first tooth.</param>
    /// <param name="last">Number of the last, at least <paramref name="first"/> and for no more than <see cref="MostTeeth"/>.</param>
    /// <param name="boss">Radius of the boss, mm.</param>
    /// <param name="window">Wood behind the gaps and width of the arms about windows, mm; null for none.</param>
    /// <param name="cutter">Diameter of the cutter, mm, which the windows' corners must take.</param>
    /// <exception cref="ArgumentException">A ring, more teeth than there is room for, or teeth that undercut cuts through.</exception>
    public static GearSector Of(SpurGear gear, int first, int last, double boss, (double Rim, double Arm)? window = null, double cutter = 0)
    {
        ArgumentNullException.ThrowIfNull(gear);
        if (gear.Inside || last < first || last - first + 1 > MostTeeth(gear, boss))
        {
            throw new ArgumentException(FormattableString.Invariant($"A sector of {last - first + 1} teeth; there is room for 1 to {MostTeeth(gear, boss)} of an outside gear."), nameof(last));
        }

        return new(gear, first, last, boss, window, cutter);
    }

    /// <summary>The outside of the plate, teeth and all, counter-clockwise.</summary>
    public Outline Outline()
    {
        var path = Begin();
        for (var k = First; k <= Last; k++)
        {
            path.Arc(Point2.Origin, tooth[0].Start.Turned(k * Gear.Pitch));
            foreach (var s in tooth)
            {
                path.Add(s.Turned(k * Gear.Pitch));
            }
        }

        return End(path);
    }

    /// <summary>The outside with the teeth and their gaps filled to the tip circle: what clears that clears the sector.</summary>
    public Outline Shell()
    {
        var path = Begin();
        var (from, to) = (Vec2.FromAngle((First - 0.5) * Gear.Pitch), Vec2.FromAngle((Last + 0.5) * Gear.Pitch));
        path.Arc(Point2.Origin, Point2.Origin + Gear.RootRadius * from);
        path.Line(Point2.Origin + Gear.TipRadius * from);
        path.Round(Point2.Origin, Point2.Origin + Gear.TipRadius * to);
        path.Line(Point2.Origin + Gear.RootRadius * to);
        return End(path);
    }

    private static double CornerOf(SpurGear gear) => CornerPitches * gear.Pitch * gear.RootRadius;

    // Where the root circle begins, past the corner of the clockwise side.
    private LoopPath Begin() => new(Point2.Origin + Gear.RootRadius * CornerAt(Behind).FromOrigin.Unit());

    private Outline End(LoopPath path)
    {
        var (ahead, behind) = (CornerAt(Ahead), CornerAt(Behind));
        path.Arc(Point2.Origin, Point2.Origin + Gear.RootRadius * ahead.FromOrigin.Unit());
        path.Arc(ahead, ahead + Corner * Ahead.Normal);
        path.Line(Point2.Origin + Boss * Ahead.Normal);
        path.Round(Point2.Origin, Point2.Origin + Boss * Behind.Normal);
        path.Line(behind + Corner * Behind.Normal);
        path.Arc(behind, Point2.Origin + Gear.RootRadius * behind.FromOrigin.Unit());
        return path.Close();
    }

    private Point2 CornerAt(FanSide side) => side.Inset(Corner).At(Gear.RootRadius - Corner);

    // Windows between the sides, with arms half way, a third of the way, ... where they are wide.
    private IEnumerable<Outline> Open(double rim, double arm, double corner)
    {
        var n = (int)Math.Ceiling((To - From) / WidestWindow);
        for (var i = 0; i < n; i++)
        {
            double At(int k) => From + (To - From) * k / n;
            var behind = i == 0 ? Behind.Inset(arm) : FanSide.OfArm(At(i), arm, false);
            var ahead = i == n - 1 ? Ahead.Inset(arm) : FanSide.OfArm(At(i + 1), arm, true);
            if (FanWindow.Of(behind, ahead, Boss, Gear.RootRadius - rim, corner) is { } window)
            {
                yield return window;
            }
        }
    }
}
