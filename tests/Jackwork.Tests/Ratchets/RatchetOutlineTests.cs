using CsCheck;
using Jackwork.Geometry;
using Jackwork.Ratchets;
using NetTopologySuite.Geometries;
using Xunit;

namespace Jackwork.Tests.Ratchets;

/// <summary>The outlines of wheel and pawl, laid over each other by NetTopologySuite; how the pressure draws the pawl in.</summary>
public sealed class RatchetOutlineTests
{
    private const double Boss = 6;

    private static readonly Gen<RatchetSizes> AnySizes = Gen.Select(Gen.Int[8, 40], Gen.Double[25, 60], Gen.Double[0.3, 0.6], Gen.Double[0, 0.45], Gen.Double[0.3, 0.8])
        .Select((n, radius, depth, undercut, pivot) =>
        {
            var pitch = Math.Tau * radius / n;
            return new RatchetSizes(new(n, 0), radius, depth * pitch, undercut, Math.Min(1, 0.1 * pitch), radius + Boss + 1 + pivot * radius);
        })
        .Where(s => s.Seat > 1.2 && RatchetOutlines.HasBody(s, Boss));

    private static Polygon Of(Outline outline)
    {
        var ring = outline.Flatten(0.002).Select(p => new Coordinate(p.X, p.Y)).ToList();
        return new(new LinearRing([.. ring, ring[0]]));
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void ThePawlLiesOnItsFaceAndTouchesNothingElse() => AnySizes.Sample(s =>
    {
        var (wheel, pawl) = (RatchetOutlines.Wheel(s), RatchetOutlines.Pawl(s, Boss));
        Assert.Equal(0, wheel.Gap, 1e-9);
        Assert.Equal(0, pawl.Gap, 1e-9);
        var (w, p) = (Of(wheel), Of(pawl));
        Assert.True(w.IsValid && p.IsValid);
        Assert.True(wheel.SignedArea > 0 && pawl.SignedArea > 0);
        Assert.Equal(w.Area, wheel.SignedArea, 0.002 * wheel.Length);
        Assert.Equal(p.Area, pawl.SignedArea, 0.002 * pawl.Length);
        Assert.True(w.Intersection(p).Area < 0.002 * pawl.Length);
        Assert.Equal(0, w.Distance(p), 1e-6);

        // Drawn back along its way by a little it hangs clear of the face, and lies clear of the tip behind.
        var back = Of(pawl.Turned(-0.1 / s.Radius));
        Assert.True(w.Distance(back) > 0);
    }, iter: 60);

    // Every corner between back and face is as round as the cutter asks: what is left round the wheel, opened by a disc of that size, stays what it is,
    // but for what the other library simplifies away.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheCutterReachesEveryCorner() => AnySizes.Sample(s =>
    {
        var outside = new GeometryFactory().CreatePoint(new Coordinate(0, 0)).Buffer(s.Radius + 3, 64).Difference(Of(RatchetOutlines.Wheel(s)));
        var swept = outside.Buffer(-s.Corner + 0.004, 64).Buffer(s.Corner - 0.004, 64);
        Assert.True(outside.Difference(swept.Buffer(0.03)).Area < 1e-6);
    }, iter: 20);

    // Machinery's Handbook, "Ratchet Gearing", Shape of Ratchet Wheel Teeth (from memory): pushed, the pawl stays in where the square to the face
    // passes between the wheel's centre and the pawl's pivot. Here by where that line crosses the line of the two.
    [Fact]
    [Trait("Proof", "published")]
    public void ThePressureDrawsInWhereTheHandbookSaysSo() => Gen.Select(AnySizes, Gen.Double[-0.3, 0.45]).Sample((sizes, undercut) =>
    {
        var s = sizes with { Undercut = undercut };
        if (!(s.PawlLength > 0) || Math.Abs(s.DrawsIn) < 1e-6)
        {
            return;
        }

        // M + t n = k O: k by the vector product with n.
        var (m, o, n) = (s.Middle.FromOrigin, s.Pivot.FromOrigin, (s.OnFace(1) - s.Tip).Left);
        var k = m.Cross(n) / o.Cross(n);
        Assert.Equal(s.DrawsIn > 0, k is > 0 and < 1);
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void SizesAgainstTheirTriangles() => AnySizes.Sample(s =>
    {
        Assert.Equal(s.PivotRadius, s.Pivot.FromOrigin.Length, 1e-9);
        Assert.Equal(0, (s.Pivot - s.Middle).Dot(s.Middle.FromOrigin), 1e-7);
        Assert.Equal(s.PivotBehind, s.Middle.FromOrigin.Angle - s.Pivot.FromOrigin.Angle, 1e-9);
        Assert.Equal(s.Undercut + s.Middle.FromOrigin.Angle, s.DrawsIn, 1e-9);
    });
}
