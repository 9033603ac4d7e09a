using System.Text.Json;
using CsCheck;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Shop;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>Crossed pins as solid round bars with square ends, their least distance found by SciPy: where we say that they touch they do.</summary>
[Trait("Proof", "independent")]
public sealed class CrossedPinBodyTests
{
    // A bar is a point on its axis and one on the disc across it. The driver's axis is x, the driven's y; bars: place, half length, radius.
    private const string Script = """
        import json, math, sys
        import numpy as np
        from scipy.optimize import minimize
        job = json.load(open(sys.argv[1]))
        def distance(c, f, h, r):
            # driver's bar along x from c[0] to c[1] at (y, z) = c[2:], radius r[0]; driven's along y at (x, z) = f, from h upward, radius r[1]
            cons = [dict(type='ineq', fun=lambda v: r[0]**2 - v[1]**2 - v[2]**2, jac=lambda v: np.array([0, -2*v[1], -2*v[2], 0, 0, 0])),
                    dict(type='ineq', fun=lambda v: r[1]**2 - v[4]**2 - v[5]**2, jac=lambda v: np.array([0, 0, 0, 0, -2*v[4], -2*v[5]]))]
            def gap(v): return np.array([v[0] - f[0] - v[4], c[2] + v[1] - v[3], c[3] + v[2] - f[1] - v[5]])
            J = np.array([[1, 0, 0, 0, -1, 0], [0, 1, 0, -1, 0, 0], [0, 0, 1, 0, 0, -1]], float)
            s = minimize(lambda v: gap(v) @ gap(v), np.array([(c[0] + c[1]) / 2, 0, 0, c[2] + 1, 0, 0]), jac=lambda v: 2 * gap(v) @ J,
                         bounds=[(c[0], c[1]), (None, None), (None, None), (h, h + 60), (None, None), (None, None)], constraints=cons, method='SLSQP', options=dict(maxiter=300, ftol=1e-14))
            return float(np.linalg.norm(gap(s.x)))
        out = []
        for p in job:
            c = (-20, p['tip'], p['r1'] * math.cos(p['x']), p['r1'] * math.sin(p['x']))
            at = lambda y: distance(c, (p['r2'] - p['r2'] * math.cos(y), p['r2'] * math.sin(y)), p['r1'] / 3, (p['p1'], p['p2']))
            out.append([at(p['y']), at(p['y'] + p['off'])])
        json.dump(out, sys.stdout)
        """;

    [Fact]
    public void TheyTouchAndPartAsTheyShould()
    {
        // A fixed choice, since the reader is slow to start.
        var random = new Random(7);
        double Pick(double from, double to) => from + random.NextDouble() * (to - from);
        var cases = Enumerable.Range(0, 40).Select(_ =>
        {
            var pair = new CrossedPins(Pick(20, 60), Pick(12, 40), Pick(1, 3), Pick(1, 3), Pick(-0.8, 1.2));
            var x = PinPairTests.Within(pair, Pick(0.05, 0.98));
            return (Pair: pair, X: x, Y: pair.Driven(Jet.Constant(x)).Value);
        }).ToList();
        const double off = 0.02;
        var answer = OutsideReader.Read(Script, JsonSerializer.Serialize(cases.Select(c => new
        {
            r1 = c.Pair.DriverCircle, r2 = c.Pair.DrivenCircle, p1 = c.Pair.DriverPin, p2 = c.Pair.DrivenPin, tip = c.Pair.Tip, x = c.X, y = c.Y, off,
        }))).EnumerateArray().Select(a => (Touching: a[0].GetDouble(), Past: a[1].GetDouble())).ToList();
        foreach (var ((pair, x, y), (touching, past)) in cases.Zip(answer))
        {
            Assert.InRange(touching, 0, 2e-3);

            // Turned on a little they are apart by the lever of the push, less where the push is slanted.
            var ratio = pair.Driven(Jet.Variable(x)).First;
            Assert.True(past > 0.02 * off * pair.DrivenCircle && past < 1.1 * off * pair.DrivenCircle, $"{pair} x {x} y {y} f' {ratio}: {past}");
        }
    }
}
