namespace Jackwork.Parts;

/// <summary>How a part is made.</summary>
public enum Process
{
    /// <summary>Cut from sheet on the router.</summary>
    Routed,

    /// <summary>Turned on the lathe.</summary>
    Turned,

    /// <summary>Cut to length from bar.</summary>
    Cut,

    /// <summary>Bent from wire.</summary>
    Bent,

    /// <summary>Carved.</summary>
    Carved,

    /// <summary>Sawn from board or block and filed or planed to size.</summary>
    Sawn,

    /// <summary>Bought ready.</summary>
    Bought,
}

/// <summary>How parts of each kind are usually made, and how that is said.</summary>
public static class Processes
{
    /// <summary>The usual way for a kind of part (common practice, no source).</summary>
    public static Process Usual(PartKind kind) => kind switch
    {
        PartKind.Cam or PartKind.Wheel or PartKind.Plate or PartKind.Lever or PartKind.Board => Process.Routed,
        PartKind.Turned or PartKind.Hub or PartKind.Roller or PartKind.Bush or PartKind.Guide => Process.Turned,
        PartKind.Shaft or PartKind.Axle or PartKind.Pin or PartKind.Slide => Process.Cut,
        PartKind.Rod => Process.Bent,
        PartKind.Grub or PartKind.Screw or PartKind.Washer or PartKind.Cord or PartKind.Belt => Process.Bought,
        PartKind.Figure => Process.Carved,
        _ => Process.Sawn,
    };

    /// <summary>In words, as in lists.</summary>
    public static string Words(this Process process) => process switch
    {
        Process.Routed => "routed from sheet",
        Process.Turned => "turned",
        Process.Cut => "cut from bar",
        Process.Bent => "bent from wire",
        Process.Carved => "carved",
        Process.Sawn => "sawn",
        _ => "bought",
    };
}
