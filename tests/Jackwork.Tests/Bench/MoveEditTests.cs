using CsCheck;
using Jackwork.Bench.Chart;
using Jackwork.Bench.Sessions;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>A drag of a move writes where the pointer is, however far the machine is behind the text.</summary>
[Trait("Proof", "property")]
public sealed class MoveEditTests
{
    private static readonly string Keeper = ExampleFiles.Text("keeper");

    private static readonly Work Drawn = Work.Of(1, Keeper, _ => null).Work!;

    [Theory]
    [InlineData("From", 138)]
    [InlineData("To", 193)]
    [InlineData("Along", 138)]
    [InlineData("Height", 20)]
    public void DraggedBackToWhereItBeganTheTextIsAsItWas(string hold, double began)
    {
        var held = Enum.Parse<Hold>(hold);
        Gen.Int[1, 20].Array[1, 6].Sample(steps =>
        {
            var text = Keeper;
            foreach (var by in steps)
            {
                text = Drag(text, held, began + (held == Hold.To ? -by : by));
                Assert.NotEqual(Keeper, text);
            }

            Assert.Equal(Keeper, Drag(text, held, began));
        });
    }

    private static string Drag(string text, Hold hold, double to) => MoveEdit.Drag(text, Drawn.Machine, "scope-arm", 0, hold, to)!;
}
