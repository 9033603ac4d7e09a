using Jackwork.Motion;

namespace Jackwork.Geneva;

/// <summary>The sizes of a Geneva wheel, its locking disc and pin plate, mm.</summary>
/// <remarks>
/// <para>C centre distance, n slots, pin d, clearance c, half a slot h = (d + c)/2.</para>
/// <para>r = C sin(pi/n), the pin enters at R = C cos(pi/n) from the wheel's axis, and a slot's walls begin there: rim or mouth sqrt(R^2 + h^2).
/// A slot's round end stands about C - r - c outside, C + r + c inside. The hollow that the disc locks is c wider than the disc.</para>
/// <para>Outside the disc of radius L turns in the plane of the slots: L = r - 3d/2, so that the horn between slot and hollow is about d thick.
/// Inside it is the pin plate itself, beside the slots: relieved to r + d about the pin, L = r + 2d elsewhere, in a ring of radius C + r + d + <see cref="Relief"/> with hollows.</para>
/// <para>Locked, the disc meets the hollow from -D to D about the line of centres: cos D = (C^2 + H^2 - rim^2)/(2 C H) outside, (ring^2 - C^2 - H^2)/(2 C H)
/// inside, H the hollow's radius. In mid-dwell the wheel's play is c/(C sin D) to either side; an inside disc holds no
/// farther than its own half, a dwell's half. Towards entry and exit one side falls away and the pin takes over.</para>
/// <para>J. H. Bickford, Mechanisms for Intermittent Motion, chapter 9 (from memory); the sizes of disc and reliefs are common practice, no source.</para>
/// </remarks>
/// <param name="Law">How it turns.</param>
/// <param name="CentreDistance">C, mm.</param>
/// <param name="Pin">Diameter of the pin d, mm.</param>
/// <param name="Clearance">c, mm.</param>
/// <param name="Locking">Radius of the locking disc L, mm.</param>
public sealed record GenevaSizes(GenevaLaw Law, double CentreDistance, double Pin, double Clearance, double Locking)
{
    /// <summary>Least room between a relief and what sweeps past it, mm.</summary>
    public const double Relief = 0.5;

    /// <summary>Diameter of the pin unless given, mm.</summary>
    public const double UsualPin = 5;

    /// <summary>Clearance unless given, mm: what a router holds on both sides.</summary>
    public const double UsualClearance = 0.15;

    /// <summary>The sizes of a drive.</summary>
    public static GenevaSizes Of(GenevaDrive drive)
    {
        var (law, pin) = (drive.Law, drive.Spec.Pin ?? UsualPin);
        var circle = drive.CentreDistance * law.Lambda;
        return new(law, drive.CentreDistance, pin, drive.Spec.Clearance ?? UsualClearance, drive.Spec.Locking ?? (law.Inside ? circle + 2 * pin : circle - 1.5 * pin));
    }

    /// <summary>Radius of the pin's circle r.</summary>
    public double PinCircle => CentreDistance * Law.Lambda;

    /// <summary>Distance of the pin from the wheel's axis as it enters, R.</summary>
    public double Entry => CentreDistance * Math.Cos(Math.PI / Law.Slots);

    /// <summary>Half the width of a slot h.</summary>
    public double HalfSlot => (Pin + Clearance) / 2;

    /// <summary>Radius at which the slots open: the rim of an outside wheel, the mouth of an inside one.</summary>
    public double Mouth => Math.Sqrt(Entry * Entry + HalfSlot * HalfSlot);

    /// <summary>Distance from the wheel's axis of the middle of a slot's round end.</summary>
    public double SlotEnd => CentreDistance + Law.Sense * (PinCircle + Clearance);

    /// <summary>Radius of the hollow H.</summary>
    public double Hollow => Locking + Clearance;

    /// <summary>Radius about the driver's axis of the pin plate where the pin stands: outside all round.</summary>
    public double PinPlate => PinCircle + Pin;

    /// <summary>Inner radius of an inside wheel's locking ring.</summary>
    public double Ring => CentreDistance + PinPlate + Relief;

    /// <summary>Outer radius of the wheel.</summary>
    public double Outside => Law.Inside ? Math.Max(SlotEnd + HalfSlot, CentreDistance + Hollow) + Pin : Mouth;

    /// <summary>Half the angle D over which the disc lies in its hollow, rad, about the driver's axis; not a number where the two don't meet.</summary>
    public double HalfLap => Math.Acos(Law.Inside
        ? (Ring * Ring - CentreDistance * CentreDistance - Hollow * Hollow) / (2 * CentreDistance * Hollow)
        : (CentreDistance * CentreDistance + Hollow * Hollow - Mouth * Mouth) / (2 * CentreDistance * Hollow));

    /// <summary>Half the angle of a hollow as seen from the wheel's axis, rad.</summary>
    public double HalfHollow => Math.Asin(Math.Min(1, Hollow * Math.Sin(HalfLap) / (Law.Inside ? Ring : Mouth)));

    /// <summary>How far the wheel can be turned either way in the middle of its dwell, rad.</summary>
    public double LockedPlay => Clearance / (CentreDistance * Math.Sin(Math.Min(HalfLap, Law.Dwell / 2)));

    /// <summary>Least thickness between a slot and what is hollowed beside it: the horns outside; inside what stays between two slots' mouths.</summary>
    public double Horn => Law.Inside ? 2 * (Entry * Math.Sin(Math.PI / Law.Slots) - HalfSlot * Math.Cos(Math.PI / Law.Slots)) : PinCircle - HalfSlot - Hollow;

    /// <summary>Radius about the wheel's axis that its plates leave free, to the bottoms of the slots outside.</summary>
    public double WheelCore => Law.Inside ? Outside : SlotEnd - HalfSlot;

    /// <summary>Radius about the driver's axis that the relief leaves.</summary>
    public double DriverCore => Law.Inside ? PinPlate : ReliefDepth;

    /// <summary>How near to the wheel's axis the pin comes, from its side.</summary>
    public double PinPasses => CentreDistance - PinCircle - Pin / 2;

    /// <summary>Distance from the driver's axis of the bottom of an outside disc's relief: the arc that clears the wheel in mid-turn, through the ends of the locking arc.</summary>
    internal double ReliefDepth
    {
        get
        {
            var arc = Math.Sqrt(CentreDistance * CentreDistance + Locking * Locking - 2 * CentreDistance * Locking * Math.Cos(Law.HalfDrive));
            return CentreDistance - Math.Max(arc, Mouth + Relief);
        }
    }
}
