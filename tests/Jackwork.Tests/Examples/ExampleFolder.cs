namespace Jackwork.Tests.Examples;

/// <summary>Finds the example designs from wherever the tests run.</summary>
internal static class ExampleFolder
{
    /// <summary>The folder of an example.</summary>
    public static string Path(string name)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var path = System.IO.Path.Combine(at.FullName, "examples", name);
            if (Directory.Exists(path))
            {
                return path;
            }
        }

        throw new DirectoryNotFoundException($"There is no folder examples/{name} above {AppContext.BaseDirectory}.");
    }

    /// <summary>The text of an example's design file.</summary>
    public static string Text(string name) => File.ReadAllText(System.IO.Path.Combine(Path(name), "design.yaml"));
}
