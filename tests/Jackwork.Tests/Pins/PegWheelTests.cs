using System.Text.Json;
using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Shop.Package;
using Jackwork.Tests.Shop;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Pins;

/// <summary>Wheels with pegs in their rims: against SciPy's distances of the pegs' middle lines, and what the shop gets of them.</summary>
public sealed class PegWheelTests
{
    // The middle lines of all pegs and pins as pieces of straight lines in space; the nearest points of two by SciPy's bounded least squares. The driven is
    // turned by bisection until something touches: the distance of two capsules' middle lines is then the sum of their radii.
    private const string Script = """
        import json, sys
        import numpy as np
        from scipy.optimize import lsq_linear
        def near(p, q):
            A = np.column_stack([p[1] - p[0], q[0] - q[1]])
            r = lsq_linear(A, q[0] - p[0], (0, 1), method='bvls', tol=1e-14)
            return np.linalg.norm(A @ r.x - (q[0] - p[0]))
        def peg(axis, x, away, end):
            # Pegs reach out from the axis, pins run along it.
            a, u, v = axis
            d = np.cos(x) * u + np.sin(x) * v
            w = np.cross(u, v)
            return (away + 0 * d, away + end * d) if a == 'peg' else (away + end * d - 40 * w, away + end * d + 40 * w)
        e = np.eye(3)
        out = []
        for p in json.load(open(sys.argv[1])):
            n1, n2 = p['n1'], p['n2']
            one = (p['kinds'][0], e[0], e[2])
            if p['crossed']:
                # The driver turns about y and its pegs meet the others' at the height 0 of y, the driven about x.
                two, at = (p['kinds'][1], -e[1], e[2]), np.array([p['r1'], p['r2'], 0.0])
            else:
                two, at = (p['kinds'][1], -e[0], e[2]), np.array([p['distance'], 0.0, 0.0])
            row = []
            for a, b in p['poses']:
                def wheel(n, t, w, o, end):
                    xs = [np.remainder(t + 2 * np.pi * i / n + np.pi, 2 * np.pi) - np.pi for i in range(n)]
                    return [peg(w, x, o, end) for x in xs if abs(x) < 1.0]
                first = wheel(n1, a, one, np.zeros(3), p['ends'][0])
                def clear(b):
                    return min(near(q, s) for q in first for s in wheel(n2, b, two, at, p['ends'][1])) > p['d']
                lo, hi = b - p['span'], b + p['span']
                for _ in range(22):
                    m = (lo + hi) / 2
                    lo, hi = (lo, m) if clear(m) else (m, hi)
                row.append((lo + hi) / 2 - b)
            out.append(row)
        json.dump(out, sys.stdout)
        """;

    [Fact]
    [Trait("Proof", "independent")]
    public void TheDrivenStandsWhereTheNearestPegsArePutBySciPy()
    {
        (PinStand Stand, double Size, int Driver, int Driven, double Pin)[] wheels =
        [
            (new(false, true, false), 54, 9, 18, 4), (new(false, true, false), 54, 16, 8, 4), (new(false, false, true), 54, 9, 18, 4), (new(false, false, true), 60, 14, 10, 5),
            (new(true, true, true), 44, 8, 16, 4), (new(true, true, true), 30, 12, 12, 4), (new(true, true, true), 24, 16, 8, 3),
        ];
        var laws = wheels.Select(w => PinWheelLaw.Of(w.Stand, w.Size, w.Driver, w.Driven, w.Pin)!).ToList();
        Assert.DoesNotContain(null, laws);
        var answer = OutsideReader.Read(Script, JsonSerializer.Serialize(wheels.Zip(laws).Select(x =>
        {
            var sizes = new PinWheelSizes(x.First.Stand, x.Second, x.First.Pin, null);
            var pair = x.Second.Pair;
            return new
            {
                crossed = x.First.Stand.Crossed,
                n1 = x.First.Driver,
                n2 = x.First.Driven,
                r1 = pair.DriverCircle,
                r2 = pair.DrivenCircle,
                d = x.First.Pin,
                distance = x.First.Size,
                kinds = new[] { x.First.Stand.DriverPegs ? "peg" : "pin", x.First.Stand.DrivenPegs ? "peg" : "pin" },
                ends = new[] { x.First.Stand.DriverPegs ? sizes.Driver.PinTo : pair.DriverCircle, x.First.Stand.DrivenPegs ? sizes.Driven.PinTo : pair.DrivenCircle },
                span = 0.4 * Math.Min(x.Second.LeastPlay, x.Second.DrivenPitch / 4),
                poses = Enumerable.Range(0, 9).Select(i => i * x.Second.DriverPitch / 8.7).Select(a => new[] { a, x.Second.Driven(Jet.Constant(a)).Value }),
            };
        })));
        Assert.All(answer.EnumerateArray().SelectMany(r => r.EnumerateArray()), e => Assert.Equal(0, e.GetDouble(), 1e-6));
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(false)]
    [InlineData(true)]
    public void WhereTwoPegsAreSquareToEachOtherTheyStandTheSumOfTheirRadiiApart(bool swapped)
    {
        // At x = 0 the driver's peg lies in the plane of both axes; at y = 0 the driven's does: r sin = rho then, whichever is turned.
        var pegs = new CrossedPegs(24, 40, 4, 25);
        PinPair pair = swapped ? new SwappedPins(pegs) : pegs;
        var y = pair.Driven(Jet.Constant(0)).Value;
        var circle = swapped ? 24 : 40;
        Assert.Equal(4, circle * Math.Tan(y) / Math.Sqrt(1 + Math.Tan(y) * Math.Tan(y)), 1e-9);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheShopGetsTheRimRolledOutWithItsHolesAndThePegsSizes()
    {
        var text = Head("shaft") + Pivot("shaft", new(0, 40, 0), new(1, 0, 0)) + Pivot("wheel", new(40, 100, 0), new(0, 1, 0), "pin-wheel: {from: shaft, pins: [8, 16], circle: 44, pegs: both, at: [14, 60, 0]}");
        var proof = Proof.Of(Of(text));
        var work = proof.MechanismsOf<PinWheelWork>().Single();
        var sizes = work.Wraps.Select(w => (w.Member, w.Holes.Length, Math.Round(w.Width / (2 * Math.PI), 9))).ToList();
        Assert.Equal([(0, 8, 15), (1, 16, 37)], sizes);
        Assert.All(work.Wraps, w => Assert.All(w.Holes, h => Assert.InRange(h.Centre.X, 2, w.Width - 2)));
        Assert.Equal([8, 16], work.Tables.Select(t => (int)t.Rows.Single(r => r.What == "pegs").Value));
        var names = ShopPackage.Files(proof, Verdict.Of(proof), () => "", 1).Select(f => f.Path).ToList();
        Assert.Superset(new HashSet<string> { "pin-wheels/wheel-driver-rim.dxf", "pin-wheels/wheel-wheel-rim.svg", "pin-wheels/wheel-wheel-pegs.csv" }, names.ToHashSet());
    }
}
