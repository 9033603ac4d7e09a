using CsCheck;
using Jackwork.Design;
using Jackwork.Geometry;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>What is written reads back equal in every key, and writing it again gives the same text.</summary>
[Trait("Proof", "property")]
public sealed class RoundTripTests
{
    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void OfTheExamples(string name)
    {
        var reading = DesignReader.Read(ExampleFiles.Text(name));
        Assert.Empty(reading.Problems);
        Holds(reading.Spec!);
    }

    [Fact]
    public void OfRandomDesigns() => SpecGen.Design.Sample(Holds, iter: 3000);

    [Fact]
    public void HalfASurrogatePairIsNotWritten()
    {
        foreach (var title in (string[])["\ud83d", "a\ude00b", "\ude00\ud83d"])
        {
            var e = Assert.Throws<ArgumentException>(() => DesignWriter.Write(new DesignSpec { Title = title }));
            Assert.Contains("surrogate", e.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TheComparerSeesDifferences()
    {
        var a = DesignReader.Read(ExampleFiles.Text("nodding-bird")).Spec!;
        Assert.Null(SpecComparer.Difference(a, a with { }));
        Assert.NotNull(SpecComparer.Difference(a, a with { Cutter = 3 }));
        var head = a.Members["head"];
        var moved = head with { Pivot = head.Pivot! with { Through = new Point3(0, 150, 9) } };
        Assert.Contains("Through", SpecComparer.Difference(a, a with { Members = a.Members.With("head", moved) }), StringComparison.Ordinal);
    }

    private static void Holds(DesignSpec spec)
    {
        var text = DesignWriter.Write(spec);
        var reading = DesignReader.Read(text);
        Assert.True(reading.Spec is not null, string.Join('\n', reading.Problems) + "\n" + text);
        Assert.Null(SpecComparer.Difference(spec, reading.Spec));
        Assert.Equal(text, DesignWriter.Write(reading.Spec!));
    }
}
