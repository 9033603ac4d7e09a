namespace Jackwork.Mechanisms;

/// <summary>Sizes to make or buy something by, where an outline does not say them.</summary>
/// <param name="Name">Name of the table, as a file is named.</param>
/// <param name="Rows">What, how much, in which unit (empty for a plain number).</param>
public sealed record SizeTable(string Name, IReadOnlyList<(string What, double Value, string Unit)> Rows);
