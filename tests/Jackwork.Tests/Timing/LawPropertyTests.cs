using CsCheck;
using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Timing;

/// <summary>What every motion law must satisfy.</summary>
[Trait("Proof", "property")]
public sealed class LawPropertyTests
{
    public static TheoryData<string> Names => [.. MotionLaws.All.Select(l => l.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void RunsFromZeroToOne(string name)
    {
        var law = MotionLaws.Find(name)!;
        Assert.Equal(0, law.At(0).S, 1e-15);
        Assert.Equal(1, law.At(1).S, 1e-15);
        Assert.Equal(law.StartSpeed, law.At(0).V, 1e-14);
        Assert.Equal(law.EndSpeed, law.At(1).V, 1e-14);
    }

    // A fall has no mirror: nothing falls up.
    public static TheoryData<string> Mirrored => [.. MotionLaws.All.Where(l => l is not Drop).Select(l => l.Name)];

    [Theory]
    [MemberData(nameof(Mirrored))]
    public void IsSymmetric(string name) => Gen.Double[0, 1].Where(t => t != 0.5).Sample(t =>
    {
        var (here, there) = (MotionLaws.Find(name)!.At(t), MotionLaws.Find(name)!.At(1 - t));

        // Rounding of coefficients up to 420.
        Assert.Equal(1, here.S + there.S, 5e-14);
        Assert.Equal(here.V, there.V, 1e-13);
        Assert.Equal(here.A, -there.A, 1e-12);
    });

    [Theory]
    [MemberData(nameof(Names))]
    public void NeverTurnsBack(string name) => Gen.Double[0, 1].Sample(t => Assert.True(MotionLaws.Find(name)!.At(t).V >= 0));

    // Away from the eighths, where the pieces of some laws join and the third derivative jumps.
    [Theory]
    [MemberData(nameof(Names))]
    public void DerivativesMatchDifferences(string name) => Gen.Select(Gen.Int[0, 7], Gen.Double[0.1, 0.9]).Sample((eighth, u) =>
    {
        var law = MotionLaws.Find(name)!;
        var t = (eighth + u) / 8;
        var (v, a) = (Richardson.First(x => law.At(x).S, t, 0.012), Richardson.Second(x => law.At(x).S, t, 0.012));
        Assert.Equal(v, law.At(t).V, 1e-9);
        Assert.Equal(a, law.At(t).A, 1e-7);
        Assert.Equal(Richardson.First(x => law.At(x).V, t, 0.012), law.At(t).A, 1e-9);
    });

    [Theory]
    [InlineData("modified-sine", new[] { 0.125, 0.875 })]
    [InlineData("modified-trapezoid", new[] { 0.125, 0.375, 0.5, 0.625, 0.875 })]
    public void PiecesJoinToTheSecondDerivative(string name, double[] joints)
    {
        var law = MotionLaws.Find(name)!;
        foreach (var t in joints)
        {
            // One unit in the last place to either side: what is left of a smooth function is far below the tolerance.
            var (before, after) = (law.At(Math.BitDecrement(t)), law.At(Math.BitIncrement(t)));
            Assert.Equal(before.S, after.S, 1e-12);
            Assert.Equal(before.V, after.V, 1e-12);
            Assert.Equal(before.A, after.A, 1e-12);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void OutsideItsTimeIsRefused(string name)
    {
        var law = MotionLaws.Find(name)!;
        Assert.Throws<ArgumentOutOfRangeException>(() => law.At(-0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.At(1.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.At(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => law.Before(0));
    }

    [Fact]
    public void CatalogueHoldsEveryLaw()
    {
        var types = typeof(MotionLaw).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(MotionLaw)) && !t.IsAbstract).ToHashSet();
        Assert.Equal(types, MotionLaws.All.Select(l => l.GetType()).ToHashSet());
        Assert.Equal(MotionLaws.Names.Count, MotionLaws.Names.Distinct().Count());
        Assert.All(MotionLaws.Names, n => Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", n));
    }

    [Theory]
    [InlineData("cycloid", "cycloidal")]
    [InlineData("modifed-sine", "modified-sine")]
    [InlineData("Harmonic", "harmonic")]
    [InlineData("poly-345", "polynomial-345")]
    [InlineData("quintik", "quintic")]
    public void NearestName(string wrong, string right) => Assert.Equal(right, Spelling.Nearest(wrong, MotionLaws.Names));

    [Fact]
    public void DefaultIsTheSlowestSmoothLaw() =>
        Assert.Equal(MotionLaws.All.Where(l => double.IsFinite(l.Cj)).MinBy(l => l.Cv), MotionLaws.Default);
}
