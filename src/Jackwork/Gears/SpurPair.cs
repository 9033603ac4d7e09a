using System.Collections.Immutable;

namespace Jackwork.Gears;

/// <summary>Two spur gears in mesh at a centre distance.</summary>
/// <remarks>
/// Z = z2 + z1, X = x2 + x1 outside; Z = z2 - z1, X = x2 - x1 for a ring. The centre distance at which teeth of full
/// thickness would fit without backlash:
///   inv(alpha_w) = inv(alpha) + 2 X tan(alpha)/Z,   a = m Z cos(alpha) / (2 cos(alpha_w)).
/// At the actual centre distance a':  cos(alpha_w') = m Z cos(alpha)/(2 a'),  r_w = rb/cos(alpha_w'); the backlash is what the
/// pitch on the working circles leaves beside both teeth:
///   j = 2 pi r_w1/z1 - s1(r_w1) - s2(r_w2),  along the line of action j_n = j cos(alpha_w').
/// Contact ratio: usable length of the line of action over the base pitch pi m cos(alpha).
/// Source: ISO 21771:2007, clauses 5 and 6; "Elements of Metric Gear Technology", section 4 (both from memory).
/// </remarks>
public sealed record SpurPair
{
    private readonly LineOfAction line;

    /// <summary>The pair at its nominal centre distance, or at the one given.</summary>
    /// <param name="first">The driving gear; not a ring.</param>
    /// <param name="second">The driven gear; may be a ring with more teeth.</param>
    /// <param name="centreDistance">Actual centre distance, mm; the nominal one when left out.</param>
    /// <exception cref="ArgumentException">The two cannot mesh: another module or pressure angle, or rings wrongly placed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No centre distance fits the shifts, or the one given is too short for the involutes
    /// to touch.</exception>
    public SpurPair(SpurGear first, SpurGear second, double? centreDistance = null)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Module != second.Module)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"The modules {first.Module} and {second.Module} mm differ."),
                nameof(second));
        }

        if (first.Rack.PressureAngle != second.Rack.PressureAngle)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"The pressure angles {first.Rack.PressureAngle} and {second.Rack.PressureAngle} rad differ."),
                nameof(second));
        }

        if (first.Inside || (second.Inside && second.Teeth <= first.Teeth))
        {
            throw new ArgumentException("A ring must come second and have more teeth than the pinion.", nameof(first));
        }

        (First, Second) = (first, second);
        var sign = second.Inside ? -1 : 1;
        var alpha = first.Rack.PressureAngle;
        var (teeth, shifts) = (second.Teeth + sign * first.Teeth, second.Shift + sign * first.Shift);
        ReferenceCentreDistance = 0.5 * first.Module * teeth;
        NominalPressureAngle = Involute.Inverse(Involute.Inv(alpha) + 2 * shifts * Math.Tan(alpha) / teeth);
        NominalCentreDistance = ReferenceCentreDistance * Math.Cos(alpha) / Math.Cos(NominalPressureAngle);
        if (!(NominalPressureAngle > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(second),
                second.Shift,
                FormattableString.Invariant(
                    $"No centre distance fits shifts of {shifts} modules together; they must come to more than {-0.5 * teeth * Involute.Inv(alpha) / Math.Tan(alpha)}."));
        }

        CentreDistance = centreDistance ?? NominalCentreDistance;
        line = new(first.BaseRadius, second.BaseRadius, CentreDistance, second.Inside);
        WorkingRadius1 = first.BaseRadius / Math.Cos(line.PressureAngle);
        WorkingRadius2 = second.BaseRadius / Math.Cos(line.PressureAngle);
        Backlash = WorkingRadius1 * first.Pitch - first.ToothThickness(WorkingRadius1) - second.ToothThickness(WorkingRadius2);

        // Contact starts at the root of the first gear, where the tip of the second one enters, and ends at the first's tip.
        SecondTipPosition = line.AtRadius2(second.TipRadius);
        var start = Math.Max(SecondTipPosition, line.AtRadius1(first.FormRadius));
        var firstTip = line.AtRadius1(first.TipRadius);
        var secondForm = line.AtRadius2(second.FormRadius);
        var end = Math.Min(firstTip, secondForm);
        (Approach, Recess) = (line.PitchPoint - start, end - line.PitchPoint);
        StartOfActiveProfile1 = line.Radius1At(SecondTipPosition);
        StartOfActiveProfile2 = line.Radius2At(firstTip);
        Findings = Judge();
    }

    /// <summary>The driving gear.</summary>
    public SpurGear First { get; }

    /// <summary>The driven gear.</summary>
    public SpurGear Second { get; }

    /// <summary>Centre distance m Z/2 of the unshifted gears, mm.</summary>
    public double ReferenceCentreDistance { get; }

    /// <summary>Centre distance without backlash but for the thinning, mm.</summary>
    public double NominalCentreDistance { get; }

    /// <summary>Working pressure angle at the nominal centre distance, rad.</summary>
    public double NominalPressureAngle { get; }

    /// <summary>Actual centre distance, mm.</summary>
    public double CentreDistance { get; }

    /// <summary>Working pressure angle at the actual centre distance, rad.</summary>
    public double WorkingPressureAngle => line.PressureAngle;

    /// <summary>Working pitch radius of the first gear, mm.</summary>
    public double WorkingRadius1 { get; }

    /// <summary>Working pitch radius of the second gear, mm.</summary>
    public double WorkingRadius2 { get; }

    /// <summary>Turns of the second per turn of the first; negative where they turn opposite ways.</summary>
    public double Ratio => (Second.Inside ? 1.0 : -1.0) * First.Teeth / Second.Teeth;

    /// <summary>Tip shortening that keeps the rack's bottom clearance on both gears at the nominal centre distance, mm: X m - (a - m
    /// Z/2), outside pairs.</summary>
    public double ClearanceShortening =>
        (Second.Shift + (Second.Inside ? -1 : 1) * First.Shift) * First.Module - (NominalCentreDistance - ReferenceCentreDistance);

    /// <summary>The line of action.</summary>
    public LineOfAction Line => line;

    /// <summary>Length of contact before the pitch point, mm along the line of action; negative where contact starts beyond it.</summary>
    public double Approach { get; }

    /// <summary>Length of contact after the pitch point, mm along the line of action.</summary>
    public double Recess { get; }

    /// <summary>Contact ratio, limited by tips, fillets and undercut.</summary>
    public double ContactRatio => (Approach + Recess) / (First.BaseRadius * First.Pitch);

    /// <summary>Contact ratio by the tip circles alone, as handbooks give it: that of gears whose flanks go all the way down.</summary>
    public double ContactRatioByTips => (line.AtRadius1(First.TipRadius) - SecondTipPosition) / (First.BaseRadius * First.Pitch);

    /// <summary>Circumferential backlash j at the working pitch circles, mm; negative where the teeth overlap.</summary>
    public double Backlash { get; }

    /// <summary>Normal backlash j_n along the line of action, mm.</summary>
    public double NormalBacklash => Backlash * Math.Cos(WorkingPressureAngle);

    /// <summary>Free turn of the second gear while the first is held, rad.</summary>
    public double BacklashAngle2 => NormalBacklash / Second.BaseRadius;

    /// <summary>Radius from which the first gear's flank must be true to serve the second's tip, mm; its base radius at the
    /// least.</summary>
    public double StartOfActiveProfile1 { get; }

    /// <summary>Radius from which the second gear's flank must be true to serve the first's tip, mm; for a ring, up to which.</summary>
    public double StartOfActiveProfile2 { get; }

    /// <summary>From the first gear's tip to the second's root circle on the line of centres, mm.</summary>
    public double TipClearance1 => Second.Inside
        ? Second.RootRadius - CentreDistance - First.TipRadius
        : CentreDistance - First.TipRadius - Second.RootRadius;

    /// <summary>From the second gear's tip to the first's root circle on the line of centres, mm.</summary>
    public double TipClearance2 => Second.Inside
        ? Second.TipRadius - CentreDistance - First.RootRadius
        : CentreDistance - Second.TipRadius - First.RootRadius;

    /// <summary>What is wrong with the pair; empty when nothing is.</summary>
    public ImmutableArray<MeshFinding> Findings { get; }

    private double SecondTipPosition { get; }

    /// <summary>Sum of shifts (second plus first; for a ring second less first) that makes <paramref name="centreDistance"/> the nominal
    /// one.</summary>
    /// <param name="module">Module, mm.</param>
    /// <param name="teeth">z2 + z1, or z2 - z1 for a ring.</param>
    /// <param name="pressureAngle">Pressure angle of the rack, rad.</param>
    /// <param name="centreDistance">Centre distance wanted, mm, above m Z cos(alpha)/2.</param>
    public static double ShiftSum(double module, int teeth, double pressureAngle, double centreDistance)
    {
        var least = 0.5 * module * teeth * Math.Cos(pressureAngle);
        if (!(centreDistance > least))
        {
            throw new ArgumentOutOfRangeException(
                nameof(centreDistance),
                centreDistance,
                FormattableString.Invariant($"The centre distance must be above {least} mm."));
        }

        var working = Math.Acos(least / centreDistance);
        return 0.5 * teeth * (Involute.Inv(working) - Involute.Inv(pressureAngle)) / Math.Tan(pressureAngle);
    }

    /// <summary>Angle of the second gear, rad, at which its teeth stand evenly between the first's.</summary>
    /// <remarks>Both angles are those of the tooth that lies on the x axis in the gear's own outline. The first gear's axis is the
    /// origin.</remarks>
    /// <param name="firstAngle">Angle of the first gear, rad.</param>
    /// <param name="towardSecond">Direction from the first axis to the second, rad.</param>
    public double SecondAngle(double firstAngle, double towardSecond = 0)
    {
        // Seen from the second axis the mesh lies back towards the first; a ring's mesh lies beyond the pinion, the same way.
        var mesh = Second.Inside ? towardSecond + Math.PI : towardSecond;
        return towardSecond + Math.PI + 0.5 * Second.Pitch + (firstAngle - mesh) * Ratio;
    }

    private ImmutableArray<MeshFinding> Judge()
    {
        var found = ImmutableArray.CreateBuilder<MeshFinding>();
        void Below(MeshFault fault, int gear, double measured, double limit)
        {
            if (measured < limit)
            {
                found.Add(new(fault, gear, measured, limit));
            }
        }

        Below(MeshFault.ContactRatioBelowOne, 0, ContactRatio, 1);
        Below(MeshFault.NoBacklash, 0, NormalBacklash, -OverlapMm);
        Below(MeshFault.NoTipClearance, 1, TipClearance1, 0);
        Below(MeshFault.NoTipClearance, 2, TipClearance2, 0);
        JudgeFoot(1, First, SecondTipPosition, StartOfActiveProfile1);
        var beyond2 = Second.Inside ? 0 : line.AtRadius2(Second.BaseRadius) - line.AtRadius1(First.TipRadius);
        JudgeFoot(2, Second, beyond2, StartOfActiveProfile2);
        foreach (var (i, g) in ((int, SpurGear)[])[(1, First), (2, Second)])
        {
            if (g.IsPointed)
            {
                found.Add(new(MeshFault.PointedTip, i, g.PointedRadius, g.NominalTipRadius));
            }
        }

        if (Second.Inside)
        {
            Below(MeshFault.TipsCollide, 0, RingMesh.TipGap(First, Second, CentreDistance, WorkingPressureAngle), 0);
            Below(MeshFault.NoRadialAssembly, 0, RingMesh.AssemblyGap(First, Second), 0);
        }

        return found.ToImmutable();

        void JudgeFoot(int i, SpurGear gear, double beyondBase, double start)
        {
            var missing = gear.Inside ? start - gear.FormRadius : gear.FormRadius - start;
            // Where the gear is undercut the rack has cleared the way for an outside mate's tip; contact is lost, nothing
            // strikes. A ring's tip swings deeper into the foot than a rack's does.
            var cleared = gear.IsUndercut && !Second.Inside;
            if (beyondBase < 0 && !cleared)
            {
                found.Add(new(MeshFault.TipBeyondBase, i, beyondBase, 0));
            }
            else if (missing > OverlapMm)
            {
                found.Add(new(cleared ? MeshFault.UndercutShortensContact : MeshFault.TipMeetsFillet, i, start, gear.FormRadius));
            }
        }
    }

    /// <summary>Overlap, mm, below which flanks or fillets count as just touching: rounding, far below any cut.</summary>
    private const double OverlapMm = 1e-9;
}
