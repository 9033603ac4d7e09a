namespace Jackwork.Design;

/// <summary>Collects the problems of one file and knows where each path of the design stands in it.</summary>
public sealed class ProblemList
{
    private readonly List<Problem> problems = [];
    private readonly Dictionary<string, Mark> marks = [];

    /// <summary>Everything found so far, in the order of the file.</summary>
    public IReadOnlyList<Problem> All => [.. problems.OrderBy(p => p.At.Line).ThenBy(p => p.At.Column)];

    /// <summary>Whether nothing is wrong so far.</summary>
    public bool IsEmpty => problems.Count == 0;

    /// <summary>How many so far.</summary>
    public int Count => problems.Count;

    /// <summary>Adds a problem at a known place; past <see cref="NodeLimits.MaxProblems"/> only that there are more.</summary>
    public void Add(Mark at, string path, string what, string remedy)
    {
        if (problems.Count < NodeLimits.MaxProblems)
        {
            problems.Add(new(at, path, what, remedy));
        }
        else if (problems.Count == NodeLimits.MaxProblems)
        {
            problems.Add(new(at, "", $"there are more problems than the {NodeLimits.MaxProblems} listed", "Mend these first"));
        }
    }

    /// <summary>Adds a problem at the place where <paramref name="path"/> stands, or the nearest path above it.</summary>
    public void Add(string path, string what, string remedy) => Add(Find(path), path, what, remedy);

    /// <summary>Notes where a path stands.</summary>
    internal void Remember(string path, Mark at) => marks.TryAdd(path, at);

    private Mark Find(string path)
    {
        while (!marks.ContainsKey(path) && path.LastIndexOf('.') is var dot && dot >= 0)
        {
            path = path[..dot];
        }

        return marks.TryGetValue(path, out var at) ? at : new(1, 1);
    }
}
