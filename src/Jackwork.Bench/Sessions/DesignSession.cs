using System.Diagnostics;
using Jackwork.Checks;

namespace Jackwork.Bench.Sessions;

/// <summary>One open design, shared by all tabs: its text and history, what was worked out of it, and its file.</summary>
/// <remarks>
/// Five jobs run beside each other, each always on the newest text: the motion at once; after it the verdict on cams, wheels and rules, and
/// beside that the meshes of the parts that changed; clearances and stacks when the text has been still for <see cref="Still"/>; the file
/// after <see cref="SaveAfter"/>. What each finds is published.
/// Every <see cref="LookEvery"/> the files on disk are looked at: a design file that another program wrote is shown and waits for the
/// maker's word; a mesh that the design names and that has changed, come or gone is taken at once, and the piece worked out again.
/// </remarks>
public sealed class DesignSession : IAsyncDisposable
{
    /// <summary>How long the text rests before the parts are worked out.</summary>
    private static readonly TimeSpan Still = TimeSpan.FromMilliseconds(180);

    /// <summary>How long after a change the file is written.</summary>
    private static readonly TimeSpan SaveAfter = TimeSpan.FromMilliseconds(250);

    /// <summary>How often the file, and those that it names, are looked at for changes made by another program.</summary>
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(1);

    /// <summary>Least time between two kept copies.</summary>
    private static readonly TimeSpan CopyEvery = TimeSpan.FromMinutes(2);

    private readonly Lock gate = new();
    private readonly DesignFile file;
    private readonly TextHistory history;
    private readonly Func<string, byte[]?> files;
    private readonly NamedFiles named;
    private readonly Latest motion, moving, meshes, parts, saving;
    private readonly Timer look;
    private long? copied;
    private Snapshot now;

    /// <summary>Opens a design's file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="files">Gives the bytes of a file that the design names.</param>
    public DesignSession(string path, Func<string, byte[]?> files)
    {
        this.files = files;
        named = new(Path.GetDirectoryName(Path.GetFullPath(path))!, files);
        file = DesignFile.Open(path);
        Opened = file.Known;
        history = new(file.Known);
        now = new() { Text = history.Text, Version = 1 };
        motion = new(WorkOut, Fail);
        moving = new(Judge, Fail);
        meshes = new(Shape, Fail);
        parts = new(JudgeParts, Fail);
        saving = new(Save, e => Publish(s => s with { Save = SaveState.Failed, SaveTrouble = e.Message }));
        look = new(_ => Look(), null, LookEvery, LookEvery);
        motion.Ask();
    }

    /// <summary>Raised after each new snapshot, on any thread.</summary>
    public event Action? Changed;

    /// <summary>Its name in addresses, not to be guessed.</summary>
    public string Id { get; } = Convert.ToHexStringLower(System.Security.Cryptography.RandomNumberGenerator.GetBytes(16));

    /// <summary>The text that it was opened with.</summary>
    public string Opened { get; }

    /// <summary>The newest snapshot.</summary>
    public Snapshot Now => now;

    /// <summary>The shop package last made.</summary>
    public (string Name, byte[] Bytes)? Package { get; set; }

    /// <summary>Takes a new text; those of one gesture make one step of the history.</summary>
    public int Edit(string text, string? gesture = null) => Change(() => history.Add(text, gesture));

    /// <summary>Takes an edit that was made.</summary>
    /// <returns>Why it was not made, a sentence without its full stop; null where it was.</returns>
    public string? Take(Design.TextEdit edit, string? gesture = null)
    {
        if (edit.IsDone)
        {
            Edit(edit.Text, gesture);
        }

        return edit.Refusal;
    }

    /// <summary>Goes back to the text before.</summary>
    public int Undo() => Change(history.Undo);

    /// <summary>Goes on to the text after.</summary>
    public int Redo() => Change(history.Redo);

    /// <summary>Takes the text that another program wrote; the text here stays in the history.</summary>
    public void TakeTheirs()
    {
        lock (gate)
        {
            if (now.Foreign is not { } theirs)
            {
                return;
            }

            file.Acknowledge(theirs);
            history.Add(theirs, null);
            Renew(s => s with { Foreign = null, Save = SaveState.Saved });
        }

        Announce();
        motion.Ask();
    }

    /// <summary>Keeps the text here; what the other program wrote is kept as a copy.</summary>
    public void KeepMine()
    {
        lock (gate)
        {
            if (now.Foreign is not { } theirs)
            {
                return;
            }

            file.Keep(theirs);
            file.Acknowledge(theirs);
            now = now with { Foreign = null, Save = SaveState.Waiting };
        }

        Announce();
        saving.Ask();
    }

