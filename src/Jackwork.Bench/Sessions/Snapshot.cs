using Jackwork.Checks;
using Jackwork.Design;

namespace Jackwork.Bench.Sessions;

/// <summary>How the text on disk stands to the text here.</summary>
public enum SaveState
{
    /// <summary>They are the same.</summary>
    Saved,

    /// <summary>The text here will be written in a moment.</summary>
    Waiting,

    /// <summary>Another program changed the file; nothing is written until the maker chooses.</summary>
    Foreign,

    /// <summary>It could not be written.</summary>
    Failed,
}

/// <summary>Everything that the tabs show of a design at one moment.</summary>
public sealed record Snapshot
{
    /// <summary>Counts the texts; a later one is larger.</summary>
    public int Version { get; init; }

    /// <summary>The text.</summary>
    public string Text { get; init; } = "";

    /// <summary>What is wrong with the text; empty where it reads.</summary>
    public IReadOnlyList<Problem> Problems { get; init; } = [];

    /// <summary>The last text that read, worked out; may be of an earlier version.</summary>
    public Work? Work { get; init; }

    /// <summary>The last meshes.</summary>
    public Shapes? Solids { get; init; }

    /// <summary>The last verdict on the parts.</summary>
    public Judged? Parts { get; init; }

    /// <summary>The last verdict on motion, cams, wheels and rules.</summary>
    public Judged? Moving { get; init; }

    /// <summary>What went wrong inside the program, a sentence; null where nothing did.</summary>
    public string? Failure { get; init; }

    /// <summary>Whether there is a text before this one.</summary>
    public bool CanUndo { get; init; }

    /// <summary>Whether there is a text after this one.</summary>
    public bool CanRedo { get; init; }

    /// <summary>How the file stands.</summary>
    public SaveState Save { get; init; }

    /// <summary>Why it could not be written.</summary>
    public string? SaveTrouble { get; init; }

    /// <summary>The text that another program wrote.</summary>
    public string? Foreign { get; init; }

    /// <summary>All findings known: those of the motion, and those of the parts as last looked at; worst first.</summary>
    public IReadOnlyList<Finding> Findings => [.. (Moving?.Findings ?? []).Concat(Parts?.Findings ?? []).OrderBy(f => f.Level).ThenBy(f => f.From ?? -1)];

    /// <summary>Whether some of the verdict is of an earlier text than the motion shown.</summary>
    public bool IsBehind => Work is not null && (Parts?.Work != Work || Moving?.Work != Work);
}
