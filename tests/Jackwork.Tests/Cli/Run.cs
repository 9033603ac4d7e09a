using System.Globalization;
using Jackwork.Cli;

namespace Jackwork.Tests.Cli;

/// <summary>One command line, run in process: its exit code, what it printed as data and what as messages.</summary>
internal sealed record Run(int Code, string Data, string Messages)
{
    /// <summary>Runs the command line.</summary>
    public static Run Of(params string[] args)
    {
        var (data, messages) = (new StringWriter(CultureInfo.InvariantCulture), new StringWriter(CultureInfo.InvariantCulture));
        var code = CommandLine.Run(args, data, messages);
        return new(code, data.ToString(), messages.ToString());
    }
}
