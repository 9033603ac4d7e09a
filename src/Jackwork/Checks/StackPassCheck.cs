using Jackwork.Parts;
using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>Things that can't be put on their shaft or axle: a bore too small for it, or for what is fixed for good at both ends.</summary>
internal sealed class StackPassCheck : ICheck
{
    /// <summary>What the flats of a solid may take from the diameter of its hole, mm.</summary>
    private const double Hole = 0.05;

    public string Name => "stack-pass";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var stack in proof.Stacks)
        {
            foreach (var item in stack.Items)
            {
                var core = stack.CoreAt(item.Middle);
                if (item.Bore < core.Outside - Hole && item.To > core.From && item.From < core.To)
                {
                    yield return new(
                        Level.Fault, Name, item.Name, null, null, item.Bore, core.Outside, "mm",
                        FormattableString.Invariant($"'{item.Name}' can't go on '{core.Name}' at {item.Middle:0.##} mm along it: its bore is {item.Bore:0.##} mm, the rod {core.Outside:0.##} mm thick"),
                        FormattableString.Invariant($"Give it a bore of {core.Outside:0.##} mm"));
                }
                else if (item.Role is StackRole.Fixed or StackRole.Loose or StackRole.Spacer && !stack.Items.Any(i => i.IsGluedTo(item) && i.Bore < item.Bore) && Obstacle(stack, core, item, -1) is { } behind && Obstacle(stack, core, item, 1) is { } ahead)
                {
                    yield return new(
                        Level.Note, Name, item.Name, null, null, item.Bore, Math.Min(behind.Reach, ahead.Reach), "mm",
                        FormattableString.Invariant($"'{item.Name}', bore {item.Bore:0.##} mm, can pass neither '{behind.Name}' ({behind.Reach:0.##} mm round the axis) nor '{ahead.Name}' ({ahead.Reach:0.##} mm) on '{core.Name}'"),
                        "Put it on before one of the two is fixed, and hold that one by a screw if it is to come off again");
                }
            }
        }
    }

    // The nearest thing on that side that stays on the rod for good and reaches too far out. Hubs come off by their grub screws,
    // and so do collars.
    private static StackItem? Obstacle(Stack stack, StackItem core, StackItem item, int side) => stack.Items
        .Where(o => !o.IsOneWith(item) && o.Reach > item.Bore + Hole && side * (o.Middle - item.Middle) > 0
            && o.Part.Body == core.Part.Body && o is { Role: StackRole.Fixed, Part.Kind: PartKind.Lever }
            && o.To > core.From && o.From < core.To)
        .MinBy(o => side * o.Middle);
}
