using System.Diagnostics;
using System.Text.Json;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>Runs a few lines of Debian's Python (python3-ezdxf, python3-shapely) on a file and reads the JSON they print.</summary>
internal static class OutsideReader
{
    public static JsonElement Read(string script, string content)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, content);
            var start = new ProcessStartInfo("/usr/bin/python3", ["-c", script, file]) { RedirectStandardOutput = true, RedirectStandardError = true };
            using var run = Process.Start(start)!;
            var errors = run.StandardError.ReadToEndAsync();
            var output = run.StandardOutput.ReadToEnd();
            run.WaitForExit();
            Assert.True(run.ExitCode == 0, errors.Result);
            using var json = JsonDocument.Parse(output);
            return json.RootElement.Clone();
        }
        finally
        {
            File.Delete(file);
        }
    }
}
