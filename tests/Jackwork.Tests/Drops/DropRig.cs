using System.Globalization;
using System.Text.Json;
using Jackwork.Checks;
using Jackwork.Drops;
using Jackwork.Tests.Motion;
using Jackwork.Tests.Shop;

namespace Jackwork.Tests.Drops;

/// <summary>A drop cam and its follower, a bare stem or lever that weighs nothing but what is put on it.</summary>
internal sealed record DropRig
{
    public double Rpm { get; init; } = 60;

    public bool Lever { get; init; }

    public double Roller { get; init; } = 8;

    /// <summary>Mass on the follower: a steel ball of this diameter, mm, over the roller.</summary>
    public double Ball { get; init; } = 30;

    public double Lift { get; init; } = 10;

    public double From { get; init; } = 200;

    public double To { get; init; } = 260;

    public string RiseLaw { get; init; } = "modified-sine";

    public double RiseTo { get; init; } = 190;

    public string CamKeys { get; init; } = ", friction: 0";

    public string More { get; init; } = "";

    public double Cutter { get; init; } = 3;

    public bool Backward { get; init; }

    /// <summary>Mass of the ball, g: steel at 7.85 g/cm^3, as in the table of materials.</summary>
    public double Mass => Math.PI * Ball * Ball * Ball / 6 * 7.85e-3;

    public string Text => $$"""
        jackwork: 1
        title: T
        crank: {turns: shaft, rpm: {{N(Rpm)}}}
        cutter: {{N(Cutter)}}
        members:
          shaft:
            pivot: {through: [0, 40, 0], along: {{(Backward ? "-z" : "z")}}}
          hammer:
            {{(Lever ? "pivot: {through: [-45, 60, 0], along: z}" : "slide: {along: y}")}}
            body: {bare: true}
            cam: {on: shaft, follower: {roller: {{N(Roller)}}, at: [0, 70, 0]}{{CamKeys}}}
        timing:
          hammer:
            over: shaft
            moves:
              - {from: 40, to: {{N(RiseTo)}}, reach: {{N(Lift)}}, law: {{RiseLaw}}}
              - {from: {{N(From)}}, to: {{N(To)}}, reach: rest, law: drop}
        parts:
          weight: {on: hammer, ball: {at: [0, 120, 0], diameter: {{N(Ball)}}}, material: steel}
        {{More}}
        """;

    public Proof Prove() => Proof.Of(Machines.Of(Text));

    public DropWork Drop() => Prove().MechanismsOf<DropWork>().First();

    public static JsonElement Python(string script, object input) => OutsideReader.Read(script, JsonSerializer.Serialize(input));

    private static string N(double x) => x.ToString("R", CultureInfo.InvariantCulture);
}
