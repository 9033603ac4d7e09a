using Jackwork.Guides;
using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>Guides whose pin or rod jams, or nearly, under the push of their drive.</summary>
/// <remarks>See <see cref="GuideBalance"/>. Where the member stands still nothing is judged.</remarks>
internal sealed class GuideJamCheck : ICheck
{
    /// <summary>Share of the push's work below which a guide is stiff (common practice, no source).</summary>
    private const double Stiff = 0.25;

    /// <summary>Speed along the track, mm per rad of crank, below which it stands still.</summary>
    private const double Still = 1e-6;

    public string Name => "guide-jam";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var machine = proof.Machine;
        foreach (var guide in proof.MechanismsOf<GuideWork>())
        {
            if (machine.Drives[guide.Member] is not Relation relation || Worst(proof, guide, relation) is not { } worst || worst.Left >= Stiff)
            {
                continue;
            }

            var (name, driver, at) = (guide.Name, machine.NameOf(relation.Driver), proof.At(worst.Step));
            var jams = worst.Left <= 0;
            var slot = worst.Balance.Wall >= worst.Balance.Lean * worst.Balance.Speed;
            yield return new(
                jams ? Level.Fault : Level.Caution, Name, name, Proof.Deg(at), Proof.Deg(at), worst.Left, jams ? 0 : Stiff, "",
                FormattableString.Invariant($"{(jams ? $"'{name}' jams in its guide" : $"'{name}' runs stiffly in its guide")} at {proof.Where(at, machine.Crank)}: pushed by the {relation.Kind} from '{driver}' at {Proof.Deg(worst.Balance.Angle):0.#}° to the slot, {(jams ? "none" : FormattableString.Invariant($"only {100 * worst.Left:0} %"))} of the work is left with a friction of {GuideSizing.Friction:0.##}, most being lost {(slot ? "at the pin" : "by the rod's leaning in its sleeve")}"),
                slot ? "Let the push stand more nearly along the slot there: set the pins of its drive elsewhere, or lead the track by a helix" : "Set the pin of its drive nearer to the axis and to the sleeve, or make the sleeve longer");
        }
    }

    private static (double Left, GuideBalance Balance, int Step)? Worst(Proof proof, GuideWork guide, Relation relation)
    {
        (double Left, GuideBalance Balance, int Step)? worst = null;
        var states = new MemberState[proof.Machine.Members.Count];
        for (var i = 0; i < proof.Motion.Steps; i++)
        {
            var q = proof.Motion.Of(guide.Member)[i];
            if (Math.Abs(q.First) < Still)
            {
                continue;
            }

            Residuals.Fill(proof.Motion, i, states);
            if (relation.Push(states) is not { } push)
            {
                return null;
            }

            var balance = guide.Balance(q.Value, push);
            if (balance.Left(GuideSizing.Friction) is var left && !(left >= worst?.Left))
            {
                worst = (left, balance, i);
            }
        }

        return worst;
    }
}
