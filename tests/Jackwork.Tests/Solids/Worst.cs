using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>Keeps the greatest error seen, says it, and fails when it is above what is promised.</summary>
internal sealed class Worst(string of, double allowed, string unit = "mm")
{
    private double error;
    private int count;
    private string where = "";

    public void Take(double difference, Func<string>? at = null)
    {
        count++;
        if (!(Math.Abs(difference) <= error))
        {
            error = double.IsNaN(difference) ? double.PositiveInfinity : Math.Abs(difference);
            where = at?.Invoke() ?? "";
        }
    }

    public void Report()
    {
        var text = FormattableString.Invariant($"{of}: worst of {count} is {error:g3} {unit} (allowed {allowed:g3}) {where}");
        TestContext.Current.TestOutputHelper?.WriteLine(text);
        Assert.True(error <= allowed && count > 0, text);
    }
}
