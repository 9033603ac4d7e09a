namespace Jackwork.Bench;

/// <summary>What a bench is opened on.</summary>
/// <param name="Folder">The folder whose designs are worked on; nothing outside it is read or written.</param>
/// <param name="Port">The port on the loopback addresses; 0 for any that is free.</param>
/// <param name="Examples">The texts of the example designs, by name.</param>
public sealed record BenchOptions(string Folder, int Port, IReadOnlyDictionary<string, string> Examples);
