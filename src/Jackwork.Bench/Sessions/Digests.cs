using System.Collections.Concurrent;
using Jackwork.Checks;

namespace Jackwork.Bench.Sessions;

/// <summary>A design in a line: its title and verdict, or why there is none.</summary>
/// <param name="Title">Its title; null where the text doesn't read.</param>
/// <param name="Faults">Faults found.</param>
/// <param name="Cautions">Cautions found.</param>
/// <param name="Trouble">Why it can't be worked out, a sentence; null where it could.</param>
internal sealed record Digest(string? Title, int Faults, int Cautions, string? Trouble);

/// <summary>The digests of the designs in the folder, for the start page; worked out anew when a design, or a file that it names, has changed.</summary>
internal sealed class Digests(OpenedFolder folder, Versions versions) : IDisposable
{
    private readonly ConcurrentDictionary<string, (string Text, NamedFiles Named, Digest Digest)> known = [];

    // One at a time: the page is there meanwhile, and a piece that is opened should not wait for them.
    private readonly SemaphoreSlim one = new(1, 1);

    /// <summary>The digest of a design.</summary>
    public async Task<Digest> Of(string path)
    {
        await one.WaitAsync();
        try
        {
            return await Task.Run(() => Work(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(null, 0, 0, e.Message);
        }
        finally
        {
            one.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => one.Dispose();

    private Digest Work(string path)
    {
        var file = folder.FileOf(path) ?? throw new IOException("It is gone from the folder.");
        var (text, files) = versions.Read(path);
        if (known.TryGetValue(file, out var kept) && kept.Text == text && !kept.Named.HaveChanged())
        {
            return kept.Digest;
        }

        var named = new NamedFiles(Path.GetDirectoryName(file)!, files);
        var digest = Judge(text, named.Anew());
        known[file] = (text, named, digest);
        return digest;
    }

    private static Digest Judge(string text, Func<string, byte[]?> files)
    {
        var (work, problems) = Sessions.Work.Of(0, text, files);
        if (work is null)
        {
            return new(null, 0, 0, FormattableString.Invariant($"line {problems[0].At.Line}: {problems[0].What}."));
        }

        var findings = Verdict.Of(work.Proof).Findings;
        return new(work.Machine.Design.Title, findings.Count(f => f.Level == Level.Fault), findings.Count(f => f.Level == Level.Caution), null);
    }
}
