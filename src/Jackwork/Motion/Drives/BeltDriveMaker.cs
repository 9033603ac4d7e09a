using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a belt or chain of its spec.</summary>
internal static class BeltDriveMaker
{
    /// <summary>How far a diameter may lie from a whole number of tenths, tenths of mm: the rounding of a decimal figure.</summary>
    private const double WholeTenth = 1e-6;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static BeltDrive? Make(BeltSpec b, DriveSite site)
    {
        if (!site.TwoShafts("belts and chains"))
        {
            return null;
        }

        if (!site.ParallelShafts("a belt or chain"))
        {
            return null;
        }

        if (b.Teeth is not null == b.Diameters is not null)
        {
            site.Note("", "a belt or chain is given by exactly one of 'teeth' and 'diameters'", "Give 'teeth: [a, b]' for a chain or toothed belt, 'diameters: [a, b]' for a smooth one");
            return null;
        }

        if (b.Teeth is not null && b.Crossed)
        {
            site.Note("crossed", "a chain or toothed belt can't be crossed", "Remove 'crossed', or use a smooth belt");
            return null;
        }

        if (b.Diameters?.Any(d => Math.Abs(10 * d - Math.Round(10 * d)) > WholeTenth) == true)
        {
            site.Note("diameters", FormattableString.Invariant($"the diameters {b.Diameters[0]} and {b.Diameters[1]} mm are not both whole tenths of a millimetre"), "Round them to a tenth, so that the ratio is exact");
            return null;
        }

        var sign = (b.Crossed ? -1 : 1) * Math.Sign(site.AxisCosine);
        var ratio = b.Teeth is { } z ? new Rational(z[0], z[1]) : new Rational(Tenths(b.Diameters![0]), Tenths(b.Diameters[1]));
        return new(site.Driver, site.Driven, sign > 0 ? ratio : -ratio, b);
    }

    private static long Tenths(double mm) => (long)Math.Round(10 * mm);
}
