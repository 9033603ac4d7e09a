using Jackwork.Geometry;

namespace Jackwork.Pins;

/// <summary>The sizes of an intermittent pin wheel, its driver and their lock, mm.</summary>
/// <remarks>
/// <para>d pins, c clearance, r1 and r2 the circles. On parallel shafts: from the face of the driver's pin plate its pins reach across the gap to
/// the driven's pin plate and the driven's back to it; beyond, as good as in one plane, the rim of radius r1 and the driven's locking disc of radius r2 + d.</para>
/// <para>On shafts at right angles: the driver's plate stands a gap of d from the middle of the driven's pins at their nearest; its pins reach past that by
/// the tip. The driven's plate stands over the driver's, its pins reach down past the driver's slowest pin. Its flat is r2 + gap - c from its
/// axis, its rim d farther.</para>
/// <para>Proportions are common practice, no source.</para>
/// </remarks>
/// <param name="Law">How it goes.</param>
/// <param name="Pin">Diameter of the pins d, mm.</param>
/// <param name="Clearance">Clearance of the lock c, mm.</param>
/// <param name="Thickness">Thickness of each plate, mm.</param>
public sealed record IntermittentSizes(IntermittentLaw Law, double Pin, double Clearance, double Thickness)
{
    /// <summary>Diameter of the pins unless given, mm.</summary>
    public const double UsualPin = 4;

    /// <summary>Clearance unless given, mm: what a router holds on both sides.</summary>
    public const double UsualClearance = 0.15;

    /// <summary>Room between a plate and what turns or ends beside it, mm (common practice, no source).</summary>
    public const double Apart = 1;

    /// <summary>Whether the shafts are at right angles.</summary>
    public bool IsCrossed => Law.Others is CrossedPins;

    /// <summary>r1, mm.</summary>
    public double DriverCircle => Law.Others.DriverCircle;

    /// <summary>Circle of the first pin, mm.</summary>
    public double FirstCircle => Law.First.DriverCircle;

    /// <summary>r2, mm.</summary>
    public double DrivenCircle => Law.Others.DrivenCircle;

    /// <summary>The lock.</summary>
    public PinLock Lock
    {
        get
        {
            var stops = Law.DrivenPins / (int)System.Numerics.BigInteger.GreatestCommonDivisor(Law.DrivenPins, Law.Steps);
            if (Law.Others is ParallelPins p)
            {
                return new ParallelLock(p.CentreDistance, DriverCircle, Clearance, DrivenCircle + Pin) { Stops = stops, Drives = Law.Drives };
            }

            var flat = DrivenCircle + Pin - Clearance;
            var half = Math.Sqrt((flat + Pin) * (flat + Pin) - flat * flat);
            var top = DrivenPlate + Thickness;
            return new CrossedLock(flat, Clearance, flat + Pin, Math.Sqrt(top * top + half * half), DriverCircle + Pin) { Stops = stops, Drives = Law.Drives };
        }
    }

    /// <summary>How far the driver's pins stand out of their plate, mm.</summary>
    public double DriverLength => Law.Others is CrossedPins c ? Pin + c.Tip : Gap - Apart;

    /// <summary>How far the driven's pins stand out of their plate, mm.</summary>
    public double DrivenLength => IsCrossed ? DrivenPlate - Lowest : Gap - Apart;

    /// <summary>Crossed: distance of the driven's plate's near face from the driver's axis, mm, so that it clears the driver's plate.</summary>
    public double DrivenPlate => DriverCircle + Pin + Apart;

    /// <summary>Parallel: room between the two pin plates, mm.</summary>
    public double Gap => 2 * Pin + 2 * Apart;

    /// <summary>The driver's holes for its pins, mm, as <see cref="PinLock"/> says.</summary>
    public IEnumerable<Point2> DriverHoles => Enumerable.Range(0, Law.DriverPins).Select(i => Point2.Origin + (i == 0 ? FirstCircle : DriverCircle) * Vec2.FromAngle(Law.PinAt(i)));

    /// <summary>The driven's holes for its pins, mm, as <see cref="PinLock"/> says.</summary>
    public IEnumerable<Point2> DrivenHoles => Enumerable.Range(0, Law.DrivenPins).Select(i => Point2.Origin + DrivenCircle * Vec2.FromAngle(-Law.Waits + i * Law.DrivenPitch));

    // The ends of the driven's pins from the driver's axis: a pin below the lowest line of contact.
    private double Lowest
    {
        get
        {
            double Height(PinPair pair, double circle) => circle * Math.Cos(Math.Max(-pair.WedgeAt, pair.ReachAt));
            return Math.Min(Height(Law.Others, DriverCircle), Height(Law.First, FirstCircle)) - Pin;
        }
    }
}
