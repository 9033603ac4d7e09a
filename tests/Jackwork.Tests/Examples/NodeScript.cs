using System.Diagnostics;
using System.Text.Json;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Examples;

/// <summary>Runs a script with the npm packages of the tests, such as the rigid-body engine.</summary>
internal static class NodeScript
{
    /// <summary>The pairs of numbers that a script writes as JSON for a job that it reads as JSON.</summary>
    public static List<(double A, double B)> Pairs(string script, object job)
    {
        var start = new ProcessStartInfo("node", ["-e", script])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = System.IO.Path.GetFullPath(System.IO.Path.Combine(ExampleFiles.FolderOf("keeper"), "..", "..", "tests", "npm")),
        };
        using var run = Process.Start(start)!;
        var errors = run.StandardError.ReadToEndAsync();
        run.StandardInput.Write(JsonSerializer.Serialize(job));
        run.StandardInput.Close();
        var output = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        Assert.True(run.ExitCode == 0, errors.Result + "('./dev test' installs the packages.)");
        using var json = JsonDocument.Parse(output);
        return [.. json.RootElement.EnumerateArray().Select(r => (r[0].GetDouble(), r[1].GetDouble()))];
    }
}
