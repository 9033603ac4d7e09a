using Jackwork.Belts;

namespace Jackwork.Checks;

/// <summary>Shafts at a distance at which no whole number of links or teeth fits; and how long a smooth belt is.</summary>
internal sealed class BeltLengthCheck : ICheck
{
    public string Name => "belt-length";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<BeltWork>().Where(w => w.Impossible is null))
        {
            var what = $"the {w.Word} from '{proof.Machine.NameOf(w.Drive.Driver)}' to '{w.Name}'";
            if (w.Fit is not { } fit)
            {
                yield return new(Level.Note, Name, w.Name, null, null, w.Run.Length, w.Run.Length, "mm", FormattableString.Invariant($"{what} is {w.Run.Length:0.#} mm long at its middle, {w.Run.Span:0.#} mm of it straight on either side"), "Cut it shorter by what it stretches when it is put on");
                continue;
            }

            var off = fit.Distance - w.Run.Distance;
            if (Math.Abs(off) > proof.Limits.CentreDistance)
            {
                var by = off * w.Towards;
                yield return new(
                    Level.Fault, Name, w.Name, null, null, w.Run.Distance, fit.Distance, "mm",
                    FormattableString.Invariant($"{what} is {w.Run.Length / w.Drive.Spec.Pitch!.Value:0.##} {(w.Kind.IsChain ? "links" : "teeth")} long on shafts {w.Run.Distance:0.###} mm apart; with {fit.Links} it fits {fit.Distance:0.###} mm"),
                    FormattableString.Invariant($"Move the shaft of '{w.Name}' by [{by.X:0.###}, {by.Y:0.###}, {by.Z:0.###}], or let an idler take up the slack"));
            }
        }
    }
}
