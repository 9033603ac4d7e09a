namespace Jackwork.Design;

/// <summary>What is read of a file, so that a hostile one can neither hang nor exhaust the reader.</summary>
public static class NodeLimits
{
    /// <summary>Longest file taken, characters. The largest real designs are a fiftieth of it.</summary>
    public const int MaxCharacters = 1_000_000;

    /// <summary>Deepest nesting taken. The format itself needs eight.</summary>
    public const int MaxDepth = 32;

    /// <summary>Most nodes taken, aliases counted as often as they are used.</summary>
    public const int MaxNodes = 100_000;

    /// <summary>Most uses of an alias taken.</summary>
    public const int MaxAliases = 1_000;

    /// <summary>Most problems listed of one file; who has more has sent something that is no design.</summary>
    public const int MaxProblems = 200;
}
