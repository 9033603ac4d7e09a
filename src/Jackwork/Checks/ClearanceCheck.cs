using Jackwork.Design;

namespace Jackwork.Checks;

/// <summary>Parts that scrape or come too near over the performance.</summary>
internal sealed class ClearanceCheck : ICheck
{
    public string Name => "clearance";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var name in proof.Assembly.Meant.Unknown(proof.Assembly.Parts))
        {
            var known = proof.Assembly.Parts.Select(p => p.Name).Concat(proof.Machine.Members.Select(m => m.Name));
            yield return new(
                Level.Caution, Name, name, null, null, 0, 0, "",
                $"'{name}', named under 'touching' or 'apart', is neither a part nor a member of this piece",
                Names.Suggest(name, [.. known]));
        }

        foreach (var c in proof.Clearances.Where(c => !c.IsKept))
        {
            var shaft = proof.Machine.Acted.Count > 0 ? proof.Machine.Acted[0].Shaft : proof.Machine.Crank;
            var where = FormattableString.Invariant($"at [{c.OnA.X:0.#}, {c.OnA.Y:0.#}, {c.OnA.Z:0.#}]");
            yield return new(
                Level.Fault, Name, $"{c.A.Name} / {c.B.Name}", Proof.Deg(c.FirstBelow!.Value), Proof.Deg(c.AtCrank), c.Min, c.Least, "mm",
                c.Min > 0
                    ? FormattableString.Invariant($"'{c.A.Name}' and '{c.B.Name}' come within {c.Min:0.##} mm of each other {where} at {proof.Where(c.AtCrank, shaft)}, limit {c.Least:0.##} mm; first below it at {proof.Where(c.FirstBelow.Value, shaft)}")
                    : FormattableString.Invariant($"'{c.A.Name}' and '{c.B.Name}' run {-c.Min:0.##} mm into each other {where} at {proof.Where(c.AtCrank, shaft)}; first below the limit at {proof.Where(c.FirstBelow.Value, shaft)}"),
                FormattableString.Invariant($"Move one of them by {c.Least - c.Min:0.#} mm or more, make it smaller there, or name the pair under 'touching' if they are meant to"));
        }
    }
}
