using Jackwork.Motion;

namespace Jackwork.Lanterns;

/// <summary>The sizes of a toothed wheel and the lantern whose pins it meshes with, mm.</summary>
/// <remarks>
/// <para>z1 teeth, z2 pins of diameter d on shafts C apart: module m = 2 C/(z1 + z2), pitch p = pi m, R = m z1/2, r = m z2/2. Each tooth is thinned by j along the pitch circle,
/// half of it on either side, so that a pin has that much room between two teeth.</para>
/// <para>Contact is on one side of the line of centres only, from phi0 to the tip's phi: contact ratio (phi_tip - phi0) z2/(2 pi). Two flanks of a tooth meet in a point where the
/// flank's polar angle is pi/z1 - j/(2 R). Teeth are as tall as <see cref="TipShare"/> of that unless given.</para>
/// <para>Between teeth the flanks end on the pitch circle, go straight in by <see cref="RootShare"/> of a pin and round a half circle.</para>
/// <para>Source: see <see cref="LanternFlank"/>.</para>
/// </remarks>
public sealed record LanternSizes
{
    /// <summary>Height of the teeth over that at which they come to a point; as for wheels of clocks (British Standard 978 part 2, practical addendum factor, from memory).</summary>
    public const double TipShare = 0.95;

    /// <summary>Depth of the straight part of a gap over the pin's diameter (common practice, no source).</summary>
    public const double RootShare = 0.1;

    /// <summary>Thinning unless given, mm: what wood wants to run free (common practice, no source).</summary>
    public const double UsualThinning = 0.2;

    /// <summary>Least wood from the lantern's pins to the rim of its discs unless given, mm (common practice, no source).</summary>
    private const double LeastRim = 2.5;

    /// <summary>The sizes that follow.</summary>
    /// <param name="teeth">Teeth of the wheel z1, 5 or more.</param>
    /// <param name="pins">Pins of the lantern z2, 3 or more.</param>
    /// <param name="centreDistance">Distance of the shafts C, mm.</param>
    /// <param name="pin">Diameter of a pin d, mm, above 0.</param>
    /// <param name="thinning">j, mm, 0 or more.</param>
    /// <param name="addendum">Height of the teeth beyond the pitch circle, mm; <see cref="TipShare"/> of a pointed tooth's if null.</param>
    public LanternSizes(int teeth, int pins, double centreDistance, double pin, double thinning = UsualThinning, double? addendum = null)
    {
        (Teeth, Pins, CentreDistance, Pin, Thinning) = (teeth, pins, centreDistance, pin, thinning);
        Flank = new(0.5 * Module * teeth, 0.5 * Module * pins, 0.5 * pin);
        if (!(PitchThickness > 0))
        {
            (PointedPhi, Addendum, TipPhi) = (double.NaN, double.NaN, double.NaN);
            return;
        }

        PointedPhi = Roots.Between(Flank.Start, HalfAngle(Flank.Start), Math.PI, HalfAngle(Math.PI), HalfAngle);
        Addendum = addendum ?? TipShare * PointedAddendum;
        TipPhi = Math.Min(Flank.PhiAtRadius(TipRadius), PointedPhi);
    }

    /// <summary>z1.</summary>
    public int Teeth { get; }

    /// <summary>z2.</summary>
    public int Pins { get; }

    /// <summary>C, mm.</summary>
    public double CentreDistance { get; }

    /// <summary>d, mm.</summary>
    public double Pin { get; }

    /// <summary>j, mm.</summary>
    public double Thinning { get; }

    /// <summary>The side of a tooth.</summary>
    public LanternFlank Flank { get; }

    /// <summary>Module m = 2 C/(z1 + z2), mm.</summary>
    public double Module => 2 * CentreDistance / (Teeth + Pins);

    /// <summary>From pin to pin along the pitch circle p, mm.</summary>
    public double Pitch => Math.PI * Module;

    /// <summary>R, mm.</summary>
    public double WheelRadius => Flank.WheelRadius;

    /// <summary>r, mm: radius of the circle on which the pins stand.</summary>
    public double LanternRadius => Flank.LanternRadius;

    /// <summary>The lantern's angle past the line of centres at which a pointed tooth would leave the pin, rad; not a number where the pins leave no tooth.</summary>
    public double PointedPhi { get; }

