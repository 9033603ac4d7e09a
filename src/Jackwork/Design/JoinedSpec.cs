namespace Jackwork.Design;

/// <summary>Parts made into one.</summary>
[Section("joined", "Parts that are glued, brazed, pinned or screwed into one, under a name for lists. They must move as one: all on the case, or all on one member.", """
    parts:
      coat-front: {box: {at: [0, 200, 10], size: [40, 50, 12]}}
      coat-back: {box: {at: [0, 200, -2], size: [40, 50, 12]}}
    joined:
      - {name: coat, parts: [coat-front, coat-back], by: glue}
    """)]
public sealed record JoinedSpec
{
    /// <summary>Name of the whole.</summary>
    [Key("Name of the whole.", Required = true)]
    public string Name { get; init; } = "";

    /// <summary>What it is joined of.</summary>
    [Key("Two or more parts, by name.", Required = true, Refers = Refers.Part)]
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>How.</summary>
    [Key("How they are joined.", Required = true, Words = "glue braze solder pin screw")]
    public string By { get; init; } = "";
}
