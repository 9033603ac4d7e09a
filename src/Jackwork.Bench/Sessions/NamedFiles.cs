using Jackwork.Design;

namespace Jackwork.Bench.Sessions;

/// <summary>The files that a design names, as they stood on disk when they were last read: tells when one of them has changed, come or gone, and reads none twice that has not.</summary>
/// <param name="folder">The design's folder.</param>
/// <param name="read">Gives the bytes of a file in it.</param>
internal sealed class NamedFiles(string folder, Func<string, byte[]?> read)
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, ((long Length, DateTime Written) Stamp, byte[] Bytes)> kept = [];
    private Dictionary<string, (long Length, DateTime Written)?> seen = [];

    /// <summary>Begins a new reading of the design: what is read from now on is what it names.</summary>
    /// <returns>What gives the bytes of a file.</returns>
    public Func<string, byte[]?> Anew()
    {
        var named = new Dictionary<string, (long, DateTime)?>();
        lock (gate)
        {
            seen = named;
        }

        return name =>
        {
            // Looked at before it is read, so that a change in between is not missed.
            var stamp = StampOf(name);
            lock (gate)
            {
                named.TryAdd(name, stamp);
                if (stamp is not null && kept.TryGetValue(name, out var known) && known.Stamp == stamp)
                {
                    return known.Bytes;
                }
            }

            var bytes = read(name);
            lock (gate)
            {
                kept.Remove(name);
                if (stamp is { } s && bytes is not null)
                {
                    kept.Add(name, (s, bytes));
                }
            }

            return bytes;
        };
    }

    /// <summary>Whether any has changed since it was read, or since this was last asked.</summary>
    public bool HaveChanged()
    {
        lock (gate)
        {
            var changed = seen.Where(s => StampOf(s.Key) != s.Value).Select(s => s.Key).ToList();
            foreach (var name in changed)
            {
                seen[name] = StampOf(name);
            }

            return changed.Count > 0;
        }
    }

    private (long Length, DateTime Written)? StampOf(string name) =>
        DesignPath.Fault(name) is null && new FileInfo(Path.Combine(folder, name)) is { Exists: true } file ? (file.Length, file.LastWriteTimeUtc) : null;
}
