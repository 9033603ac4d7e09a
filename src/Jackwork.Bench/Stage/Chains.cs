using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Parts;
using static System.FormattableString;

namespace Jackwork.Bench.Stage;

/// <summary>Who drives whom, in words and as lists of bodies.</summary>
/// <param name="machine">The machine.</param>
internal sealed class Chains(Machine machine)
{
    /// <summary>What a part is, in a sentence.</summary>
    public string What(Part part)
    {
        var kind = part.Kind switch
        {
            PartKind.Cam => "a cam",
            PartKind.Wheel => "a toothed wheel",
            PartKind.Plate => $"a plate of a {part.Serves?.Word ?? "mechanism"}",
            PartKind.Turned => $"a wheel or worm of a {part.Serves?.Word ?? "mechanism"}, turned",
            PartKind.Belt => $"the {part.Serves?.Word ?? "belt"}",
            PartKind.Hub => "a hub",
            PartKind.Shaft => "a shaft",
            PartKind.Axle => "an axle",
            PartKind.Lever => "a lever",
            PartKind.Roller => "a roller or face that touches a cam",
            PartKind.Pin => "a pin",
            PartKind.Rod => "a push rod",
            PartKind.Cord => "a straight piece of cord",
            PartKind.Slide => "the rod of a slide",
            PartKind.Handle => "part of the handle",
            PartKind.Board => "a board of the case",
            _ => "part of the figure",
        };
        var carried = part.Body.Member == Member.Case ? "fixed to the case"
            : part.Body.IsRod ? $"between {Name(machine.Drives[part.Body.Member].Driver)} and {Name(part.Body.Member)}"
            : $"on {Name(part.Body.Member)}";
        return Invariant($"{Capital(kind)} {carried}, {part.Material.Name}, {part.Mass:0.#} g.");
    }

    /// <summary>What moves a member, back along the drives to the hand.</summary>
    public string DrivenBy(int member)
    {
        if (member == Member.Case)
        {
            return "It stands still.";
        }

        var words = $"{Capital(Name(member))} ";
        var first = true;
        for (var m = member; m != Member.Case && machine.Drives[m].Driver != Member.Case; m = machine.Drives[m].Driver)
        {
            words += (first ? "" : ", which ") + machine.Drives[m].How(Name(machine.Drives[m].Driver));
            first = false;
        }

        return words + (first ? "is turned by the hand." : ", which the hand turns.");
    }

    /// <summary>What a member moves next.</summary>
    public string Drives(int member)
    {
        var next = machine.Drives.Where(d => member != Member.Case && d.Driver == member).Select(d => $"{Name(d.Driven)} ({d.Word})").ToList();
        return next.Count == 0 ? "It drives nothing further." : $"It drives {List(next)}.";
    }

    /// <summary>The members from one back to the crank.</summary>
    public IReadOnlyList<int> ToCrank(int member)
    {
        var chain = new List<int>();
        for (var m = member; m != Member.Case; m = machine.Drives[m].Driver)
        {
            chain.Add(m);
        }

        return chain;
    }

    private string Name(int member) => member == Member.Case ? "the case" : machine.NameOf(member);

    private static string List(List<string> names) => names.Count == 1 ? names[0] : string.Join(", ", names[..^1]) + " and " + names[^1];

    private static string Capital(string s) => char.ToUpperInvariant(s[0]) + s[1..];
}
