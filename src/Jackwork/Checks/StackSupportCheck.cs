using Jackwork.Parts;
using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>Shafts and axles too short for what stands on them, or carried by too few bearings.</summary>
/// <remarks>Bearings are not asked for where the design gives no case.</remarks>
internal sealed class StackSupportCheck : ICheck
{
    /// <summary>Largest clearance in diameter at which a hole still carries what runs in it, mm; a wider one is a passage (common practice, no source).</summary>
    private const double Passage = 1;

    public string Name => "stack-support";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var stack in proof.Stacks)
        {
            foreach (var item in stack.Items.Where(i => i.Role == StackRole.Fixed || i is { Role: StackRole.Loose, Part.Kind: PartKind.Lever }))
            {
                var core = stack.CoreAt(item.Middle);
                var (behind, ahead) = (core.From - item.From, item.To - core.To);
                if (Math.Max(behind, ahead) > Stack.Same)
                {
                    var (more, end, key) = ahead > behind ? (ahead, "ahead", "to") : (behind, "behind", "from");
                    yield return new(
                        Level.Fault, Name, item.Name, null, null, more, 0, "mm",
                        FormattableString.Invariant($"'{item.Name}' ({item.From:0.##} to {item.To:0.##} mm) stands {more:0.0#} mm beyond the end of '{core.Name}' {end}, which runs from {core.From:0.##} to {core.To:0.##} mm"),
                        FormattableString.Invariant($"Give '{core.Name}' a body with '{key}: {(ahead > behind ? item.To : item.From):0.##}' or beyond"));
                }
            }

            foreach (var core in proof.Machine.Design.Case is null ? [] : stack.Cores)
            {
                if (Bearings(stack, core) is { } finding)
                {
                    yield return finding;
                }
            }
        }
    }

    private Finding? Bearings(Stack stack, StackItem core)
    {
        var turns = core.Part.Body.Member != stack.Carrier;
        bool Carries(StackItem i) => i is { Role: StackRole.Stop, IsCollar: false } || (turns && i is { Role: StackRole.Loose, Part.Kind: PartKind.Figure });
        var bearings = stack.Items.Where(i => Carries(i) && i.Bore - core.Outside < Passage && Math.Min(i.To, core.To) - Math.Max(i.From, core.From) > Stack.Same).ToList();
        if (bearings.Count == 0)
        {
            var near = stack.Items.Where(i => i is { Role: StackRole.Stop, IsCollar: false }).MinBy(i => Math.Max(core.From - i.To, i.From - core.To));
            return new(
                Level.Fault, Name, core.Name, null, null, 0, 1, "bearings",
                FormattableString.Invariant($"nothing carries '{core.Name}', which runs from {core.From:0.##} to {core.To:0.##} mm along its direction"),
                near is null
                    ? "Give it a body with 'from' and 'to' that reach through a board, or a block on its carrier for it to run in"
                    : FormattableString.Invariant($"Let it reach through '{near.Name}', {near.From:0.##} to {near.To:0.##} mm along its direction, by its body's 'from' and 'to'"));
        }

        // A board counts in full where the rod goes through; else it must go in by its own diameter.
        var shallow = bearings.Find(b => Math.Min(b.To, core.To) - Math.Max(b.From, core.From) is var held && held < b.Length - Stack.Same && held < core.Outside - Stack.Same);
        if (shallow is not null)
        {
            var held = Math.Min(shallow.To, core.To) - Math.Max(shallow.From, core.From);
            return new(
                Level.Caution, Name, core.Name, null, null, held, Math.Min(core.Outside, shallow.Length), "mm",
                FormattableString.Invariant($"'{core.Name}' goes only {held:0.##} mm into '{shallow.Name}'"),
                FormattableString.Invariant($"Let it go in by {Math.Min(core.Outside, shallow.Length):0.##} mm"));
        }

        return turns && bearings.Count == 1
            ? new(
                Level.Caution, Name, core.Name, null, null, 1, 2, "bearings",
                FormattableString.Invariant($"'{core.Name}' turns in '{bearings[0].Name}' alone, and can tilt in its hole"),
                "Let it reach through a second board, or through a block on its carrier")
            : null;
    }
}
