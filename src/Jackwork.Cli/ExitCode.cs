namespace Jackwork.Cli;

/// <summary>What the command leaves behind for scripts.</summary>
internal static class ExitCode
{
    /// <summary>No fault was found.</summary>
    public const int Good = 0;

    /// <summary>The design was read and worked out, and has faults.</summary>
    public const int Faults = 1;

    /// <summary>The design file or the command line is wrong.</summary>
    public const int BadInput = 2;

    /// <summary>The program itself failed.</summary>
    public const int Internal = 3;

    /// <summary>Stopped with Ctrl-C, as shells tell it (128 + SIGINT).</summary>
    public const int Stopped = 130;
}
