namespace Jackwork.Design;

/// <summary>Paths by which a design names files of its own folder: with forward strokes, so that they read the same everywhere, and never out of the folder.</summary>
public static class DesignPath
{
    /// <summary>Longest path taken, characters.</summary>
    public const int Longest = 200;

    /// <summary>What is wrong with a path, or null.</summary>
    public static string? Fault(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Length is 0 or > Longest ? FormattableString.Invariant($"a path of {path.Length} characters")
            : path.Any(c => c is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|' || char.IsControl(c)) ? "a path with a sign that not every system takes"
            : path[0] == '/' ? "a path from the root"
            : path.Split('/').Any(s => s is ".." or "." or "") ? "a path with an empty step or one of dots"
            : null;
    }

    /// <summary>The path of a file named by another one of the folder, seen from the folder.</summary>
    public static string Beside(string file, string name) => file[..(file.LastIndexOf('/') + 1)] + name;
}
