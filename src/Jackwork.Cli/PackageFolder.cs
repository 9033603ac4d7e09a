using Jackwork.Shop.Package;

namespace Jackwork.Cli;

/// <summary>A package being written: beside its place first, moved there when it is whole. Given up, it leaves nothing behind.</summary>
internal sealed class PackageFolder : IDisposable
{
    /// <summary>The file that tells a folder to be a package of ours, which may be replaced.</summary>
    private const string Mark = "read-first.txt";

    private readonly string place;
    private readonly string draft;

    private PackageFolder(string place)
    {
        this.place = place;
        draft = place + $".part-{Environment.ProcessId}";
        Directory.CreateDirectory(draft);
    }

    /// <summary>Begins a package that will stand at <paramref name="place"/>.</summary>
    public static PackageFolder Open(string place)
    {
        if (place.Length == 0)
        {
            throw new BadInputException("jackwork: --out names no folder. Give one, such as --out out/keeper.");
        }

        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(place));
        if (File.Exists(full))
        {
            throw new BadInputException($"jackwork: '{place}' is a file and was left alone. Name a folder.");
        }

        if (Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any() && !File.Exists(Path.Combine(full, Mark)))
        {
            throw new BadInputException($"jackwork: the folder '{place}' holds other things and was left alone. Name an empty or a new folder.");
        }

        if (full == Path.GetPathRoot(full))
        {
            throw new BadInputException($"jackwork: '{place}' is the root of the disk. Name a folder.");
        }

        return new(full);
    }

    /// <summary>Writes one file.</summary>
    public void Add(ShopFile file)
    {
        var path = Path.Combine(draft, file.Path.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, file.Make());
    }

    /// <summary>Puts the whole package in its place.</summary>
    public void Finish()
    {
        var old = place + $".old-{Environment.ProcessId}";
        if (Directory.Exists(place))
        {
            Directory.Move(place, old);
        }

        try
        {
            Directory.Move(draft, place);
        }
        catch when (Directory.Exists(old))
        {
            Directory.Move(old, place);
            throw;
        }

        if (Directory.Exists(old))
        {
            Directory.Delete(old, true);
        }
    }

    /// <summary>Clears away what was not finished.</summary>
    public void Dispose()
    {
        if (Directory.Exists(draft))
        {
            Directory.Delete(draft, true);
        }
    }
}
