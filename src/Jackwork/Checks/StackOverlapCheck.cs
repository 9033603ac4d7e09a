using Jackwork.Parts;
using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>Two things on a shaft or axle that want the same place along it, such as a collet too long for the gap beside a gear.</summary>
internal sealed class StackOverlapCheck : ICheck
{
    public string Name => "stack-overlap";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var stack in proof.Stacks)
        {
            for (var i = 0; i < stack.Items.Count; i++)
            {
                for (var k = i + 1; k < stack.Items.Count; k++)
                {
                    var (a, b) = (stack.Items[i], stack.Items[k]);
                    var (from, to) = (Math.Max(a.From, b.From), Math.Min(a.To, b.To));
                    if (to - from > Stack.Same && a.Meets(b) && !a.IsOneWith(b))
                    {
                        yield return Of(stack, a, b, from, to);
                    }
                }
            }
        }
    }

    private Finding Of(Stack stack, StackItem a, StackItem b, double from, double to)
    {
        var deep = to - from;
        var hub = a.Part.Kind == PartKind.Hub ? a : b.Part.Kind == PartKind.Hub ? b : null;
        var apart = FormattableString.Invariant($"set '{a.Name}' and '{b.Name}' {deep:0.0#} mm farther apart");
        return new(
            Level.Fault, Name, $"{a.Name} / {b.Name}", null, null, deep, 0, "mm",
            FormattableString.Invariant($"on '{stack.Name}', '{a.Name}' ({a.From:0.##} to {a.To:0.##} mm) and '{b.Name}' ({b.From:0.##} to {b.To:0.##} mm) overlap by {deep:0.0#} mm"),
            hub is not null && hub.Length > deep
                ? FormattableString.Invariant($"Make '{hub.Name}' {hub.Length - deep:0.##} mm long or shorter, turn it to the other side of its plate, or {apart}")
                : char.ToUpperInvariant(apart[0]) + apart[1..]);
    }
}
