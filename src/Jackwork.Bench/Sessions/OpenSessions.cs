using System.Collections.Concurrent;

namespace Jackwork.Bench.Sessions;

/// <summary>The designs that are open, each once, however many tabs look at it.</summary>
internal sealed class OpenSessions(OpenedFolder folder) : IAsyncDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<DesignSession>> byFile = [];

    /// <summary>The session of a design's path; null where the folder holds no such design.</summary>
    public DesignSession? Open(string path) =>
        folder.FileOf(path) is { } file ? byFile.GetOrAdd(file, f => new(() => new DesignSession(f))).Value : null;

    /// <summary>An open session by its id.</summary>
    public DesignSession? Find(string id) => byFile.Values.Select(l => l.Value).FirstOrDefault(s => s.Id == id);

    /// <summary>Saves and closes them all.</summary>
    public async ValueTask DisposeAsync()
    {
        foreach (var session in byFile.Values)
        {
            await session.Value.DisposeAsync();
        }
    }
}
