using Jackwork.Parts;

namespace Jackwork.Stacks;

/// <summary>A stretch of a stack between two things that can't shift along it, with what is loose between them.</summary>
/// <param name="First">The one that bounds it from behind; null where nothing does.</param>
/// <param name="Between">Levers and spacers, by station.</param>
/// <param name="Last">The one that bounds it ahead; null where nothing does.</param>
/// <param name="Range">All gaps of the run together; none where an end is open.</param>
public sealed record StackRun(StackItem? First, IReadOnlyList<StackItem> Between, StackItem? Last, GapRange Range)
{
    /// <summary>All things of the run, by station.</summary>
    public IEnumerable<StackItem> All => new[] { First }.OfType<StackItem>().Concat(Between).Concat(new[] { Last }.OfType<StackItem>());

    /// <summary>Whether an end has nothing to run against.</summary>
    public bool IsOpen => First is null || Last is null;

    /// <summary>Levers that the run holds in place.</summary>
    public IEnumerable<StackItem> Held => Between.Where(i => i.Role == StackRole.Loose);

    /// <summary>Each gap with the things on both sides.</summary>
    public IEnumerable<(StackItem A, StackItem B, double Gap)> Gaps => All.Zip(All.Skip(1), (a, b) => (a, b, b.From - a.To));

    /// <summary>Joins things, in order, into a run.</summary>
    /// <param name="first">The bound behind.</param>
    /// <param name="between">What is loose.</param>
    /// <param name="last">The bound ahead.</param>
    /// <param name="middle">Station of the middle of the case's inside, mm: a board's inner face, which the case is drawn by, faces it.</param>
    public static StackRun Of(StackItem? first, IReadOnlyList<StackItem> between, StackItem? last, double middle)
    {
        if (first is null || last is null)
        {
            return new(first, between, last, default);
        }

        var nominal = last.From - first.To - between.Sum(i => i.Length);
        var tolerances = Face(first, first.To <= middle).Concat(between.Select(i => i.Tolerance)).Concat(Face(last, last.From >= middle));
        return new(first, between, last, GapRange.Of(nominal, tolerances));
    }

    // How far the bounding face may stand out from where it is drawn. A plate is set by its middle, a hub stands out from its
    // plate, a board is set by its inner face, and a bush flush with that.
    private static IEnumerable<Tolerance> Face(StackItem item, bool inner)
    {
        if (item.Plate is { } plate)
        {
            yield return plate.Tolerance.Share(0.5);
            yield return item.Tolerance;
        }
        else if (item.Part.Kind is not (PartKind.Board or PartKind.Bush))
        {
            yield return item.Tolerance.Share(0.5);
        }
        else if (!inner)
        {
            yield return item.Tolerance;
        }
    }
}
