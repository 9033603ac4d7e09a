namespace Jackwork.Design;

/// <summary>What reading a design file gave: the content, or every problem in it; never half of each.</summary>
/// <param name="Spec">The content, or null when there are problems.</param>
/// <param name="Problems">The problems, in the order of the file; empty when there are none.</param>
public sealed record DesignReading(DesignSpec? Spec, IReadOnlyList<Problem> Problems)
{
    /// <summary>Where each path stands in the file, for the stages after reading.</summary>
    internal ProblemList Places { get; init; } = new();
}

/// <summary>Reads the text of a design file.</summary>
public static class DesignReader
{
    /// <summary>The content of a text that is right and was just edited, from the nodes that the edit left; null where it has to be read.</summary>
    internal static DesignReading? Known(string text)
    {
        var problems = new ProblemList();
        var spec = DesignSource.Known(text) is { IsClean: true } source ? new Binder(problems).Part(typeof(DesignSpec), source.Root, "") as DesignSpec : null;
        return spec is not null && problems.IsEmpty ? new(spec, []) { Places = problems } : null;
    }

    /// <summary>Reads <paramref name="text"/>; any text at all gives a reading, never an exception.</summary>
    public static DesignReading Read(string text)
    {
        var problems = new ProblemList();
        var spec = NodeReader.Read(text, problems) is { } root
            ? new Binder(problems).Part(typeof(DesignSpec), root, "") as DesignSpec
            : null;
        return new(problems.IsEmpty ? spec : null, problems.All) { Places = problems };
    }
}
