using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Parts;

namespace Jackwork.Comparing;

/// <summary>A cam that is in both versions.</summary>
/// <param name="Name">Its name now, which is that of its follower.</param>
/// <param name="Before">The cam as it was.</param>
/// <param name="After">The cam as it is.</param>
/// <param name="Apart">Greatest distance between the two outlines as cut, mm, and the points of both between which it is; within 0.001 mm.</param>
/// <param name="Plate">What else of the plate is another: bore, thickness.</param>
/// <param name="Hub">What of its hub is another: diameter, length.</param>
/// <param name="IsKnown">Whether the motion of both closes; where it doesn't there is no true outline to compare.</param>
public sealed record CamChange(string Name, Cam Before, Cam After, (double Mm, Point2 Before, Point2 After) Apart, IReadOnlyList<SizeChange> Plate, IReadOnlyList<SizeChange> Hub, bool IsKnown)
{
    /// <summary>Whether the outline is another by more than <see cref="Sameness.OutlineMm"/>.</summary>
    public bool HasOtherOutline => Apart.Mm > Sameness.OutlineMm;

    /// <summary>Whether the plate must be cut again.</summary>
    public bool IsCutAgain => HasOtherOutline || Plate.Count > 0;

    /// <summary>Whether the hub must be made again.</summary>
    public bool IsHubMadeAgain => Hub.Count > 0;

    /// <summary>Compares the cams of two versions.</summary>
    internal static Pairing<CamChange> All(Proof before, Proof after, Renames renames) => Pairing<CamChange>.Of(
        before.Cams.Select(c => (renames.Now(c.Name), c)),
        after.Cams.Select(c => (c.Name, c)),
        (name, a, b) => Of(name, a, b, Closes(before, a) && Closes(after, b)));

    private static CamChange Of(string name, Cam a, Cam b, bool isKnown)
    {
        var (x, y) = (a.Spec, b.Spec);
        return new(
            name,
            a,
            b,
            OutlineDistance.Between(a.AsCut, b.AsCut),
            SizeChange.Of(
                new("bore", "mm", a.Bore, b.Bore),
                new("thickness", "mm", x.Thickness ?? PlateParts.Thickness, y.Thickness ?? PlateParts.Thickness)),
            SizeChange.Of(
                new("hub diameter", "mm", 2 * a.HubRadius, 2 * b.HubRadius),
                new("hub length", "mm", x.HubLength ?? PlateParts.HubLength, y.HubLength ?? PlateParts.HubLength),
                new("hub bore", "mm", a.Bore, b.Bore)),
            isKnown);
    }

    private static bool Closes(Proof proof, Cam cam) => proof.SoundCams.Any(s => ReferenceEquals(s.Cam, cam));
}
