using Jackwork.Design;
using Jackwork.Parts;

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
            var what = c.Min switch
            {
                >= Shown => FormattableString.Invariant($"come within {c.Min:0.##} mm of each other, limit {c.Least:0.##} mm,"),
                > -Shown => "touch each other",
                _ when c.Least < 0 => FormattableString.Invariant($"press {-c.Min:0.##} mm into each other, at most {-c.Least:0.##} mm is meant,"),
                _ => FormattableString.Invariant($"run {-c.Min:0.##} mm into each other"),
            };
            yield return new(
                Level.Fault, Name, $"{c.A.Name} / {c.B.Name}", Proof.Deg(c.FirstBelow!.Value), Proof.Deg(c.AtCrank), c.Min, c.Least, "mm",
                $"'{c.A.Name}' and '{c.B.Name}' {what} {where} at {proof.Where(c.AtCrank, shaft)}; first below the limit at {proof.Where(c.FirstBelow.Value, shaft)}",
                Advice(c));
        }
    }

    /// <summary>Smallest distance or depth that is told as a number, mm.</summary>
    private const double Shown = 0.005;

    private static string Advice(Clearance c)
    {
        // Rounded up, so that what is advised is enough.
        var by = Math.Ceiling(10 * (c.Least - c.Min)) / 10;
        return c.A.Kind == PartKind.Board || c.B.Kind == PartKind.Board
            ? FormattableString.Invariant($"Make the opening reach {by:0.#} mm or more farther there, or move what passes through it, or name the pair under 'touching' if they are meant to")
            : FormattableString.Invariant($"Move one of them by {by:0.#} mm or more, make it smaller there, or name the pair under 'touching' if they are meant to");
    }
}
