namespace Jackwork.Cli;

/// <summary>The example designs, carried inside the command.</summary>
internal static class Examples
{
    private const string Prefix = "example:";

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. typeof(Examples).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..]).Order(StringComparer.Ordinal)];

    /// <summary>The text of an example's design file.</summary>
    public static string Text(string name)
    {
        using var stream = typeof(Examples).Assembly.GetManifestResourceStream(Prefix + name)!;
        return new StreamReader(stream).ReadToEnd();
    }
}
