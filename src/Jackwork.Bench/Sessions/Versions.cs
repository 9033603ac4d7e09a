using System.Globalization;

namespace Jackwork.Bench.Sessions;

/// <summary>One version of a design that can be compared.</summary>
/// <param name="Key">How addresses name it: the design's path, and after an @ which kept text it is; without one, as it is now.</param>
/// <param name="Label">Which version it is, in words.</param>
internal sealed record DesignVersion(string Key, string Label);

/// <summary>The versions of the folder's designs: as they are now, as the bench opened them, and their kept copies.</summary>
/// <remarks>A kept copy is a text only: the meshes that it names are read as they are on disk now.</remarks>
internal sealed class Versions(OpenedFolder folder, OpenSessions sessions)
{
    private const string AsOpened = "opened";

    /// <summary>The versions of each design, newest first, by the design's path.</summary>
    public IReadOnlyList<(string Design, IReadOnlyList<DesignVersion> Of)> All => [.. folder.Designs.Select(d => (d.Path, Of(d.Path)))];

    /// <summary>The versions of one design, newest first.</summary>
    public IReadOnlyList<DesignVersion> Of(string path) =>
    [
        new(path, "as it is now"),
        .. sessions.IfOpen(path) is null ? (DesignVersion[])[] : [new($"{path}@{AsOpened}", "as it was when opened")],
        .. folder.FileOf(path) is { } file
            ? DesignFile.Kept(file).Select(k => new DesignVersion($"{path}@{k.Stamp}", "kept " + k.At.ToString("d MMMM yyyy, HH:mm:ss", CultureInfo.InvariantCulture)))
            : [],
    ];

    /// <summary>The design that a key belongs to.</summary>
    public string DesignOf(string key) => folder.FileOf(key) is null && key.LastIndexOf('@') is var at and >= 0 ? key[..at] : key;

    /// <summary>The text of a version, and what gives the files that it names.</summary>
    /// <exception cref="IOException">There is no such version, or it can't be read; says which.</exception>
    public (string Text, Func<string, byte[]?> Files) Read(string key)
    {
        var path = DesignOf(key);
        var file = folder.FileOf(path) ?? throw new IOException($"The opened folder holds no design '{path}'.");
        var open = sessions.IfOpen(path);
        var text = key.Length == path.Length ? open?.Now.Text ?? DesignFile.Open(file).Known
            : key[(path.Length + 1)..] is var stamp && stamp == AsOpened ? open?.Opened ?? throw new IOException($"'{path}' is not open, so that there is no text it was opened with.")
            : DesignFile.Kept(file).Any(k => k.Stamp == stamp) ? DesignFile.ReadKept(file, stamp)
            : throw new IOException($"There is no copy '{stamp}' of '{path}'; the oldest copies go when there are more than {DesignFile.MostCopies}.");
        return (text, folder.FilesBeside(file));
    }
}