    /// <summary>Height beyond the pitch circle at which a tooth comes to a point, mm.</summary>
    public double PointedAddendum => Flank.RadiusAt(PointedPhi) - WheelRadius;

    /// <summary>Height of the teeth beyond the pitch circle, mm.</summary>
    public double Addendum { get; }

    /// <summary>Radius of the tips, mm.</summary>
    public double TipRadius => WheelRadius + Addendum;

    /// <summary>The lantern's angle past the line of centres at which the tip leaves the pin, rad.</summary>
    public double TipPhi { get; }

    /// <summary>Greatest pressure angle, rad: where the tip leaves the pin.</summary>
    public double PressureAngle => TipPhi / 2;

    /// <summary>Pins at work on an average; below 1 the ratio is not kept.</summary>
    public double ContactRatio => (TipPhi - Flank.Start) * Pins / Math.Tau;

    /// <summary>Thickness of a tooth along the pitch circle, mm; 0 or less where the pins are too thick for the pitch.</summary>
    public double PitchThickness => 2 * WheelRadius * HalfAngle(Flank.Start);

    /// <summary>Width of a tooth at its tip, mm.</summary>
    public double TipLand => Math.Max(0, 2 * TipRadius * HalfAngle(TipPhi));

    /// <summary>Half the width of a gap below the pitch circle, mm: the radius of its bottom.</summary>
    public double GapRadius => WheelRadius * Math.Sin(GapAngle);

    /// <summary>Distance from the wheel's axis of the middle of a gap's round bottom, mm.</summary>
    public double GapCentre => WheelRadius * Math.Cos(GapAngle) - RootShare * Pin;

    /// <summary>Radius of the bottoms of the gaps, mm.</summary>
    public double RootRadius => GapCentre - GapRadius;

    /// <summary>Thinnest place of a tooth below the pitch circle, mm: between the bottoms of two gaps.</summary>
    public double Neck => 2 * (GapCentre * Math.Sin(Math.PI / Teeth) - GapRadius);

    /// <summary>Room between a pin and the bottom of a gap, mm.</summary>
    public double RootClearance => WheelRadius - Pin / 2 - RootRadius;

    /// <summary>Free turn of the lantern while the wheel is held, rad.</summary>
    public double Play => Thinning / LanternRadius;

    /// <summary>How near the teeth's tips come to the lantern's axis, mm.</summary>
    public double Core => CentreDistance - TipRadius;

    /// <summary>Radius of the lantern's discs unless given, mm.</summary>
    public double UsualDisc => LanternRadius + Pin / 2 + Math.Max(Pin / 2, LeastRim);

    /// <summary>Wood between two pins' holes, mm.</summary>
    public double BetweenPins => 2 * LanternRadius * Math.Sin(Math.PI / Pins) - Pin;

    /// <summary>The thickest of some rods that keeps the contact ratio at <paramref name="contactRatio"/> or more and leaves teeth no thinner than itself, mm; null where none does.</summary>
    public static double? Rod(IEnumerable<double> rods, int teeth, int pins, double centreDistance, double contactRatio, double thinning = UsualThinning) => rods
        .Where(d => new LanternSizes(teeth, pins, centreDistance, d, thinning) is var s && s.ContactRatio >= contactRatio && s.PitchThickness >= d)
        .Select(d => (double?)d)
        .Max();

    /// <summary>Direction of a pin from the lantern's axis, rad, when the wheel's teeth stand evenly about the pins.</summary>
    /// <param name="toothAt">Direction of the middle of a tooth from the wheel's axis, rad.</param>
    /// <param name="towards">Direction from the wheel's axis to the lantern's, rad.</param>
    public double PinAngle(double toothAt, double towards) => towards + Math.PI - (toothAt + Math.PI / Teeth - towards) * Teeth / Pins;

    // Half the angle of a tooth, rad, where the flank touches the pin at phi.
    internal double HalfAngle(double phi) => Math.PI / Teeth - Thinning / (2 * WheelRadius) - Flank.PolarAt(phi);

    // Half the angle of a gap on the pitch circle, rad.
    private double GapAngle => Math.PI / Teeth - HalfAngle(Flank.Start);
}
