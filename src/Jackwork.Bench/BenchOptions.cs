namespace Jackwork.Bench;

/// <summary>What a bench is opened on.</summary>
/// <param name="Folder">The folder whose designs are worked on; nothing outside it is read or written.</param>
/// <param name="Port">The port on the loopback addresses; 0 for any that is free.</param>
/// <param name="Examples">The files of the example designs: by the example's name, then by the file's path in its folder.</param>
/// <param name="Files">For a design's folder, what gives the bytes of a file in it by its path; null for none.</param>
public sealed record BenchOptions(
    string Folder,
    int Port,
    IReadOnlyDictionary<string, IReadOnlyDictionary<string, byte[]>> Examples,
    Func<string, Func<string, byte[]?>> Files);
