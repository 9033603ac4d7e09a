using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>A dead centre that the motion passes through.</summary>
internal sealed class DeadCentreCheck : ICheck
{
    public string Name => "dead-centre";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var group in proof.Motion.DeadCentres.GroupBy(d => d.Relation))
        {
            var r = group.Key;
            var first = group.First();
            var at = string.Join(", ", group.Take(4).Select(d => FormattableString.Invariant($"{Proof.Deg(d.At):0.#}°")));
            var name = proof.Machine.NameOf(r.At(first.Unknown));
            yield return new(
                Level.Fault, Name, proof.Machine.NameOf(r.Driven), Proof.Deg(first.At), Proof.Deg(group.Last().At), 0, Proof.Deg(proof.Limits.TransmissionAngle), "deg",
                $"the {r.Kind} between '{proof.Machine.NameOf(r.Driver)}' and '{proof.Machine.NameOf(r.Driven)}' passes a dead centre of '{name}' at crank {at}; there it can go on either way",
                $"Move a pin so that '{name}' never comes in line with the {r.Kind}, or lead it over with a second drive a quarter turn apart");
        }
    }
}
