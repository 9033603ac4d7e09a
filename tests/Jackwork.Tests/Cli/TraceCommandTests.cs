using System.Globalization;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Cli;

/// <summary><c>jackwork trace</c> prints the solved motion, in the units that its heading says.</summary>
[Trait("Proof", "property")]
public sealed class TraceCommandTests
{
    // The foot of a leg: its distance from the leg's pin, which goes round with the crank, is kept; speed is the way over time.
    [Fact]
    public void PrintsThePathOfAPoint()
    {
        var run = Run.Of("trace", ExampleFiles.PathOf("trotting-dog"), "--member", "near-front-leg", "--point", "29.91,29.71,39.7");
        Assert.Equal((0, ""), (run.Code, run.Messages));
        var lines = run.Data.TrimEnd().Split(Environment.NewLine);
        Assert.Equal("crank_deg,time_s,x_mm,y_mm,z_mm,speed_mm_per_s,acceleration_mm_per_s2", lines[0]);
        var rows = lines[1..].Select(l => l.Split(',').Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        Assert.Equal((720, 29.91, 29.71, 39.7), (rows.Length, rows[0][2], rows[0][3], rows[0][4]));
        for (var i = 1; i + 1 < rows.Length; i++)
        {
            var t = rows[i][0] * Math.PI / 180;
            var (dx, dy) = (rows[i][2] - 45 - 9 * Math.Cos(t), rows[i][3] - 106 - 9 * Math.Sin(t));
            Assert.Equal(Math.Sqrt(24.09 * 24.09 + 76.29 * 76.29), Math.Sqrt(dx * dx + dy * dy), 1e-6);
            var way = Math.Sqrt(Math.Pow(rows[i + 1][2] - rows[i - 1][2], 2) + Math.Pow(rows[i + 1][3] - rows[i - 1][3], 2));
            Assert.Equal(way / (rows[i + 1][1] - rows[i - 1][1]), rows[i][5], 0.05);
        }
    }

    [Theory]
    [InlineData("1,2")]
    [InlineData("1,2,x")]
    [InlineData("1,2,NaN")]
    public void APointThatIsNoneIsRefused(string point)
    {
        var run = Run.Of("trace", ExampleFiles.PathOf("nodding-bird"), "--member", "head", "--point", point);
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.Contains($"'--point {point}' is no point", run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nodding-bird", "head", "deg")]
    [InlineData("keeper", "gull", "mm")]
    [InlineData("keeper", "eye-right", "deg")]
    public void PrintsTheMotion(string example, string member, string unit)
    {
        var run = Run.Of("trace", ExampleFiles.PathOf(example), "--member", member);
        Assert.Equal((0, ""), (run.Code, run.Messages));
        var lines = run.Data.TrimEnd().Split(Environment.NewLine);
        Assert.Equal($"crank_deg,time_s,position_{unit},speed_{unit}_per_s,acceleration_{unit}_per_s2", lines[0]);

        var machine = MachineBuilder.Build(ExampleFiles.Text(example)).Machine!;
        var motion = Jackwork.Motion.Motion.Solve(machine).Of(member);
        var rows = lines[1..].Select(l => l.Split(',').Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        Assert.Equal(motion.Length, rows.Length);

        // 6 degrees a second for each turn a minute.
        var rate = 6 * machine.Design.Crank.Rpm;
        var perDegree = unit == "deg" ? 180 / Math.PI : 1;
        for (var i = 0; i < rows.Length; i++)
        {
            Assert.Equal(360.0 * machine.Performance.CrankTurns * i / rows.Length, rows[i][0], 6e-7);
            Assert.Equal(rows[i][0] / rate, rows[i][1], 1e-6);
            Assert.Equal(motion[i].Value * perDegree, rows[i][2], 1e-9);
        }

        // The columns fit each other: speed is the change of position over time, acceleration that of speed, to the error of
        // central differences, which is small against the largest of each where the motion is smooth.
        Fits(rows, 2, 3);
        Fits(rows, 3, 4);
    }

    [Fact]
    public void AnUnknownMemberIsHintedAt()
    {
        var run = Run.Of("trace", ExampleFiles.PathOf("keeper"), "--member", "gul");
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.Equal("jackwork: the design has no member 'gul'. Did you mean 'gull'?", run.Messages.TrimEnd());
    }

    private static void Fits(double[][] rows, int value, int rate)
    {
        var largest = rows.Max(r => Math.Abs(r[rate]));
        var off = Enumerable.Range(1, rows.Length - 2)
            .Select(i => Math.Abs((rows[i + 1][value] - rows[i - 1][value]) / (rows[i + 1][1] - rows[i - 1][1]) - rows[i][rate]))
            .Order().ToArray();
        Assert.True(largest > 0);
        Assert.True(off[off.Length * 9 / 10] < 0.01 * largest, $"column {rate}: {off[off.Length * 9 / 10]} off, largest {largest}");
    }
}
