using Jackwork.Parts;

namespace Jackwork.Checks;

/// <summary>Openings of the case that can't be cut: they leave their board or run into another.</summary>
internal sealed class OpeningCheck : ICheck
{
    public string Name => "case-opening";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        if (proof.Machine.Design.Case is not { } spec)
        {
            yield break;
        }

        foreach (var side in CaseParts.Boards(spec))
        {
            foreach (var o in OpeningPlace.Cut(spec, side).Where(o => o.Fault is not null))
            {
                var given = spec.Openings![o.Number - 1];
                yield return new(
                    Level.Fault, Name, $"case {side.Name}", null, null, 0, OpeningPlace.Wood, "mm",
                    FormattableString.Invariant($"opening {o.Number} of the case, at [{given.At.X:0.##}, {given.At.Y:0.##}, {given.At.Z:0.##}] in '{side.Name}', {o.Fault}; it is left out"),
                    FormattableString.Invariant($"Set it elsewhere or make it smaller, so that {OpeningPlace.Wood} mm of wood or more stays beside it, or make one opening of the two"));
            }
        }
    }
}
