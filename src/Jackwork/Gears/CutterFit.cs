using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>What keeps a cutter from the rest of a flank.</summary>
public enum CutterLimit
{
    /// <summary>Nothing: it reaches the whole flank, down to the gear's own form radius.</summary>
    None,

    /// <summary>The opposite flank: its centre has come to the middle line of the gap.</summary>
    Gap,

    /// <summary>The root circle, which it touches.</summary>
    Root,
}

/// <summary>Whether a flank as cut serves its mate.</summary>
/// <param name="FormRadius">Radius from which the flank as cut is true (ring: up to which), mm.</param>
/// <param name="Required">Radius from which the mate needs it true (ring: up to which), mm.</param>
/// <param name="Margin">Flank to spare, mm of radius; negative where it is short.</param>
public readonly record struct CutFlank(double FormRadius, double Required, double Margin)
{
    /// <summary>Whether the mate's tip runs on true flank all the way.</summary>
    public bool RunsFreely => Margin >= 0;
}

/// <summary>How much of a gear's outline a round cutter can cut.</summary>
/// <remarks>
/// A cutter of radius c touching the flank at the roll angle u has its centre on the parallel involute, at the roll angle
/// v = u + c/rb (ring: u - c/rb), the radius rb sqrt(1 + v^2) and the polar angle b + c/rb - (v - atan(v)) (ring: b - c/rb - ...).
/// Outside, the centre must not pass the middle of the gap, pi/z, nor come nearer the axis than r_f + c; in a ring, not pass 0
/// nor go beyond r_f - c. The fillet of the outline is no bound: a cutter may round it otherwise. Both bounds on v move the one way, so
/// the flank as cut ends where the first of them is met.
/// Cutters in the middle of the gap that touch the root circle there lie each inside the next larger one, so the largest that
/// clears the outline is found by halving.
/// Source: geometry of the parallel involute, ISO 21771:2007 clause 4; the bounds are ours.
/// </remarks>
public readonly record struct CutterFit
{
    /// <summary>Halvings in the searches for the largest cutter and the furthest reach: the bracket shrinks to rounding.</summary>
    private const int Halvings = 60;

    /// <summary>Tolerance of the outline the cutter is tried against, and the bite into it that counts as touching, mm.</summary>
    private const double OutlineMm = 1e-5;

    /// <summary>What a cutter of <paramref name="cutterDiameter"/> mm does in the gaps of <paramref name="gear"/>.</summary>
    public CutterFit(SpurGear gear, double cutterDiameter)
    {
        ArgumentNullException.ThrowIfNull(gear);
        if (!(cutterDiameter > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(cutterDiameter), cutterDiameter, "The cutter's diameter must be above 0 mm.");
        }

        CutterDiameter = cutterDiameter;
        IsRing = gear.Inside;
        var (rb, c) = (gear.BaseRadius, 0.5 * cutterDiameter);
        var sign = gear.Inside ? -1 : 1;
        var step = sign * c / rb;
        var vGap = Involute.RollAngle(gear.Inside ? gear.BaseAngle + step : Math.Max(0, gear.BaseAngle + step - 0.5 * gear.Pitch));
        var vRoot = Involute.RollAt(Math.Max(rb, gear.RootRadius + sign * c), rb);

        // Along the flank towards the root u falls outside and rises in a ring; sign turns both into one comparison.
        var u = gear.FormRoll;
        Limit = CutterLimit.None;
        foreach (var (v, limit) in ((double, CutterLimit)[])[(vGap, CutterLimit.Gap), (vRoot, CutterLimit.Root)])
        {
            if (sign * (v - step - u) > 0)
            {
                (u, Limit) = (v - step, limit);
            }
        }

        EntersGap = sign * (gear.TipRoll - u) > 0;
        FormRadius = Involute.RadiusAt(Math.Max(0, u), rb);
        ReachedRadius = EntersGap ? Reach(gear, c) : gear.TipRadius;
    }

    /// <summary>Diameter of the cutter, mm.</summary>
    public double CutterDiameter { get; }

    /// <summary>True where the gear is a ring.</summary>
    public bool IsRing { get; }

    /// <summary>Radius from which the flank can be cut true without gouging the opposite flank or the root (ring: up to which),
    /// mm.</summary>
    public double FormRadius { get; }

    /// <summary>Radius the cutter's edge reaches in the middle of the gap, mm; the root radius where it gets that far, the tip radius
    /// where it does not enter.</summary>
    public double ReachedRadius { get; }

    /// <summary>What ends the flank as cut.</summary>
    public CutterLimit Limit { get; }

    /// <summary>Whether the cutter gets into the gap at all: false where it could not even touch a flank at the tip.</summary>
    public bool EntersGap { get; }

    /// <summary>Diameter of the largest cutter that passes the gap down to the root circle without cutting into the outline, mm.</summary>
    public static double Largest(SpurGear gear)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var side = GearOutline.Side(gear, OutlineMm);
        return 2 * Furthest(0, gear.ReferenceRadius, c => Clears(gear, side, gear.RootRadius, c));
    }

    /// <summary>Compares the flank as cut with what the mate needs.</summary>
    /// <param name="startOfActiveProfile">From <see cref="SpurPair.StartOfActiveProfile1"/> or its like, mm.</param>
    public CutFlank Against(double startOfActiveProfile) =>
        new(FormRadius, startOfActiveProfile, IsRing ? FormRadius - startOfActiveProfile : startOfActiveProfile - FormRadius);

    // The nearest to the root circle that a cutter of radius c gets in the middle of the gap.
    private static double Reach(SpurGear gear, double c)
    {
        var side = GearOutline.Side(gear, OutlineMm);
        return Clears(gear, side, gear.RootRadius, c)
            ? gear.RootRadius
            : Furthest(gear.TipRadius, gear.RootRadius, r => Clears(gear, side, r, c));
    }

    private static bool Clears(SpurGear gear, List<Segment> side, double edge, double c)
    {
        var centre = Point2.Origin + (gear.Inside ? edge - c : edge + c) * Vec2.FromAngle(gear.Inside ? 0 : 0.5 * gear.Pitch);
        return side.All(s => s.DistanceTo(centre) >= c - OutlineMm);
    }

    // The furthest from good towards bad that still passes.
    private static double Furthest(double good, double bad, Func<double, bool> passes)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (good + bad);
            (good, bad) = passes(middle) ? (middle, bad) : (good, middle);
        }

        return good;
    }
}
