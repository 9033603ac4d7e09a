namespace Jackwork.Gears;

/// <summary>A straight-toothed involute gear, outside or ring, by its nominal figures.</summary>
/// <remarks>
/// r = m z/2, rb = r cos(alpha). The rack that defines the flanks stands the shift x m outside the reference circle, for a
/// ring as well, so that the tooth space of a ring is the tooth of an outside gear with the same x. Arc thickness at the
/// reference circle, with the thinning t:
///   outside  s = m (pi/2 + 2 x tan(alpha)) - t,  r_a = r + (ha + x) m - k,  r_f = r - (hf - x) m;
///   ring     s = m (pi/2 - 2 x tan(alpha)) - t,  r_a = r - (ha - x) m + k,  r_f = r + (hf + x) m.
/// At the radius R the tooth subtends  s/r +- 2 (inv(alpha) - inv(alpha_R)), upper sign outside; cos(alpha_R) = rb/R.
/// Source: ISO 21771:2007, clauses 4 and 6 (from memory), with the ring's shift signed as in "Elements of Metric Gear Technology".
/// </remarks>
public sealed record SpurGear
{
    /// <summary>Fewest teeth accepted: below this a full-depth tooth has no useful flank.</summary>
    public const int FewestTeeth = 5;

    /// <summary>A gear by its nominal figures.</summary>
    /// <param name="module">Reference diameter per tooth, mm, above 0.</param>
    /// <param name="teeth">Number of teeth, at least <see cref="FewestTeeth"/>.</param>
    /// <param name="shift">Profile shift x, in modules, outwards positive, for a ring as well.</param>
    /// <param name="rack">Basic rack; ISO 53 profile A when left out.</param>
    /// <param name="thinning">Taken off the tooth for backlash, as arc at the reference circle, mm, not negative.</param>
    /// <param name="tipShortening">Taken off the tooth's height at the tip, mm; negative makes it taller.</param>
    /// <param name="inside">True for a ring with its teeth inside.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of its range, or teeth with no height or no thickness.</exception>
    public SpurGear(
        double module,
        int teeth,
        double shift = 0,
        BasicRack? rack = null,
        double thinning = 0,
        double tipShortening = 0,
        bool inside = false)
    {
        Require(module > 0 && double.IsFinite(module), nameof(module), module, "The module must be above 0 mm.");
        Require(teeth >= FewestTeeth, nameof(teeth), teeth, $"A gear needs at least {FewestTeeth} teeth.");
        Require(double.IsFinite(shift), nameof(shift), shift, "The profile shift must be a number of modules.");
        Require(thinning >= 0 && double.IsFinite(thinning), nameof(thinning), thinning, "The thinning must not be below 0 mm.");
        Require(double.IsFinite(tipShortening), nameof(tipShortening), tipShortening, "The tip shortening must be a length in mm.");
        (Module, Teeth, Inside) = (module, teeth, inside);
        (Shift, Thinning, TipShortening) = (shift, thinning, tipShortening);
        Rack = rack ?? BasicRack.A;

        var alpha = Rack.PressureAngle;
        ReferenceRadius = 0.5 * module * teeth;
        BaseRadius = ReferenceRadius * Math.Cos(alpha);
        var fullness = (module * (Math.PI / 2 + 2 * shift * Math.Tan(alpha)) + (inside ? thinning : -thinning)) / ReferenceRadius;
        BaseAngle = 0.5 * fullness + Involute.Inv(alpha);
        Require(
            fullness > 0 && fullness < Pitch,
            nameof(shift),
            shift,
            FormattableString.Invariant(
                $"With a thinning of {thinning} mm, tooth (ring: space) would take {fullness / Pitch} of the pitch at the reference circle; it must be between 0 and 1."));

        PointedRadius = BaseRadius / Math.Cos(Involute.Inverse(BaseAngle));
        if (inside)
        {
            TipRadius = Math.Max(NominalTipRadius, BaseRadius);
            RootRadius = Math.Min(ReferenceRadius + (Rack.Dedendum + shift) * module, PointedRadius);
            FormRadius = Involute.RadiusAt(RingFillet.RollMeet, BaseRadius);
        }
        else
        {
            TipRadius = Math.Min(NominalTipRadius, PointedRadius);
            RootRadius = ReferenceRadius - (Rack.Dedendum - shift) * module;
            FormRadius = Involute.RadiusAt(RackCut.RollMeet, BaseRadius);
            IsUndercut = RackCut.IsUndercut;
        }

        Require(RootRadius > 0, nameof(teeth), teeth, "So few teeth that the spaces reach the gear's axis; the root radius must be above 0 mm.");
        Require(
            inside ? RootRadius > TipRadius : TipRadius > RootRadius,
            nameof(tipShortening),
            tipShortening,
            FormattableString.Invariant($"No height is left between the root radius of {RootRadius} mm and the tip radius of {TipRadius} mm."));
    }

