namespace Jackwork.Cli;

/// <summary>The example designs, carried inside the command with the files that they name.</summary>
internal static class Examples
{
    private const string Prefix = "example:";

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Carried().Select(p => p[..p.IndexOf('/', StringComparison.Ordinal)]).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>The files of an example, by their paths from its folder.</summary>
    public static IReadOnlyList<string> Files(string name) =>
        [.. Carried().Where(p => p.StartsWith(name + "/", StringComparison.Ordinal)).Select(p => p[(name.Length + 1)..]).Order(StringComparer.Ordinal)];

    /// <summary>One file of an example.</summary>
    public static Stream Open(string name, string file) => typeof(Examples).Assembly.GetManifestResourceStream($"{Prefix}{name}/{file}")!;

    private static IEnumerable<string> Carried() =>
        typeof(Examples).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..]);
}
