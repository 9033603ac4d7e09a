namespace Jackwork.Design;

/// <summary>What the hand turns, and how fast.</summary>
[Section("crank", "The handle that the piece is turned by. Its coordinate is the crank angle, positive about its axis by the right-hand rule.", """
    crank: {turns: shaft, rpm: 40, radius: 45}
    """)]
public sealed record CrankSpec
{
    /// <summary>Name of the member turned by hand.</summary>
    [Key("The member that the hand turns.", Required = true, Refers = Refers.Member)]
    public string Turns { get; init; } = "";

    /// <summary>Speed for speeds and accelerations, revolutions per minute.</summary>
    [Key("How fast it is turned, for speeds and accelerations.", Unit = "rpm", Required = true, Min = 0.1, Max = 600)]
    public double Rpm { get; init; } = 30;

    /// <summary>Radius at which the hand pushes, mm.</summary>
    [Key("Radius of the handle's grip.", Unit = "mm", Min = 1, Max = 1000)]
    public double? Radius { get; init; }
}
