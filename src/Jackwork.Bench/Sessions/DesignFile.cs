using System.Globalization;
using System.Text;

namespace Jackwork.Bench.Sessions;

/// <summary>A design's file: read whole, written whole beside its place and moved there, earlier texts kept in a folder next to it.</summary>
internal sealed class DesignFile
{
    /// <summary>Folder of the earlier texts.</summary>
    public const string Copies = ".jackwork-copies";

    /// <summary>How many earlier texts are kept.</summary>
    public const int MostCopies = 20;

    private const string Stamped = "yyyyMMdd-HHmmss-fff";

    private static readonly UTF8Encoding Strict = new(false, true);

    private readonly string path;

    private DesignFile(string path, string text) => (this.path, Known) = (path, text);

    /// <summary>The text as last read or written here.</summary>
    public string Known { get; private set; }

    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    public static DesignFile Open(string path) => new(path, Read(path));

    /// <summary>The text that another program has put there since, or null.</summary>
    public string? Foreign() => File.Exists(path) && Read(path) is var now && now != Known ? now : null;

    /// <summary>From now on the text on disk counts as known.</summary>
    public void Acknowledge(string text) => Known = text;

    /// <summary>Writes a text: beside the file first, flushed, then moved over it.</summary>
    public void Write(string text)
    {
        var draft = path + $".part-{Environment.ProcessId}";
        using (var stream = new FileStream(draft, FileMode.Create, FileAccess.Write))
        {
            stream.Write(Strict.GetBytes(text));
            stream.Flush(true);
        }

        File.Move(draft, path, true);
        Known = text;
    }

    /// <summary>Keeps a copy of a text, and of all copies the newest.</summary>
    public void Keep(string text)
    {
        var folder = Path.Combine(Path.GetDirectoryName(path)!, Copies);
        Directory.CreateDirectory(folder);
        var name = $"design-{TimeProvider.System.GetUtcNow().ToString(Stamped, CultureInfo.InvariantCulture)}.yaml";
        File.WriteAllText(Path.Combine(folder, name), text, Strict);
        foreach (var old in Directory.EnumerateFiles(folder, "design-*.yaml").OrderDescending(StringComparer.Ordinal).Skip(MostCopies))
        {
            File.Delete(old);
        }
    }

    /// <summary>The copies kept of a design's file, newest first: the stamp in each one's name, and its local time.</summary>
    public static IReadOnlyList<(string Stamp, DateTime At)> Kept(string path)
    {
        var folder = Path.Combine(Path.GetDirectoryName(path)!, Copies);
        return !Directory.Exists(folder) ? [] : [.. Directory.EnumerateFiles(folder, "design-*.yaml")
            .Select(f => Path.GetFileNameWithoutExtension(f)["design-".Length..])
            .Select(stamp => (stamp, Read: DateTime.TryParseExact(stamp, Stamped, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at), at))
            .Where(k => k.Read)
            .OrderByDescending(k => k.at)
            .Select(k => (k.stamp, k.at))];
    }

    /// <summary>The text of a copy.</summary>
    /// <param name="path">The design's file.</param>
    /// <param name="stamp">The copy's stamp, one of <see cref="Kept"/>.</param>
    /// <exception cref="IOException">It can't be read.</exception>
    public static string ReadKept(string path, string stamp) => Read(Path.Combine(Path.GetDirectoryName(path)!, Copies, $"design-{stamp}.yaml"));

    private static string Read(string path)
    {
        var size = new FileInfo(path).Length;
        if (size > 4L * Design.NodeLimits.MaxCharacters)
        {
            throw new IOException($"The file has {size} bytes; at most {Design.NodeLimits.MaxCharacters} characters are read.");
        }

        try
        {
            return Strict.GetString(File.ReadAllBytes(path)).TrimStart('\ufeff');
        }
        catch (DecoderFallbackException)
        {
            throw new IOException("The file is not UTF-8 text. Save it as UTF-8.");
        }
    }
}
