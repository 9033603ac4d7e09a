namespace Jackwork.Design;

/// <summary>An interlock.</summary>
[Section("rules", "While one condition holds, another must hold too.", """
    rules:
      - while: {member: head, below: -20}
        keep: {member: shaft, between: [170, 345]}
        note: the bow belongs to the second half of the turn
    """)]
public sealed record RuleSpec
{
    /// <summary>When the rule applies.</summary>
    [Key("When the rule applies.", Required = true)]
    public ConditionSpec While { get; init; } = new();

    /// <summary>What must then hold.</summary>
    [Key("What must then hold.", Required = true)]
    public ConditionSpec Keep { get; init; } = new();

    /// <summary>Free remark.</summary>
    [Key("What the rule is for.")]
    public string? Note { get; init; }
}
