using Jackwork.Barrels;
using Jackwork.Checks;
using Jackwork.Meshes;
using Jackwork.Motion;
using Jackwork.Parts;
using Xunit;

namespace Jackwork.Tests.Barrels;

/// <summary>The surface of a drum with its groove.</summary>
public sealed class GroovedDrumTests
{
    private const double Radius = 25, Length = 40, Roller = 6, Depth = 3, Bore = 3;

    private static (Barrel Barrel, Part Drum) Made(string moves)
    {
        var built = MachineBuilder.Build(FormattableString.Invariant($$"""
            jackwork: 1
            title: rig
            crank: {turns: shaft, rpm: 30}
            members:
              shaft: {pivot: {through: [0, 40, 0], along: x} }
              shuttle: {slide: {along: x, through: [0, 86, 0]}, barrel: {on: shaft, roller: {{Roller}}, at: [0, {{40 + Radius - Depth}}, 0], radius: {{Radius}}, length: {{Length}}, bore: {{2 * Bore}}} }
            timing:
              shuttle: {over: shaft, moves: [{{moves}}]}
            """));
        Assert.True(built.Machine is not null, string.Join("\n", built.Problems));
        var proof = Proof.Of(built.Machine);
        return (Assert.Single(proof.Barrels), Assert.Single(proof.Assembly.Parts, p => p.Name == "shuttle drum"));
    }

    // A ring-shaped groove of the width w: V = pi (R^2 - b^2) L - pi (R^2 - f^2) w, polygons of 180 sides for circles.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ADrumThatDoesNotMoveItsRollerHasARingForAGroove()
    {
        var (barrel, drum) = Made("{from: 10, to: 160, reach: 0}, {from: 190, to: 340, reach: rest}");
        const double flats = 180 / (2 * Math.PI);
        var polygons = flats * Math.Sin(1 / flats);
        var expected = polygons * Math.PI * ((Radius * Radius - Bore * Bore) * Length - (Radius * Radius - (Radius - Depth) * (Radius - Depth)) * 2 * barrel.Groove.Half);
        Assert.Equal(expected, drum.Volume, 1e-3 * expected);
        Assert.Equal(drum.Surface!.Volume, drum.Volume);
    }

    // Against the area of the groove rolled out, as it is cut: at the half depth it is that much less wide round the drum.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheWoodGoneIsTheRolledOutGroovesAreaTimesItsDepth()
    {
        var (barrel, drum) = Made("{from: 10, to: 160, reach: 16}, {from: 190, to: 340, reach: rest}");
        var whole = Math.PI * (Radius * Radius - Bore * Bore) * Length;
        var gone = barrel.Pattern.Groove.SignedArea * Depth * (Radius - Depth / 2) / Radius;
        Assert.Equal(whole - gone, drum.Volume, 5e-4 * whole);
    }

    [Theory]
    [Trait("Proof", "property")]
    [InlineData("{from: 10, to: 160, reach: 16}, {from: 190, to: 340, reach: rest}")]
    [InlineData("{from: 30, to: 80, reach: 9}, {from: 80, to: 120, reach: -8}, {from: 200, to: 350, reach: rest}")]
    public void TheSurfaceIsClosedAndTheRollerStandsInTheGroove(string moves)
    {
        var (barrel, drum) = Made(moves);
        Assert.Empty(MeshCheck.Of(drum.Surface!).Problems);
        // As drawn the roller stands under x = 0: there is no wood a little below its end's middle, and wood below the floor and beside the walls.
        Assert.False(drum.Surface!.Contains(new(0, 40 + Radius - Depth / 2, 0)));
        Assert.True(drum.Surface.Contains(new(0, 40 + Radius - Depth - 0.1, 0)));
        Assert.True(drum.Surface.Contains(new(barrel.Groove.Half + 0.3, 40 + Radius - 0.2, 0)));
        Assert.True(drum.Surface.Contains(new(-barrel.Groove.Half - 0.3, 40 + Radius - 0.2, 0)));
    }
}
