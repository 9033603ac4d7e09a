namespace Jackwork.Benchmarks;

/// <summary>Finds the example designs from wherever the benchmark runs.</summary>
internal static class Example
{
    /// <summary>Path of the keeper's design.</summary>
    public static string Keeper => Find(Path.Combine("examples", "keeper", "design.yaml"));

    private static string Find(string relative)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var path = Path.Combine(at.FullName, relative);
            if (File.Exists(path))
            {
                return path;
            }
        }

        throw new FileNotFoundException($"{relative} is in none of the folders above {AppContext.BaseDirectory}.");
    }
}
