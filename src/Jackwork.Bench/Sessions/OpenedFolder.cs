namespace Jackwork.Bench.Sessions;

/// <summary>The folder that the bench was opened on. Paths are relative to it, with forward slashes; none leads out of it.</summary>
/// <param name="folder">The folder, or a design's own.</param>
/// <param name="files">For a design's folder, what gives the bytes of a file in it.</param>
internal sealed class OpenedFolder(string folder, Func<string, Func<string, byte[]?>> files)
{
    /// <summary>Name of the design file in its folder.</summary>
    public const string FileName = "design.yaml";

    private const int MostDesigns = 500;

    private static readonly EnumerationOptions Within = Down(4);

    /// <summary>The folder, links followed.</summary>
    public string Root { get; } = Real(Path.GetFullPath(folder));

    /// <summary>Name of the folder, for titles.</summary>
    public string Name => Path.GetFileName(Path.TrimEndingDirectorySeparator(Root));

    /// <summary>The designs in it, last changed first; the path of one in the folder itself is empty.</summary>
    public IReadOnlyList<FoundDesign> Designs =>
        [.. Directory.EnumerateFiles(Root, FileName, Within).Take(MostDesigns)
            .Select(f => new FoundDesign(Path.GetRelativePath(Root, Path.GetDirectoryName(f)!) is "." ? "" : Path.GetRelativePath(Root, Path.GetDirectoryName(f)!).Replace('\\', '/'), File.GetLastWriteTime(f)))
            .Where(d => !d.Path.Split('/').Any(s => s.StartsWith('.') || s is "bin" or "obj" or "out" or "node_modules"))
            .OrderByDescending(d => d.Changed)];

    /// <summary>The design file of a path, or null where there is none within the folder.</summary>
    public string? FileOf(string path) => Inside(path) is { } full && Path.Combine(full, FileName) is var file && File.Exists(file) && Real(file) == file ? file : null;

    /// <summary>What gives the bytes of the files beside a design's file; a link is no file.</summary>
    public Func<string, byte[]?> FilesBeside(string file)
    {
        var own = Path.GetDirectoryName(file)!;
        var read = files(own);
        return name => Path.Combine(own, name) is var path && Real(path) == path ? read(name) : null;
    }

    /// <summary>The files of a design, by their paths in its folder: its text, and what its text may name.</summary>
    public IReadOnlyDictionary<string, byte[]> FilesOf(FoundDesign design) => FileOf(design.Path) is { } file && Path.GetDirectoryName(file) is { } own
        ? Directory.EnumerateFiles(own, "*", Down(design.Path.Length == 0 ? 0 : 2))
            .Select(f => (Full: f, Name: Path.GetRelativePath(own, f).Replace('\\', '/')))
            .Where(f => !f.Name.Split('/').Any(s => s.StartsWith('.')) && (f.Name == FileName || FilesBeside(file)(f.Name) is not null))
            .ToDictionary(f => f.Name, f => File.ReadAllBytes(f.Full))
        : throw new IOException("It is gone from the folder.");

    /// <summary>Makes a new design of its files in a folder of its own.</summary>
    /// <returns>Why it was not made, a sentence; null where it was.</returns>
    public string? Make(string name, IReadOnlyDictionary<string, byte[]> content)
    {
        if (name.Length is 0 or > 60 || name.StartsWith('.') || !name.All(c => char.IsLetterOrDigit(c) || c is '-' or '_' or ' ' or '.'))
        {
            return "Name it with letters, digits, spaces or hyphens, at most 60 of them.";
        }

        var full = Path.Combine(Root, name);
        if (Path.Exists(full))
        {
            return $"There is a '{name}' here already; it was left alone. Choose another name.";
        }

        foreach (var (file, bytes) in content)
        {
            var to = Path.Combine(full, file);
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            using var stream = new FileStream(to, FileMode.CreateNew);
            stream.Write(bytes);
            stream.Flush(true);
        }

        return null;
    }

    /// <summary>Puts a file into a design's folder under a name that is free, beside what is there.</summary>
    /// <param name="design">The design's path.</param>
    /// <param name="name">Path of the file in the design's folder: a folder and a name; a number is put to it where it is taken.</param>
    /// <returns>Where it will be, and what writes it there.</returns>
    /// <exception cref="IOException">There is no such design, or its folder leads elsewhere.</exception>
    public (string Name, Action<byte[]> Write) Place(string design, string name)
    {
        var own = Path.GetDirectoryName(FileOf(design) ?? throw new IOException("The design is gone from the folder."))!;
        var (stem, ending) = (Path.ChangeExtension(name, null), Path.GetExtension(name));
        var free = Enumerable.Range(1, 999).Select(i => i == 1 ? name : $"{stem}-{i}{ending}").First(n => !Path.Exists(Path.Combine(own, n)));
        var full = Path.Combine(own, free);
        if (Real(full) != full)
        {
            throw new IOException($"'{Path.GetDirectoryName(free)}' in the design's folder is a link that leads elsewhere.");
        }

        return (free, bytes =>
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            using var stream = new FileStream(full, FileMode.CreateNew);
            stream.Write(bytes);
            stream.Flush(true);
        });
    }

    private static EnumerationOptions Down(int levels) => new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = levels,
        IgnoreInaccessible = true,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    private string? Inside(string path)
    {
        if (path.Split('/', '\\').Any(s => s is ".." or ".") || path.Contains('\0') || Path.IsPathRooted(path))
        {
            return null;
        }

        var full = Path.TrimEndingDirectorySeparator(Path.Combine(Root, path));
        return Directory.Exists(full) && Real(full) == full ? full : null;
    }

    // Follows links at every level, so that a link inside the folder can't lead out of it.
    private static string Real(string full)
    {
        var root = Path.GetPathRoot(full)!;
        var at = root;
        foreach (var step in full[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            at = Path.Combine(at, step);
            FileSystemInfo info = Directory.Exists(at) ? new DirectoryInfo(at) : new FileInfo(at);
            at = info.LinkTarget is null ? at : info.ResolveLinkTarget(true)?.FullName ?? at;
        }

        return at;
    }
}

/// <summary>A design in the folder.</summary>
/// <param name="Path">Its folder, relative.</param>
/// <param name="Changed">When it was last saved.</param>
internal sealed record FoundDesign(string Path, DateTime Changed);
