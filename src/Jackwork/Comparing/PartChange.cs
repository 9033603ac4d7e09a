using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Comparing;

/// <summary>What of a part can be another.</summary>
[Flags]
public enum PartDifference
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Its shape: it is made again.</summary>
    Shape = 1,

    /// <summary>Its material or the way it is made: it is made again.</summary>
    Material = 2,

    /// <summary>Its place as drawn, by more than <see cref="Sameness.Mm"/>.</summary>
    Place = 4,

    /// <summary>What carries it.</summary>
    Carrier = 8,
}

/// <summary>A part that is in both versions.</summary>
/// <param name="Name">Its name now.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="What">What of it is another.</param>
/// <param name="Moved">How far that point of it has moved as drawn which has moved farthest, mm; not a number where its shape is another.</param>
public sealed record PartChange(string Name, PartKind Kind, PartDifference What, double Moved)
{
    /// <summary>Whether it must be made again.</summary>
    public bool IsMadeAgain => (What & (PartDifference.Shape | PartDifference.Material)) != 0;

    /// <summary>Compares the parts of two versions. The outlines of cams and teeth of wheels are held to what was found of those.</summary>
    internal static Pairing<PartChange> All((Machine Machine, Assembly Assembly) before, (Machine Machine, Assembly Assembly) after, Renames renames, IReadOnlyList<CamChange> cams, IReadOnlyList<WheelChange> wheels) => Pairing<PartChange>.Of(
        before.Assembly.Parts.Select(p => (renames.Now(p.Name), (p, renames.Now(Carrier(before.Machine, p))))),
        after.Assembly.Parts.Select(p => (p.Name, (p, Carrier(after.Machine, p)))),
        (name, a, b) => Of(name, a.p, a.Item2, b.p, b.Item2, b.p.Kind switch
        {
            PartKind.Cam => cams.FirstOrDefault(c => name == $"{c.Name} cam")?.IsCutAgain,
            PartKind.Wheel => wheels.Any(w => w.Part == name && w.IsCutAgain),
            _ => null,
        }));

    private static PartChange Of(string name, Part a, string carrierBefore, Part b, string carrierAfter, bool? isCutAgain)
    {
        var (was, now) = (PartPoints.Of(a), PartPoints.Of(b));
        var isSameShape = isCutAgain is { } again ? !again : was.IsCongruent(now);
        var moved = !isSameShape ? double.NaN : isCutAgain is not null ? PartPoints.PlateOf(a).Farthest(PartPoints.PlateOf(b)) : was.Farthest(now);
        return new(
            name,
            b.Kind,
            (isSameShape ? PartDifference.None : PartDifference.Shape)
                | (a.Material.Name != b.Material.Name || a.Process != b.Process ? PartDifference.Material : PartDifference.None)
                | (moved > Sameness.Mm ? PartDifference.Place : PartDifference.None)
                | (carrierBefore != carrierAfter ? PartDifference.Carrier : PartDifference.None),
            moved);
    }

    private static string Carrier(Machine machine, Part p) => (p.Kind == PartKind.Cord ? "cord to " : p.Body.IsRod ? "rod to " : "") + machine.NameOf(p.Body.Member);
}