    /// <summary>Module m, mm.</summary>
    public double Module { get; }

    /// <summary>Number of teeth z.</summary>
    public int Teeth { get; }

    /// <summary>Profile shift x, modules.</summary>
    public double Shift { get; }

    /// <summary>Basic rack.</summary>
    public BasicRack Rack { get; }

    /// <summary>Thinning of the tooth at the reference circle, mm.</summary>
    public double Thinning { get; }

    /// <summary>Tip shortening k, mm.</summary>
    public double TipShortening { get; }

    /// <summary>True for a ring.</summary>
    public bool Inside { get; }

    /// <summary>Reference radius r, mm.</summary>
    public double ReferenceRadius { get; }

    /// <summary>Base radius rb, mm.</summary>
    public double BaseRadius { get; }

    /// <summary>Root radius r_f, mm; for a ring less where its spaces close before.</summary>
    public double RootRadius { get; }

    /// <summary>Tip radius as it can be made, mm: the nominal one, or where the flanks meet (outside) or end on the base circle
    /// (ring).</summary>
    public double TipRadius { get; }

    /// <summary>Tip radius by the nominal figures, mm.</summary>
    public double NominalTipRadius => Inside
        ? ReferenceRadius - (Rack.Addendum - Shift) * Module + TipShortening
        : ReferenceRadius + (Rack.Addendum + Shift) * Module - TipShortening;

    /// <summary>Radius at which the two flanks of an outside tooth, or of a ring's space, would meet, mm.</summary>
    public double PointedRadius { get; }

    /// <summary>Whether the flanks of an outside tooth meet below the nominal tip circle.</summary>
    public bool IsPointed => !Inside && NominalTipRadius >= PointedRadius;

    /// <summary>Radius at which the involute meets the root fillet, mm: the innermost of an outside flank, the outermost of a
    /// ring's.</summary>
    public double FormRadius { get; }

    /// <summary>Whether generation by the rack cuts away part of the involute.</summary>
    public bool IsUndercut { get; }

    /// <summary>Angle between two teeth, rad.</summary>
    public double Pitch => 2 * Math.PI / Teeth;

    /// <summary>Arc thickness of the tooth at the reference circle, mm.</summary>
    public double ReferenceThickness => ToothThickness(ReferenceRadius);

    /// <summary>Arc thickness of the tooth at its tip, mm; 0 where it is pointed.</summary>
    public double TipThickness => Math.Max(0, ToothThickness(TipRadius));

    /// <summary>Least profile shift without undercut by the rack, modules: the straight depth of the rack less z sin(alpha)^2/2.</summary>
    public double UndercutShift => ToothLimits.LeastShift(Teeth, Rack);

    /// <summary>Half the angle, at the base circle, of an outside tooth or of a ring's space, rad.</summary>
    internal double BaseAngle { get; }

    /// <summary>The foot of an outside gear's tooth.</summary>
    internal RackCut RackCut => new(Module, Teeth, Shift, Thinning, Rack, BaseAngle);

    /// <summary>The foot of a ring's space.</summary>
    internal RingFillet RingFillet => new(RootRadius, BaseRadius, BaseAngle, Rack.FilletRadius * Module);

    /// <summary>Roll angle of the flank at the tip, rad.</summary>
    internal double TipRoll => Involute.RollAt(TipRadius, BaseRadius);

    /// <summary>Roll angle of the flank where it meets the root fillet, rad.</summary>
    internal double FormRoll => Involute.RollAt(FormRadius, BaseRadius);

    /// <summary>Arc thickness of the tooth between its involutes, continued if need be, at the radius <paramref name="radius"/>, mm;
    /// negative beyond the point.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The radius is below the base radius, where there is no involute.</exception>
    public double ToothThickness(double radius)
    {
        Require(
            radius >= BaseRadius,
            nameof(radius),
            radius,
            FormattableString.Invariant($"The radius must not be below the base radius of {BaseRadius} mm."));
        var half = BaseAngle - Involute.InvOfRoll(Involute.RollAt(radius, BaseRadius));
        return 2 * radius * (Inside ? Math.PI / Teeth - half : half);
    }

    private static void Require(bool holds, string name, object value, string message)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(name, value, message);
        }
    }
}
