using Jackwork.Bench.Sessions;
using Jackwork.Cli;
using Jackwork.Tests.Cli;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>One open design: its history, its file, and what another program does to that.</summary>
[Trait("Proof", "property")]
public sealed class SessionTests : IDisposable
{
    private static readonly string Bird = ExampleFiles.Text("nodding-bird");

    private readonly TempFolder folder = new();
    private readonly string file;

    public SessionTests() => file = Path.Combine(folder.Design("bird", Bird), "design.yaml");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task AGestureIsOneStepAndEveryStepIsFoundAgain()
    {
        await using var session = new DesignSession(file, _ => null);
        session.Edit(Bird + "# a\n", "drag 1");
        session.Edit(Bird + "# ab\n", "drag 1");
        session.Edit(Bird + "# c\n", "drag 2");
        session.Undo();
        Assert.Equal(Bird + "# ab\n", session.Now.Text);
        session.Undo();
        Assert.Equal((Bird, false, true), (session.Now.Text, session.Now.CanUndo, session.Now.CanRedo));
        session.Redo();
        session.Redo();
        Assert.Equal(Bird + "# c\n", session.Now.Text);
    }

    [Fact]
    public async Task AnEditIsOnDiskSoonWithoutBeingClosed()
    {
        // Never closed: as if the program were killed after the wait.
        var session = new DesignSession(file, _ => null);
        session.Edit(Bird + "# kept\n");
        await Patience.Until(() => File.ReadAllText(file) == Bird + "# kept\n");
        Assert.Equal(["design.yaml"], Directory.GetFiles(folder["bird"]).Select(Path.GetFileName));
        Assert.Equal(Bird, File.ReadAllText(Assert.Single(Directory.GetFiles(Path.Combine(folder["bird"], DesignFile.Copies)))));
        await session.DisposeAsync();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task AForeignChangeIsNeverOverwrittenUnasked(bool takeTheirs)
    {
        await using var session = new DesignSession(file, _ => null);
        File.WriteAllText(file, Bird + "# theirs\n");
        session.Edit(Bird + "# mine\n");
        await Patience.Until(() => session.Now.Foreign is not null);
        session.Edit(Bird + "# mine again\n");
        await Task.Delay(700, TestContext.Current.CancellationToken);
        Assert.Equal((Bird + "# theirs\n", SaveState.Foreign), (File.ReadAllText(file), session.Now.Save));
        if (takeTheirs)
        {
            session.TakeTheirs();
            Assert.Equal((Bird + "# theirs\n", null), (session.Now.Text, session.Now.Foreign));
            session.Undo();
            Assert.Equal(Bird + "# mine again\n", session.Now.Text);
        }
        else
        {
            session.KeepMine();
            await Patience.Until(() => File.ReadAllText(file) == Bird + "# mine again\n");
            Assert.Contains(Directory.GetFiles(Path.Combine(folder["bird"], DesignFile.Copies)), f => File.ReadAllText(f) == Bird + "# theirs\n");
        }
    }

    [Fact]
    public async Task ATextThatDoesNotReadLeavesTheLastGoodOneStanding()
    {
        await using var session = new DesignSession(file, _ => null);
        await Patience.Until(() => session.Now.Parts is not null);
        var good = session.Now.Work;
        session.Edit("members: [");
        await Patience.Until(() => session.Now.Problems.Count > 0);
        Assert.Same(good, session.Now.Work);
        session.Undo();
        await Patience.Until(() => session.Now.Problems.Count == 0);
    }

    [Fact]
    public void NoPathLeadsOutOfTheFolder()
    {
        Directory.CreateDirectory(folder["open"]);
        Directory.CreateSymbolicLink(Path.Combine(folder["open"], "link"), folder["bird"]);
        folder.Design("open/own", Bird);
        var open = new OpenedFolder(folder["open"], DesignFolder.Of);
        Assert.NotNull(open.FileOf("own"));
        Assert.All(["../bird", "link", "own/../../bird", folder["bird"], "own\0", "none"], p => Assert.Null(open.FileOf(p)));
        Assert.Equal(["own"], open.Designs.Select(d => d.Path));
        var files = new Dictionary<string, byte[]> { ["design.yaml"] = System.Text.Encoding.UTF8.GetBytes(Bird) };
        Assert.NotNull(open.Make("../out", files));
        Assert.NotNull(open.Make("own", files));
        Assert.Null(open.Make("another piece", files));
        Assert.False(Directory.Exists(folder["out"]));
    }
}
