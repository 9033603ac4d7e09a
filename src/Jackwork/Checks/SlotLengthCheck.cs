using Jackwork.Slots;

namespace Jackwork.Checks;

/// <summary>Slots that end before their pin does, or leave too little wood.</summary>
internal sealed class SlotLengthCheck : ICheck
{
    public string Name => "slot-length";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var slot in proof.MechanismsOf<SlotWork>())
        {
            var (s, name, least) = (slot.Sizes, proof.Machine.NameOf(slot.Drive.SlotIn), proof.Limits.Rim);
            Finding Fault(double measured, double limit, string message, string advice) => new(Level.Fault, Name, slot.Name, null, null, measured, limit, "mm", message, advice);
            if (s.Spare < 0)
            {
                yield return Fault(
                    s.Spare, 0, FormattableString.Invariant($"the pin goes from {s.Least:0.##} to {s.Most:0.##} mm along the slot of '{name}' and runs {-s.Spare:0.##} mm past its end"),
                    FormattableString.Invariant($"Let the slot reach from {Math.Floor(10 * s.Least) / 10:0.#} to {Math.Ceiling(10 * s.Most) / 10:0.#} or farther, or leave 'reach' out"));
            }

            if (slot.Bar is not { } bar)
            {
                continue;
            }

            if (slot.Impossible is { } why)
            {
                yield return Fault(bar, s.Width, $"the slot bar of '{name}' can't be made: {why}", "Take a wider bar, or leave 'bar' out");
                continue;
            }

            if ((bar - s.Width) / 2 < least)
            {
                yield return Fault((bar - s.Width) / 2, least, FormattableString.Invariant($"beside the slot of '{name}' only {(bar - s.Width) / 2:0.##} mm are left, limit {least:0.##} mm"), "Take a wider bar or a thinner pin");
            }

            if (slot.FromAxis is { } wall && wall < least)
            {
                yield return Fault(wall, least, FormattableString.Invariant($"the slot of '{name}' comes within {wall:0.##} mm of its axis, limit {least:0.##} mm"), "Set the axes farther apart, or take a smaller crank");
            }
        }
    }
}
