using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>The example designs and the pages of this tree.</summary>
internal static class ExampleFiles
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    /// <summary>The example folders' names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Directory.GetDirectories(Path.Combine(Root, "examples")).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    /// <summary>The same, for theories.</summary>
    public static TheoryData<string> All => [.. Names];

    /// <summary>The folder of an example.</summary>
    public static string FolderOf(string name) => Path.Combine(Root, "examples", name);

    /// <summary>Path of an example's design file.</summary>
    public static string PathOf(string name) => Path.Combine(FolderOf(name), "design.yaml");

    /// <summary>Text of an example's design file.</summary>
    public static string Text(string name) => File.ReadAllText(PathOf(name));

    private static string Find(DirectoryInfo at) => at.GetFiles("Jackwork.slnx").Length > 0 ? at.FullName : Find(at.Parent!);
}
