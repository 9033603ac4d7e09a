using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>The transmission angle of rods, slots and cords, over the whole performance.</summary>
/// <remarks>R. L. Norton, Design of Machinery, section 3.3, asks 40 degrees or more for machines that carry load (from memory); 30 serves light figures (common practice, no source).</remarks>
internal sealed class TransmissionCheck : ICheck
{
    public string Name => "transmission-angle";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var machine = proof.Machine;
        var limit = proof.Limits.TransmissionAngle;
        foreach (var (r, angle, step) in proof.Transmission)
        {
            if (angle >= limit * (1 + Limits.Close))
            {
                continue;
            }

            var at = proof.At(step);
            var shaft = machine.Acted.FirstOrDefault(a => a.Chain.Contains(r))?.Shaft ?? machine.Crank;
            var astray = machine.Members[r.Driven].Joint.Kind switch
            {
                JointKind.Pivot => "towards its axis",
                JointKind.Slide => "sideways",
                _ => "across its track",
            };
            yield return new(
                angle < limit ? Level.Fault : Level.Caution, Name, machine.NameOf(r.Driven), Proof.Deg(at), Proof.Deg(at), Proof.Deg(angle), Proof.Deg(limit), "deg",
                FormattableString.Invariant($"the {r.Kind} from '{machine.NameOf(r.Driver)}' {(r.OnlyPulls ? "pulls" : "pushes")} '{machine.NameOf(r.Driven)}' {(angle < limit ? "too much" : "close to the limit")} {astray}: transmission angle {Proof.Deg(angle):0.#}° at {proof.Where(at, shaft)}, limit {Proof.Deg(limit):0.#}°"),
                $"Move the {(r.OnlyPulls ? "end" : "pin")} on '{machine.NameOf(r.Driven)}' so that the {r.Kind} stands nearer to square in mid-move, or ask a smaller move");
        }
    }
}
