using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>The outline of a whole gear in lines and arcs.</summary>
/// <remarks>
/// One side of one tooth is sampled with exact tangents (trochoid by <see cref="RackCut"/> or arc by <see cref="RingFillet"/>,
/// flank by <see cref="Involute"/>) and fitted once; mirroring and turning give the rest.
/// </remarks>
public static class GearOutline
{
    /// <summary>Samples on a flank and on a fillet: one to about 0.2 mm on a tooth of module 5.</summary>
    private const int Samples = 64;

    /// <summary>The closed outline, counter-clockwise, a tooth's middle on the x axis, the gear's axis at the origin.</summary>
    /// <remarks>For a ring it is the outline of the hole; the rim is a circle of the caller's. A pointed tip is a corner.</remarks>
    /// <param name="gear">The gear.</param>
    /// <param name="toleranceMm">Greatest distance between outline and true curve, mm, above 0.</param>
    /// <exception cref="ArgumentException">Undercut cuts the tooth through at its neck.</exception>
    public static Outline Of(SpurGear gear, double toleranceMm = 0.005)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var side = Side(gear, toleranceMm);

        // A ring's space is the tooth of the outside case, half a pitch on from the ring's tooth.
        return gear.Inside
            ? ToothedRim.Of(side, gear.RootRadius, gear.TipRadius, gear.Teeth, 0.5 * gear.Pitch)
            : ToothedRim.Of(side, gear.TipRadius, gear.RootRadius, gear.Teeth);
    }

    /// <summary>Samples of the counter-clockwise side of a tooth (of a ring: of a space) centred on the x axis, outwards, in runs
    /// without a corner.</summary>
    private static (OutlinePoint[] Inner, OutlinePoint[] Outer) SideSamples(SpurGear gear)
    {
        if (gear.Inside)
        {
            return (Flank(gear, gear.TipRoll, gear.FormRoll), []);
        }

        var cut = gear.RackCut;
        if (gear.FormRadius >= gear.TipRadius)
        {
            return (Trochoid(cut, cut.PsiAt(gear.TipRadius)), []);
        }

        return (Trochoid(cut, cut.PsiMeet), Flank(gear, gear.FormRoll, gear.TipRoll));
    }

    private static OutlinePoint[] Flank(SpurGear gear, double from, double to) =>
    [
        .. Enumerable.Range(0, Samples + 1)
            .Select(i => Involute.Flank(gear.BaseRadius, gear.BaseAngle, from + (to - from) * i / Samples)),
    ];

    private static OutlinePoint[] Trochoid(RackCut cut, double to) =>
        [.. Enumerable.Range(0, Samples + 1).Select(i => cut.At(to * i / Samples))];

    /// <summary>The counter-clockwise side of a tooth (of a ring: of a space) centred on the x axis as segments, outwards, tip and root
    /// arcs left out.</summary>
    internal static List<Segment> Side(SpurGear gear, double tolerance)
    {
        var side = new List<Segment>();
        var (inner, outer) = SideSamples(gear);
        if (inner.Concat(outer).Any(s => s.Point.Y < -ToothedRim.NoLengthMm))
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"Undercut cuts the {gear.Teeth} teeth through at the neck; a profile shift of {gear.UndercutShift} modules avoids it."),
                nameof(gear));
        }

        ArcFit.Fit(inner, tolerance, side);
        ArcFit.Fit(outer, tolerance, side);
        if (gear.Inside)
        {
            var fillet = gear.RingFillet;
            if (fillet.Radius > ToothedRim.NoLengthMm)
            {
                var from = (side[^1].End - fillet.Centre).Angle;
                side.Add(Segment.Arc(fillet.Centre, fillet.Radius, from, fillet.CentreAngle - from) with { Start = side[^1].End });
            }
        }

        return side;
    }
}
