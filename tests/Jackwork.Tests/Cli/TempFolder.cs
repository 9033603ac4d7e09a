namespace Jackwork.Tests.Cli;

/// <summary>A folder of its own for one test, removed at its end.</summary>
internal sealed class TempFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("jackwork-test-");

    /// <summary>Path of a name in the folder.</summary>
    public string this[string name] => Path.Combine(folder.FullName, name);

    /// <summary>Writes a design file into a folder of that name and gives the folder.</summary>
    public string Design(string name, string text)
    {
        Directory.CreateDirectory(this[name]);
        File.WriteAllText(Path.Combine(this[name], "design.yaml"), text);
        return this[name];
    }

    /// <inheritdoc/>
    public void Dispose() => folder.Delete(true);
}
