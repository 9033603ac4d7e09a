using Jackwork.Checks;

namespace Jackwork.Parts;

/// <summary>All parts of a piece, and which pairs of them are meant to touch.</summary>
/// <param name="Parts">The parts: shafts first, then what they carry, levers, rods, case, figure.</param>
/// <param name="Meant">Which pairs are left out of the clearance check.</param>
public sealed record Assembly(IReadOnlyList<Part> Parts, MeantContacts Meant)
{
    /// <summary>Mass of the whole piece, g.</summary>
    public double Mass => Parts.Sum(p => p.Mass);

    /// <summary>The parts of a proved design.</summary>
    internal static Assembly Of(Proof proof)
    {
        var parts = new List<Part>();
        parts.AddRange(ShaftParts.Of(proof));
        parts.AddRange(PlateParts.Of(proof));
        parts.AddRange(LeverParts.Of(proof));
        parts.AddRange(RodParts.Of(proof.Machine));
        parts.AddRange(CaseParts.Of(proof.Machine, parts));
        parts.AddRange(FigureParts.Of(proof.Machine));
        return new(parts, new MeantContacts(proof.Machine));
    }
}
