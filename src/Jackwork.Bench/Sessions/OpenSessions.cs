namespace Jackwork.Bench.Sessions;

/// <summary>The designs that are open, each once, however many tabs look at it.</summary>
internal sealed class OpenSessions(OpenedFolder folder) : IAsyncDisposable
{
    private readonly Dictionary<string, DesignSession> byFile = [];

    /// <summary>The session of a design's path; null where the folder holds no such design.</summary>
    /// <exception cref="IOException">The file can't be read.</exception>
    public DesignSession? Open(string path)
    {
        if (folder.FileOf(path) is not { } file)
        {
            return null;
        }

        lock (byFile)
        {
            if (!byFile.TryGetValue(file, out var session))
            {
                byFile.Add(file, session = new(file, folder.FilesBeside(file)));
            }

            return session;
        }
    }

    /// <summary>The session of a design's path where it is open; else null.</summary>
    public DesignSession? IfOpen(string path)
    {
        lock (byFile)
        {
            return folder.FileOf(path) is { } file ? byFile.GetValueOrDefault(file) : null;
        }
    }

    /// <summary>An open session by its id.</summary>
    public DesignSession? Find(string id)
    {
        lock (byFile)
        {
            return byFile.Values.FirstOrDefault(s => s.Id == id);
        }
    }

    /// <summary>Saves and closes them all.</summary>
    public async ValueTask DisposeAsync()
    {
        foreach (var session in byFile.Values)
        {
            await session.DisposeAsync();
        }
    }
}
