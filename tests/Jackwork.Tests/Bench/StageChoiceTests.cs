using Jackwork.Bench.Elements.Adding;
using Jackwork.Bench.Sessions;
using Jackwork.Bench.Stage;
using Jackwork.Parts;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>What is picked and lit on the stage is found among the parts shown, also while they are of an earlier text than the motion or a later one than the pick.</summary>
[Trait("Proof", "property")]
public sealed class StageChoiceTests
{
    private static readonly string Keeper = ExampleFiles.Text("keeper");

    private static readonly Shapes Before = Shapes.Of(Work.Of(1, Keeper, _ => null).Work!, null);

    private static readonly Shapes After = Shapes.Of(Work.Of(2, NewMember.Add(Before.Work, Keeper, "wing", "cam", "main", false).Text, _ => null).Work!, Before);

    [Fact]
    public void PartsOfAMemberThatIsGoneAreStillFoundAmongTheShapesThatHaveThem()
    {
        // Undone, the newest motion has a member less than the parts that are still shown.
        Assert.True(Before.Work.Machine.Members.Count < After.Work.Machine.Members.Count);
        var wing = After.Work.Machine.IndexOf("wing");
        var lit = new StageChoice(After, null).On("wing");
        Assert.NotEmpty(lit);
        Assert.Equal(Numbers(After, p => p.Body.Member == wing), lit);
        Assert.Empty(new StageChoice(Before, null).On("wing"));
    }

    [Fact]
    public void APartPickedIsFoundByNameInAnyShapesOrIsNotPicked()
    {
        var lever = After.Parts.First(p => p.Body.Member == After.Work.Machine.IndexOf("wing"));
        var here = new StageChoice(After, lever.Name);
        Assert.Equal((lever, "wing"), (here.Part, here.Member));
        Assert.Equal(["wing", "main", "handle"], here.Chains.ToCrank(lever.Body.Member).Select(After.Work.Machine.NameOf));
        Assert.Equal(3 * 720, here.Path!.Length);

        // The same pick among parts that don't have it: nothing is picked, all are shown.
        var gone = new StageChoice(Before, lever.Name);
        Assert.Equal((null, -1, null, null), (gone.Part, gone.Number, gone.Member, gone.Path));
        Assert.All(["all", "part", "shaft", "chain"], what => Assert.Null(gone.Alone(what)));
    }

    [Fact]
    public void AloneAreThePartItsBodyOrItsChain()
    {
        foreach (var part in After.Parts.DistinctBy(p => p.Name))
        {
            var choice = new StageChoice(After, part.Name);
            var chain = choice.Chains.ToCrank(part.Body.Member);
            Assert.Same(part, choice.Part);
            Assert.Null(choice.Alone("all"));
            Assert.Equal([choice.Number], choice.Alone("part"));
            Assert.Equal(Numbers(After, p => p.Body == part.Body), choice.Alone("shaft"));
            Assert.Equal(Numbers(After, p => chain.Contains(p.Body.Member)), choice.Alone("chain"));
        }
    }

    private static IEnumerable<int> Numbers(Shapes solids, Func<Part, bool> where) => Enumerable.Range(0, solids.Parts.Count).Where(i => where(solids.Parts[i]));
}