    /// <summary>Writes what is not yet written and stops.</summary>
    public async ValueTask DisposeAsync()
    {
        await look.DisposeAsync();
        await motion.DisposeAsync();
        await moving.DisposeAsync();
        await meshes.DisposeAsync();
        await parts.DisposeAsync();
        await saving.DisposeAsync();
        if (now.Save == SaveState.Waiting)
        {
            SaveNow();
        }
    }

    private int Change(Func<bool> change)
    {
        int version;
        lock (gate)
        {
            if (!change())
            {
                return now.Version;
            }

            Renew(s => s with { Save = s.Foreign is null ? SaveState.Waiting : SaveState.Foreign });
            version = now.Version;
        }

        motion.Ask();
        saving.Ask();
        return version;
    }

    private void Renew(Func<Snapshot, Snapshot> more) =>
        now = more(now with { Version = now.Version + 1, Text = history.Text, CanUndo = history.CanUndo, CanRedo = history.CanRedo });

    private Task WorkOut(CancellationToken stop)
    {
        var asked = now;
        var (work, problems) = Work.Of(asked.Version, asked.Text, named.Anew(), asked.Work);
        Publish(s => s with { Work = work ?? s.Work, Problems = problems, Failure = null });
        if (work is not null)
        {
            moving.Ask();
            meshes.Ask();
            parts.Ask();
        }

        return Task.CompletedTask;
    }

    private Task Judge(CancellationToken stop)
    {
        if (now.Work is { } work)
        {
            var clock = Stopwatch.GetTimestamp();
            var findings = Verdict.OfMotion(work.Proof).Findings;
            Publish(s => s with { Moving = new(work, findings, Stopwatch.GetElapsedTime(clock).TotalMilliseconds) });
        }

        return Task.CompletedTask;
    }

    private Task Shape(CancellationToken stop)
    {
        if (now.Work is { } work)
        {
            var shapes = Shapes.Of(work, now.Solids);
            Publish(s => s with { Solids = shapes });
        }

        return Task.CompletedTask;
    }

    private async Task JudgeParts(CancellationToken stop)
    {
        // The first look at a piece does not wait.
        while (now.Parts is not null && now.Version is var before)
        {
            await Task.Delay(Still, stop);
            if (now.Version == before)
            {
                break;
            }
        }

        if (now.Work is { } work)
        {
            var clock = Stopwatch.GetTimestamp();
            var findings = Verdict.OfParts(work.Proof).Findings;
            Publish(s => s with { Parts = new(work, findings, Stopwatch.GetElapsedTime(clock).TotalMilliseconds) });
        }
    }

    private async Task Save(CancellationToken stop)
    {
        await Task.Delay(SaveAfter, stop);
        SaveNow();
        Announce();
    }

    private void SaveNow()
    {
        lock (gate)
        {
            if (file.Foreign() is { } theirs && theirs != now.Text)
            {
                now = now with { Foreign = theirs, Save = SaveState.Foreign };
                return;
            }

            if (file.Known != now.Text && (copied is not { } before || Stopwatch.GetElapsedTime(before) > CopyEvery) && Motion.MachineBuilder.Build(file.Known, files).Machine is not null)
            {
                file.Keep(file.Known);
                copied = Stopwatch.GetTimestamp();
            }

            if (file.Known != now.Text || !string.IsNullOrEmpty(now.SaveTrouble))
            {
                file.Write(now.Text);
            }

            now = now with { Save = SaveState.Saved, SaveTrouble = null, Foreign = null };
        }
    }

    private void Look()
    {
        try
        {
            LookAtNamed();
            lock (gate)
            {
                var theirs = file.Foreign();
                if (theirs == now.Foreign)
                {
                    return;
                }

                if (theirs == now.Text)
                {
                    file.Acknowledge(theirs);
                    theirs = null;
                }

                now = now with { Foreign = theirs, Save = theirs is not null ? SaveState.Foreign : file.Known == now.Text ? SaveState.Saved : SaveState.Waiting };
            }

            saving.Ask();
            Announce();
        }
        catch (IOException e)
        {
            Publish(s => s with { Save = SaveState.Failed, SaveTrouble = e.Message });
        }
    }

    private void LookAtNamed()
    {
        if (!named.HaveChanged())
        {
            return;
        }

        lock (gate)
        {
            Renew(s => s);
        }

        motion.Ask();
    }

    private void Fail(Exception e) =>
        Publish(s => s with { Failure = $"Working this out failed inside the program ({e.GetType().Name}: {e.Message}). The last good result is shown; undo, or change what you changed last." });

    private void Publish(Func<Snapshot, Snapshot> change)
    {
        lock (gate)
        {
            now = change(now);
        }

        Announce();
    }

    private void Announce() => Changed?.Invoke();
}
