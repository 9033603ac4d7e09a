using Jackwork.Checks;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Geneva;

/// <summary>Findings on Geneva wheels, spoiled one thing at a time; figures by hand from C = 50 mm, six slots: r = 25, R = 43.30 mm.</summary>
[Trait("Proof", "closed form")]
public sealed class GenevaCheckTests
{
    private static readonly string[] Faulty = ["geneva-size", "geneva-wall", "geneva-lock"];

    private static List<Finding> Of(string more, int slots = 6, bool inside = false, double distance = 50, double rpm = 30) =>
        [.. Verdict.OfMotion(GenevaPieces.Proof(GenevaPieces.Text(slots, inside, distance, more: more, rpm: rpm))).Findings];

    [Theory]
    [InlineData(6, false)]
    [InlineData(4, false)]
    [InlineData(6, true)]
    public void ASoundWheelHasOnlyItsJolt(int slots, bool inside) => Assert.DoesNotContain(Of("", slots, inside), f => Faulty.Contains(f.Check));

    [Fact]
    public void TheJoltIsToldWithItsPlaceAndSize()
    {
        // tan 30 deg = 0.57735, crank 2 pi 30/60 = pi rad/s: 0.57735 pi^2 = 5.698 rad/s^2. Pin drawn at 63.4349 deg from the line of
        // centres; the drive takes 120 deg, so it leaves at -3.4349 + 360 after entering at 236.5651.
        var f = Assert.Single(Of(""), f => f.Check == "geneva-jolt");
        Assert.Equal(Level.Note, f.Level);
        Assert.Contains("5.7 rad/s²", f.Message, StringComparison.Ordinal);
        Assert.Equal(236.5651, f.From!.Value, 1e-3);
        Assert.Equal(356.5651, f.To!.Value, 1e-3);

        // Peak 1.350 (published) times pi^2 at the rim, sqrt(43.30^2 + 2.575^2) mm; sampled every half degree.
        Assert.Equal(1.350 * Math.PI * Math.PI * 43.378 / 1000, f.Measured, 0.002);
        Assert.Equal(Level.Caution, Assert.Single(Of("", rpm: 120), f => f.Check == "geneva-jolt").Level);
    }

    [Fact]
    public void ThinHorns()
    {
        // 25 - 2.575 - 21.15 = 1.275 mm.
        var f = Assert.Single(Of(", locking: 21"), f => f.Check == "geneva-wall");
        Assert.Equal(1.275, f.Measured, 1e-9);
        Assert.Contains("horns", f.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void BoresTooLarge()
    {
        // The relief goes 0.5 mm below the rim or through the ends of the lock, sqrt(43.30^2 + 7.5^2) = 43.946: 50 - 43.946 = 6.054 mm.
        var f = Assert.Single(Of(", bores: [9, 6]"), f => f.Check == "geneva-wall");
        Assert.Equal(6.054 - 4.5, f.Measured, 1e-3);
        Assert.Contains("relief", f.Message, StringComparison.Ordinal);

        // Slots end at 50 - 25 - 0.15 - 2.575 = 22.275 mm.
        var g = Assert.Single(Of(", bores: [6, 42]"), f => f.Check == "geneva-wall");
        Assert.Equal(22.275 - 21, g.Measured, 1e-9);
        Assert.Contains("into its bore", Assert.Single(Of(", bores: [14, 6]"), f => f.Check == "geneva-size").Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(", locking: 24", "no horn")]
    [InlineData(", locking: 6", "does not meet")]
    [InlineData(", pin: 30", "no room for a locking disc")]
    public void WhatCannotBeMade(string more, string why)
    {
        var f = Assert.Single(Of(more), f => f.Check == "geneva-size");
        Assert.Equal(Level.Fault, f.Level);
        Assert.Contains(why, f.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ALooseLock()
    {
        // Hollow 17.5 + 1: cos D = (50^2 + 18.5^2 - 43.425^2)/(2 50 18.5) = 0.5171; 1/(50 sin D) = 0.02337 rad = 1.339 deg (slot 6 mm wide).
        var f = Assert.Single(Of(", clearance: 1"), f => f.Check == "geneva-lock");
        var cos = (2500 + 18.5 * 18.5 - (1875 + 9)) / 1850;
        Assert.Equal(180 / Math.PI / (50 * Math.Sqrt(1 - cos * cos)), f.Measured, 1e-9);
        Assert.Contains("turned by 1.3", f.Message, StringComparison.Ordinal);
        Assert.Contains(Of(", locking: 6.55, bores: [3, 6]"), f => f.Check == "geneva-lock" && f.Unit == "deg" && f.Message.Contains("line of centres", StringComparison.Ordinal));
    }
}
