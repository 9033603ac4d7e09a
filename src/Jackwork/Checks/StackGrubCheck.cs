using Jackwork.Parts;
using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>Grub screws that their keys don't reach, at the time that they do, and plates with no hub to hold them.</summary>
internal sealed class StackGrubCheck : ICheck
{
    public string Name => "stack-grub";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var grub in proof.Stacks.SelectMany(s => s.Grubs).Where(g => !g.IsReachable))
        {
            var size = grub.Hub.Grub!;
            yield return new(
                Level.Fault, Name, grub.Hub.Name, null, null, 0, size.Reach, "mm",
                FormattableString.Invariant($"the key of the grub screw {size.Name} in '{grub.Hub.Name}', {size.Key:0.#} mm across and {size.Reach:0.#} mm long, gets straight to it at no angle of the crank; '{grub.InTheWay}' is in the way"),
                "Turn the hub to the other side of its plate, move what is in the way, or cut an opening for the key");
        }

        foreach (var stack in proof.Stacks)
        {
            foreach (var plate in stack.Items.Where(i => i.Part.Kind is PartKind.Cam or PartKind.Wheel && !stack.Items.Any(h => h.Plate == i)))
            {
                yield return new(
                    Level.Note, Name, plate.Name, null, null, 0, 1, "hub",
                    $"'{plate.Name}' has no hub and so no grub screw: the design doesn't say what holds it on '{stack.Name}'",
                    "Give it a hub, or glue or pin it to its neighbour");
            }
        }
    }
}
