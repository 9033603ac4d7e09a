using Jackwork.Checks;
using Jackwork.Tests.Motion;
using Xunit;

namespace Jackwork.Tests.Checks;

/// <summary>Designs for the checks: sound ones, of which a test spoils one thing.</summary>
internal static class Designs
{
    /// <summary>One cam, one slide lifted 10 mm; nothing to find.</summary>
    public const string Lift = """
        jackwork: 1
        title: T
        crank: {turns: shaft, rpm: 20}
        cutter: 2
        members:
          shaft:
            pivot: {through: [0, 0, 0], along: x}
          lift:
            slide: {along: y}
            cam:
              on: shaft
              follower: {roller: 8, at: [0, 34, 0]}
              hub: 16
              bore: 6
        timing:
          lift:
            over: shaft
            moves:
              - {from: 20, to: 140, reach: 10, law: cycloidal}
              - {from: 200, to: 320, reach: rest, law: cycloidal}
        """;

    /// <summary>Two shafts geared 1 to 2 at the distance that their teeth ask for; nothing to find.</summary>
    public const string Pair = """
        jackwork: 1
        title: T
        crank: {turns: handle, rpm: 30}
        cutter: 2
        members:
          handle:
            pivot: {through: [0, 0, 0], along: x}
          main:
            pivot: {through: [0, 75, 0], along: x}
            gear: {with: handle, teeth: [20, 40], module: 2.5, thinning: 0.1}
        """;

    /// <summary>A crank-rocker (Norton's example 4-1 enlarged for better angles); nothing to find.</summary>
    public const string Rocker = """
        jackwork: 1
        title: T
        crank: {turns: crank, rpm: 30}
        members:
          crank:
            pivot: {through: [0, 0, 0], along: z}
          rocker:
            pivot: {through: [100, 0, 0], along: z}
            rod: {from: crank, pins: [[0, 20, 0], [100, 70, 0]]}
        """;

    /// <summary>Text with one place changed.</summary>
    public static string With(this string text, string place, string instead)
    {
        Assert.Contains(place, text, StringComparison.Ordinal);
        return text.Replace(place, instead, StringComparison.Ordinal);
    }

    /// <summary>All findings of a design.</summary>
    public static IReadOnlyList<Finding> Findings(string text) => Verdict.Of(Proof.Of(Machines.Of(text))).Findings;

    /// <summary>The findings of one check.</summary>
    public static IReadOnlyList<Finding> Findings(string text, string check) => [.. Findings(text).Where(f => f.Check == check)];

    /// <summary>The one finding of a check, which must name its place and say what to do.</summary>
    public static Finding Only(string text, string check, Level level, string subject)
    {
        var all = Findings(text);
        Assert.True(all.Count(f => f.Check == check) == 1, string.Join("\n", all));
        var f = all.First(f => f.Check == check);
        Assert.Equal((level, subject), (f.Level, f.Subject));
        Assert.Contains($"'{subject.Split(": ")[^1]}'", f.Message, StringComparison.Ordinal);
        Assert.False(string.IsNullOrWhiteSpace(f.Advice));
        Assert.DoesNotContain("NaN", f.Message + f.Advice, StringComparison.Ordinal);
        if (f.From is { } from)
        {
            Assert.InRange(from, 0, f.To!.Value);
            Assert.Contains("°", f.Message, StringComparison.Ordinal);
        }

        return f;
    }
}
