using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Geneva;

/// <summary>The outlines of a Geneva wheel and its driver, mm, each about its own axis, counter-clockwise: a slot of the wheel along x, the pin along x.</summary>
/// <remarks>The locking disc keeps its radius but for <see cref="GenevaLaw.HalfDrive"/> to either side of the pin: at entry and exit its edge stands just in the line of centres.</remarks>
public static class GenevaOutlines
{
    /// <summary>An outside wheel: between slots open to the rim, hollows about the driver's axis as locked.</summary>
    public static Outline Wheel(GenevaSizes s)
    {
        var (pitch, mouth, lap) = (Math.Tau / s.Law.Slots, Math.Asin(s.HalfSlot / s.Mouth), s.HalfLap);
        var land = pitch / 2 - s.HalfHollow - mouth;
        var centre = s.CentreDistance * Vec2.FromAngle(pitch / 2);
        return Round(s.Law.Slots,
        [
            .. Slot(s, -Math.PI),
            Segment.Arc(Point2.Origin, s.Mouth, mouth, land),
            Segment.Arc(Point2.Origin + centre, s.Hollow, pitch / 2 + Math.PI + lap, -2 * lap),
            Segment.Arc(Point2.Origin, s.Mouth, pitch - mouth - land, land),
        ]);
    }

    /// <summary>The hole of an inside wheel's slotted plate.</summary>
    public static Outline Slots(GenevaSizes s)
    {
        var (pitch, mouth) = (Math.Tau / s.Law.Slots, Math.Asin(s.HalfSlot / s.Mouth));
        return Round(s.Law.Slots, [.. Slot(s, Math.PI), Segment.Arc(Point2.Origin, s.Mouth, mouth, pitch - 2 * mouth)]);
    }

    /// <summary>The hole of an inside wheel's locking ring.</summary>
    public static Outline Ring(GenevaSizes s)
    {
        var (pitch, land, lap) = (Math.Tau / s.Law.Slots, Math.PI / s.Law.Slots - s.HalfHollow, s.HalfLap);
        var centre = s.CentreDistance * Vec2.FromAngle(pitch / 2);
        return Round(s.Law.Slots,
        [
            Segment.Arc(Point2.Origin, s.Ring, -land, 2 * land),
            Segment.Arc(Point2.Origin + centre, s.Hollow, pitch / 2 - lap, 2 * lap),
        ]);
    }

    /// <summary>The locking disc: outside in the wheel's plane, inside the pin plate itself.</summary>
    public static Outline Disc(GenevaSizes s)
    {
        var half = s.Law.HalfDrive;
        var held = Segment.Arc(Point2.Origin, s.Locking, half, Math.Tau - 2 * half);
        if (s.Law.Inside)
        {
            var relief = Segment.Arc(Point2.Origin, s.PinPlate, -half, 2 * half);
            return new([relief, new(relief.End, held.Start, 0), held, new(held.End, relief.Start, 0)]);
        }

        // A bulge is the arc's height over half its chord.
        return new([held, new(held.End, held.Start, -(s.Locking * Math.Cos(half) - s.ReliefDepth) / (s.Locking * Math.Sin(half)))]);
    }

    // In along one wall of the slot on x, round its end, out along the other.
    private static ImmutableArray<Segment> Slot(GenevaSizes s, double sweep)
    {
        var end = Segment.Arc(new(s.SlotEnd, 0), s.HalfSlot, -Math.PI / 2, sweep);
        return [new(new(s.Entry, -s.HalfSlot), end.Start, 0), end, new(end.End, new(s.Entry, s.HalfSlot), 0)];
    }

    private static Outline Round(int n, ImmutableArray<Segment> one) =>
        new([.. Enumerable.Range(0, n).SelectMany(i => one.Select(s => s.Turned(i * Math.Tau / n)))]);
}
