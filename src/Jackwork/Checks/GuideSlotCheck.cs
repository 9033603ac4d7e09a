using Jackwork.Guides;

namespace Jackwork.Checks;

/// <summary>Slots of guides that can't be cut, run into themselves, or leave too little of their sleeve.</summary>
internal sealed class GuideSlotCheck : ICheck
{
    /// <summary>Parts of a slot farther apart along it than this many widths with the wall between are two.</summary>
    private const double Neighbours = 3;

    public string Name => "guide-slot";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var least = proof.Limits.Rim;
        foreach (var guide in proof.MechanismsOf<GuideWork>())
        {
            var name = guide.Name;
            if (guide.Impossible is { } why)
            {
                yield return new(Level.Fault, Name, name, null, null, guide.Slot.Half, guide.Slot.Undercut?.Rounding ?? 0, "mm", $"the sleeve of '{name}' can't be made: {why}", guide.Slot.Undercut is null ? "Take a thinner rod ('axle' of its body) or a thicker sleeve" : "Enlarge the 'rounding', take a thinner pin, or ask a sharp corner by 'rounding: 0'");
                continue;
            }

            if (guide.Slot.Nearest(Neighbours * (guide.Slot.Width + least)) is { } near && near.Wall < least)
            {
                yield return new(
                    Level.Fault, Name, name, null, null, near.Wall, least, "mm",
                    near.Wall <= 0
                        ? FormattableString.Invariant($"the slot of '{name}' runs into itself {near.At:0.#} mm and {near.Other:0.#} mm along its track")
                        : FormattableString.Invariant($"between {near.At:0.#} mm and {near.Other:0.#} mm along the track only {near.Wall:0.##} mm of the sleeve of '{name}' are left, limit {least:0.##} mm"),
                    "Take a thicker sleeve, a thinner pin, a smaller swing, or more lift for a turn");
            }

            var (slot, sleeve) = (guide.SlotReach, guide.Sleeve);
            var end = Math.Min(slot.From - sleeve.From, sleeve.To - slot.To);
            if (end < least)
            {
                yield return new(
                    Level.Fault, Name, name, null, null, end, least, "mm",
                    end < 0
                        ? FormattableString.Invariant($"the slot of '{name}' is longer than its sleeve: it reaches {-end:0.##} mm beyond its end")
                        : FormattableString.Invariant($"only {end:0.##} mm are left between the slot of '{name}' and the end of its sleeve, limit {least:0.##} mm"),
                    FormattableString.Invariant($"Let the sleeve reach from {slot.From - least:0.##} or lower to {slot.To + least:0.##} mm or higher"));
            }
        }
    }
}
