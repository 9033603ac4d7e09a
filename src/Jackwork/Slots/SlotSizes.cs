using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Slots;

/// <summary>How long and how wide a straight slot is, mm, along its middle line from its pin as drawn.</summary>
/// <remarks>
/// Seen from the slotted member the pin P stands at s = t . (P - S), t the slot's direction and S the pin as drawn. The slot holds it if its round ends stand at or
/// beyond the least and the greatest s of the performance. Looked at the steps alone, of half a degree of the fastest shaft that counts: between them an
/// extreme is missed by (step^2/8) s'', below 0.001 mm for a crank of 100 mm.
/// </remarks>
/// <param name="Least">Least s.</param>
/// <param name="Most">Greatest s.</param>
/// <param name="From">Middle of the one round end.</param>
/// <param name="To">Middle of the other.</param>
/// <param name="Width">Width of the slot.</param>
public readonly record struct SlotSizes(double Least, double Most, double From, double To, double Width)
{
    /// <summary>Clearance, and room beyond the pin's travel, unless given, mm (common practice, no source).</summary>
    private const double UsualClearance = 0.15, Room = 0.5;

    /// <summary>Diameter of the pin unless given, mm (common practice, no source).</summary>
    public const double UsualPin = 3;

    /// <summary>How much longer the slot is than the pin's travel at its shorter end; below 0 the pin runs past it.</summary>
    public double Spare => Math.Min(Least - From, To - Most);

    /// <summary>The sizes of a slot over a performance.</summary>
    public static SlotSizes Of(Motion.Motion motion, SlotDrive drive)
    {
        var spec = motion.Machine.Design.Members[motion.Machine.NameOf(drive.Driven)].Slot!;
        var (frames, least, most) = (new BodyFrames(motion), 0.0, 0.0);
        for (var i = 0; i < frames.Steps; i++)
        {
            var pin = frames.At(new(drive.SlotIn), i).See(frames.At(new(drive.PinOn), i)).Apply(drive.Pin);
            var s = drive.Along.Dot(pin - drive.Pin);
            (least, most) = (Math.Min(least, s), Math.Max(most, s));
        }

        return new(least, most, spec.Reach?[0] ?? least - Room, spec.Reach?[1] ?? most + Room, (spec.Diameter ?? UsualPin) + (spec.Clearance ?? UsualClearance));
    }
}
