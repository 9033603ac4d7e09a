using CsCheck;
using Jackwork.Checks;
using Jackwork.Geneva;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Package;
using Jackwork.Shop.Writers;
using Jackwork.Solids;
using Jackwork.Tests.Design;
using Jackwork.Tests.Shop;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Geneva;

/// <summary>The solids stand where the motion says, and the profiles are those of the solids.</summary>
public sealed class GenevaPartTests
{
    // However the axes point and wherever the pin is drawn: it stands in a slot with its clearance to both walls, or free of the wheel.
    [Fact]
    [Trait("Proof", "property")]
    public void ThePinStandsInASlotAsDrawn() => Gen.Select(Gen.Int[3, 12], Gen.Bool, Gen.Bool, Gen.Double[0, 2 * Math.PI], Gen.Bool).Sample(
        (slots, inside, opposite, towards, ahead) =>
        {
            var text = GenevaPieces.Text(slots, inside, 30 / Math.Sin(Math.PI / slots), List(new Vec3(Math.Cos(towards), Math.Sin(towards), 0)), $", clearance: 0.4, bores: [2, 2], side: {(ahead ? "ahead" : "behind")}", along: new(0, 0, opposite ? -1 : 1));
            var proof = Proof.Of(Of(text));
            Part Named(string name) => proof.Assembly.Parts.Single(p => p.Name == $"wheel geneva {name}");
            double Gap(string a, string b) => PartDistance.Between(Named(a).Set, Named(b).Set, Frame.Identity)!.Value.Apart.Distance;
            Assert.True(Gap("pin", "wheel") > 0.1, $"pin {Gap("pin", "wheel")}");
            Assert.True(Gap("disc", inside ? "ring" : "wheel") > 0.1);
            var off = Math.IEEERemainder(towards - (inside ? Math.PI : 0), Math.Tau);
            if (Math.Abs(off) < 0.9 * proof.MechanismsOf<GenevaWork>().Single().Sizes.Law.HalfDrive)
            {
                Assert.Equal(0.2, Gap("pin", "wheel"), PlateParts.Sagitta + 1e-3);
            }
        },
        iter: 40);

    // Read back by ezdxf: the loops on the layer to cut are closed and as long as the outlines.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(false, 3)]
    [InlineData(true, 4)]
    public void ProfilesAreDrawnAndReadBack(bool inside, int plates)
    {
        var proof = GenevaPieces.Proof(GenevaPieces.Text(4, inside, 50));
        var profiles = Profiles.Of(proof);
        Assert.Equal(plates, profiles.Count);
        Assert.All(profiles, p => Assert.Null(p.Refused));
        foreach (var (profile, plate) in profiles.Zip(proof.MechanismsOf<GenevaWork>().Single().Plates))
        {
            const string script = """
                import ezdxf, json, math, sys
                total = 0
                for e in ezdxf.readfile(sys.argv[1]).modelspace():
                    if e.dxf.layer.lower() != 'cut':
                        continue
                    if e.dxftype() == 'LWPOLYLINE':
                        pts = list(e.get_points('xyb'))
                        for i, (x, y, b) in enumerate(pts):
                            if i + 1 < len(pts) or e.closed:
                                u, v, _ = pts[(i + 1) % len(pts)]
                                chord, turn = math.hypot(u - x, v - y), 4 * math.atan(b)
                                total += chord if b == 0 else chord / (2 * math.sin(abs(turn) / 2)) * abs(turn)
                    elif e.dxftype() == 'CIRCLE':
                        total += 2 * math.pi * e.dxf.radius
                print(json.dumps(total))
                """;
            Assert.Equal(plate.Rim.Length + plate.Openings.Sum(o => o.Length), OutsideReader.Read(script, DxfWriter.Write(profile.Draw())).GetDouble(), 0.01);
            Assert.Contains("<svg", SvgWriter.Write(profile.Draw()), StringComparison.Ordinal);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheExampleHasNoFaultAndAWheelSpoiledIsFound()
    {
        var text = ExampleFiles.Text("gardener");
        Assert.DoesNotContain(Verdict.Of(Proof.Of(Of(text))).Findings, f => f.Level == Level.Fault);
        var spoiled = Verdict.Of(Proof.Of(Of(text.Replace("slots: 4, pin: 5", "slots: 3, pin: 9", StringComparison.Ordinal)))).Findings;
        Assert.Contains(spoiled, f => f.Level == Level.Fault);
    }
}
