namespace Jackwork.Design;

/// <summary>A condition on one member's coordinate.</summary>
[Section("while, keep", "A condition on one member's coordinate: one of `above`, `below` and `between`. A shaft that goes round is taken within one turn, its degrees counted in the sense in which it runs.", """
    rules:
      - {while: {member: lever, above: 1}, keep: {member: head, below: 0}}
      - {while: {member: shaft, between: [350, 5]}, keep: {member: head, between: [-1, 1]}}
    """)]
public sealed record ConditionSpec
{
    /// <summary>The member.</summary>
    [Key("The member.", Required = true, Refers = Refers.Member)]
    public string Member { get; init; } = "";

    /// <summary>Lower bound.</summary>
    [Key("Its coordinate is above this.", Unit = "deg or mm")]
    public double? Above { get; init; }

    /// <summary>Upper bound.</summary>
    [Key("Its coordinate is below this.", Unit = "deg or mm")]
    public double? Below { get; init; }

    /// <summary>Both bounds.</summary>
    [Key("Its coordinate lies between these two; on a shaft that goes round, from the first onward to the second.", Unit = "deg or mm", Count = 2)]
    public IReadOnlyList<double>? Between { get; init; }
}
