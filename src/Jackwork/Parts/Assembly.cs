using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>All parts of a piece, and which pairs of them are meant to touch.</summary>
/// <param name="Parts">The parts: shafts first, then what they carry, levers, rods, case, figure.</param>
/// <param name="Meant">Which pairs are left out of the clearance check.</param>
public sealed record Assembly(IReadOnlyList<Part> Parts, MeantContacts Meant)
{
    /// <summary>Mass of the whole piece, g.</summary>
    public double Mass => Parts.Sum(p => p.Mass);

    /// <summary>What is joined of parts for good, in the order of the design.</summary>
    public IReadOnlyList<Joined> Joined { get; init; } = [];

    /// <summary>The parts of a proved design.</summary>
    internal static Assembly Of(Proof proof)
    {
        var design = proof.Machine.Design;
        var parts = new List<Part>();
        parts.AddRange(ShaftParts.Of(proof));
        parts.AddRange(PlateParts.Of(proof));
        parts.AddRange(proof.Mechanisms.SelectMany(m => m.Parts()));
        parts.AddRange(LeverParts.Of(proof));
        parts.AddRange(RodParts.Of(proof.Machine));
        parts.AddRange(CaseParts.Of(proof.Machine, [.. parts]));
        parts.AddRange(FigureParts.Of(proof.Machine, [.. parts]));
        var whole = (design.Joined ?? []).SelectMany(j => j.Parts.Select(p => (Part: p, j.Name))).DistinctBy(x => x.Part).ToDictionary(x => x.Part, x => x.Name);
        List<Part> made = [.. parts.Select(p => p with { PartOf = whole.GetValueOrDefault(p.Name), Colour = p.Colour ?? Own(proof.Machine, p) })];
        var meant = new MeantContacts(proof.Machine.With(design with { Touching = [.. design.Touching ?? [], .. Fits.Of(proof.Machine, made)] }));
        return new(made, meant) { Joined = [.. (design.Joined ?? []).Select(j => new Joined(j.Name, j.By, [.. made.Where(p => p.PartOf == j.Name)]))] };
    }

    // The colour that a member's own solid is given by its body.
    private static int? Own(Machine machine, Part p) =>
        p.Kind is PartKind.Figure or PartKind.Board or PartKind.Support or PartKind.Washer or PartKind.Screw or PartKind.Grub or PartKind.Bush or PartKind.Guide
        || p.Body.IsRod || (p.Bears ?? p.Body.Member) is var m && m == Member.Case
            ? null
            : Colours.Read(machine.Design.Members[machine.NameOf(m)].Body?.Colour);
}
