using Jackwork.Lanterns;

namespace Jackwork.Checks;

/// <summary>Whether the cutter passes the gaps of a lantern's wheel.</summary>
internal sealed class LanternCutterCheck : ICheck
{
    public string Name => "lantern-cutter";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var l in proof.MechanismsOf<LanternWork>().Where(l => l.Impossible is null && proof.Cutter > 2 * l.Sizes.GapRadius))
        {
            var widest = Math.Floor(20 * l.Sizes.GapRadius) / 10;
            yield return new(
                Level.Fault, Name, l.Name, null, null, proof.Cutter, widest, "mm",
                FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not pass the gaps of the wheel of {l.Sizes.Teeth} teeth that gears with the lantern at '{l.Name}', which are {2 * l.Sizes.GapRadius:0.##} mm wide"),
                FormattableString.Invariant($"Use a cutter of {widest:0.#} mm or less, or thicker pins"));
        }
    }
}
