using System.Globalization;
using System.Text;
using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Benchmarks;

/// <summary>A row of nodding birds on one shaft, each with its cam, lever, rod, head, posts and feathers, and its own place in the turn: pieces of any size alike in kind.</summary>
/// <param name="birds">How many birds.</param>
public sealed class Flock(int birds)
{
    /// <summary>Distance from bird to bird, mm.</summary>
    private const int Pitch = 70;

    private readonly Lazy<Machine> machine = new(() => MachineBuilder.Build(Text(birds)) is { Machine: { } m } ? m : throw new InvalidOperationException("The row of birds does not read."));

    /// <summary>The machine.</summary>
    public Machine Machine => machine.Value;

    /// <summary>The number of parts, as the table of results shows it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Proof.Of(Machine).Assembly.Parts.Count} parts");

    private static string Text(int birds)
    {
        var (members, timing, openings, parts, touching) = (new StringBuilder(), new StringBuilder(), new StringBuilder(), new StringBuilder(), new StringBuilder());
        for (var k = 0; k < birds; k++)
        {
            double x = Pitch * k, turn = 7 * k % 50;
            string At(double dx, double y, double z) => string.Create(CultureInfo.InvariantCulture, $"[{x + dx}, {y}, {z}]");
            string Deg(double d) => ((d + turn) % 360).ToString(CultureInfo.InvariantCulture);
            members.Append(CultureInfo.InvariantCulture, $$$"""
                  lever-{{{k}}}:
                    pivot: {through: {{{At(0, 70, -38)}}}, along: -x}
                    body: {from: -14, to: 14}
                    cam: {on: shaft, follower: {roller: 8, at: {{{At(-7, 68, 0)}}}}, base: 20, hub: 12, hub-side: behind, bore: 6}
                  head-{{{k}}}:
                    pivot: {through: {{{At(0, 150, 8)}}}, along: x}
                    body: {from: -9, to: 9}
                    rod: {from: lever-{{{k}}}, pins: [{{{At(0, 71, -4)}}}, {{{At(0, 150, -4)}}}] }

                """);
            timing.Append(CultureInfo.InvariantCulture, $$$"""
                  head-{{{k}}}:
                    over: shaft
                    moves: [{from: {{{Deg(10)}}}, to: {{{Deg(130)}}}, reach: 20}, {from: {{{Deg(200)}}}, to: {{{Deg(300)}}}, reach: rest} ]

                """);
            openings.Append(CultureInfo.InvariantCulture, $"    - {{in: top, at: {At(0, 110, -4)}, size: [10, 14]}}\n");
            parts.Append(CultureInfo.InvariantCulture, $$$"""
                  post-left-{{{k}}}: {box: {at: {{{At(-6.3, 136, 8)}}}, size: [6, 36, 5]}, material: beech}
                  post-right-{{{k}}}: {box: {at: {{{At(6.3, 136, 8)}}}, size: [6, 36, 5]}, material: beech}
                  body-left-{{{k}}}: {ball: {at: {{{At(-19, 138, -10)}}}, diameter: 26}}
                  body-right-{{{k}}}: {ball: {at: {{{At(19, 138, -10)}}}, diameter: 26}}
                  leg-left-{{{k}}}: {rod: {from: {{{At(-15, 118, -8)}}}, to: {{{At(-15, 128, -8)}}}, diameter: 4}}
                  leg-right-{{{k}}}: {rod: {from: {{{At(15, 118, -8)}}}, to: {{{At(15, 128, -8)}}}, diameter: 4}}
                  skull-{{{k}}}: {on: head-{{{k}}}, ball: {at: {{{At(0, 160, 21)}}}, diameter: 24}}
                  beak-{{{k}}}: {on: head-{{{k}}}, turned: {from: {{{At(0, 159, 31)}}}, along: [0, -0.2, 1], profile: [[0, 7], [14, 1]]}}
                  eye-left-{{{k}}}: {on: head-{{{k}}}, ball: {at: {{{At(-10, 164, 26)}}}, diameter: 5}}
                  eye-right-{{{k}}}: {on: head-{{{k}}}, ball: {at: {{{At(10, 164, 26)}}}, diameter: 5}}

                """);
            touching.Append(CultureInfo.InvariantCulture, $"  - [head-{k}, post-left-{k}]\n  - [head-{k}, post-right-{k}]\n");
        }

        var end = Pitch * birds;
        return string.Create(CultureInfo.InvariantCulture, $$$"""
            jackwork: 1
            title: A row of birds
            crank: {turns: shaft, rpm: 30, radius: 35}
            members:
              shaft:
                pivot: {through: [0, 40, 0], along: x}
                body: {from: -50, to: {{{end}}}}

            """) + members + "timing:\n" + timing + string.Create(CultureInfo.InvariantCulture, $$$"""
            case:
              inside: [[-40, 0, -60], [{{{end - 30}}}, 110, 40]]
              board: 8
              open: [front]
              openings:

            """) + openings + "parts:\n" + parts + "touching:\n" + touching;
    }
}
