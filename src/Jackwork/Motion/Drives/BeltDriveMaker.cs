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

        if (Mixed(b) is var (key, what, remedy))
        {
            site.Note(key, what, remedy);
            return null;
        }

        if (!b.IsMade && Stray(b) is { } stray)
        {
            site.Note(stray, $"'{stray}' is told of a belt of which nothing is made", "Say what it is with 'round', 'flat' or 'pitch', or remove this");
            return null;
        }

        if (b.IsMade && (site.DrivenJoint.Through - site.DriverJoint.Through).Across(site.DriverJoint.Along).Length < DriveSite.OnAxis)
        {
            site.Note("", $"'{site.DriverName}' and '{site.DrivenName}' turn about one axis, where no belt runs", "Set the axes apart");
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

    // Keys of different kinds of belts that stand beside each other.
    private static (string Key, string What, string Remedy)? Mixed(BeltSpec b) =>
        b is { Round: not null, Flat: not null } ? ("flat", "the belt is both round and flat", "Keep one of 'round' and 'flat'")
        : b.Teeth is not null && (b.Round ?? b.Flat?[0]) is not null ? (b.Round is not null ? "round" : "flat", "a chain or toothed belt is given a smooth belt's size", "Give 'pitch', and for a chain 'roller'; or 'diameters' for a smooth belt")
        : b.Diameters is not null && (b.Pitch ?? b.Roller) is not null ? (b.Pitch is not null ? "pitch" : "roller", "a smooth belt has no pitch and no rollers", "Give 'round: 4' or 'flat: [10, 1.5]'; or 'teeth' for a chain or toothed belt")
        : b.Roller is { } roller && !(roller < b.Pitch) ? ("roller", b.Pitch is null ? "a chain's rollers are given without its pitch" : FormattableString.Invariant($"rollers of {roller} mm do not fit into a pitch of {b.Pitch} mm"), "Give both as the chain has them: 'pitch: 8, roller: 5'")
        : null;

    private static string? Stray(BeltSpec b) => b.Width is not null ? "width" : b.At is not null ? "at" : b.Bores is not null ? "bores" : b.Hubs is not null ? "hubs" : b.HubLength is not null ? "hub-length" : b.HubSide is not null ? "hub-side" : b.Grub is not null ? "grub" : null;

    private static long Tenths(double mm) => (long)Math.Round(10 * mm);
}
