using CsCheck;
using Jackwork.Checks;
using Jackwork.Drops;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Tests.Design;
using Jackwork.Tests.Motion;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Drops;

/// <summary>Whole falls: inertia and forces of the machine, and the time that they give.</summary>
public sealed class TrueFallTests
{
    private const double G = 9806.65;

    // Off a small roller at high speed the follower leaves the tip at once: then it is free fall, h = g t^2/2.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(6)]
    [InlineData(10)]
    [InlineData(15)]
    public void AStemThatLeavesTheTipAtOnceFallsFreely(double lift)
    {
        var drop = new DropRig { Lift = lift, Rpm = 200, Roller = 4, From = 180, RiseTo = 170, To = 330 }.Drop();
        Assert.Equal(0, drop.Fall.Ridden);
        Assert.Equal(Math.Sqrt(2 * lift / G), drop.Fall.Time, 1e-9);
        Assert.Equal(Math.Sqrt(2 * lift * G), drop.Fall.LandingSpeed, 1e-6);
        Assert.Equal(lift, drop.Height, 1e-9);
    }

    // A guide with friction m holds back with m of the weight, a spring of no rate adds its pull: a = g (1 - m) + F (1 - m)/M.
    [Fact]
    [Trait("Proof", "closed form")]
    public void FrictionAndASteadySpringMakeAnotherGravity()
    {
        var rig = new DropRig { Rpm = 220, Roller = 4, From = 180, RiseTo = 170, To = 330, CamKeys = ", friction: 0.3, spring: {at: [0, 110, 0], to: [0, 20, 0], pull: 0.5}" };
        var a = 0.7 * (G + 0.5e6 / rig.Mass);
        Assert.Equal(Math.Sqrt(2 * 10 / a), rig.Drop().Fall.Time, 1e-7);
    }

    // On a lever the ball's own moment counts: M = m (d^2 + 2 r^2/5), its weight drives with m g x; by SciPy from rest, the tip left at once.
    private const string Swing = """
        import json, sys, numpy as np
        from scipy.integrate import solve_ivp
        a = json.load(open(sys.argv[1]))
        out = []
        for j in a:
            m, r, x, y, k, F0, L0, mu, rj, g = [j[n] for n in ('m', 'r', 'x', 'y', 'k', 'F0', 'L0', 'mu', 'rj', 'g')]
            d2 = x * x + y * y
            M = m * (d2 + 0.4 * r * r)
            A, B = np.array(j['A']), np.array(j['B'])
            def rhs(t, s):
                q, v = s
                c, n = np.cos(q), np.sin(q)
                px = c * x - n * y
                P = np.array([c * A[0] - n * A[1], n * A[0] + c * A[1]])
                D = np.array([-P[1], P[0]])
                L = np.linalg.norm(P - B)
                F = 1e6 * max(0.0, F0 + k * (L - L0))
                dL = (P - B) @ D / L
                return [v, (-m * g * px - F * dL + mu * rj * (m * g + F)) / M]
            land = lambda t, s: s[0]
            land.terminal = True
            s = solve_ivp(rhs, [0, 1], [j['q'], -j['v']], events=land, rtol=1e-12, atol=1e-14)
            out.append([s.t_events[0][0], -s.y_events[0][0][1]])
        print(json.dumps(out))
        """;

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("", 0, 0, 0, 15)]
    [InlineData(", friction: 0.3", 0, 0, 0.3, 25)]
    [InlineData(", friction: 0.1, spring: {at: [0, 80, 0], to: [10, 20, 0], rate: 0.04, pull: 1.5}", 0.04, 1.5, 0.1, 40)]
    public void ALeverAgainstSciPy(string keys, double k, double pull, double friction, double rpm)
    {
        var rig = new DropRig { Lever = true, Lift = 9, Rpm = rpm, From = 180, RiseTo = 170, To = 330, CamKeys = keys.Length > 0 ? keys : ", friction: 0" };
        var drop = rig.Drop();

        // From where it leaves the tip: that is told, the flight from there is asked.
        var left = drop.Fall.Ridden;
        var w = rpm * 2 * Math.PI / 60;
        var ride = drop.Face.Ride(left);
        var (time, speed) = (drop.Fall.Time - left / w, drop.Fall.LandingSpeed);
        var answer = DropRig.Python(Swing, new[] { new { m = rig.Mass, r = 15, x = 45, y = 60, k, F0 = pull, L0 = Math.Sqrt(10 * 10 + 60 * 60), mu = friction, rj = 2, g = G, A = (double[])[45, 20], B = (double[])[55, -40], q = ride.Value, v = -ride.First * w } })[0];
        Assert.True(left > 0);
        Assert.Equal(answer[0].GetDouble(), time, 1e-5 * time);
        Assert.Equal(answer[1].GetDouble() * drop.Cam.Follower.Reach, speed, 1e-4 * speed);
    }

    // The whole fall, tip and all, in short steps: the roller falls freely and is held up where the corner of the wood is under it.
    private const string Steps = """
        import json, sys, math
        a = json.load(open(sys.argv[1]))
        out = []
        for j in a:
            g, w, R, q0, low, lift0 = j['g'], j['w'], j['R'], j['q'], j['low'], j['zero']
            tx, ty = j['tip']
            dt = 2e-7
            t, q, v, floor = 0.0, q0, 0.0, q0
            while True:
                t += dt
                c, s = math.cos(w * t), math.sin(w * t)
                x, y = c * tx - s * ty, s * tx + c * ty
                v -= g * dt
                q += v * dt
                now = y + math.sqrt(R * R - x * x) - lift0 if abs(x) < R and y > 0 else -1e9
                if q < now:
                    q, v = now, (now - floor) / dt
                floor = now
                if q <= low:
                    break
            out.append([w * t, -v])
        print(json.dumps(out))
        """;

    [Fact]
    [Trait("Proof", "independent")]
    public void TheWholeFallOverTheTipAgainstShortSteps()
    {
        double[] speeds = [10, 30, 60, 120];
        var drops = speeds.Select(rpm => new DropRig { Rpm = rpm, Roller = 10 }.Drop()).ToList();
        var answer = DropRig.Python(Steps, drops.Select(d => new
        {
            g = G, w = d.Machine.CrankSpeed, R = 5, q = d.Face.Fall.Q.Value, low = d.Face.Fall.Low, zero = 30.0,
            tip = (double[])[d.Face.Tip.Turned(d.Face.Fall.T.Value).X, d.Face.Tip.Turned(d.Face.Fall.T.Value).Y],
        }));
        foreach (var (drop, i) in drops.Select((d, i) => (d, i)))
        {
            Assert.Equal(answer[i][0].GetDouble(), drop.Fall.CrankAngle, 2e-4);
            Assert.Equal(answer[i][1].GetDouble(), drop.Fall.LandingSpeed, 1);

            // It rides where gravity bends its path more than the tip bends the ride: the middle, at r + R from the shaft as the tip at r goes by, falls with w^2 r (r + R)/R.
            var r = drop.Face.Tip.FromOrigin.Length;
            Assert.Equal(Math.Pow(drop.Machine.CrankSpeed, 2) * r * (r + 5) / 5 < G, drop.Fall.Ridden > 0);
        }
    }

    // In the example a slide, a rod and a lever fall together: forces are the slope of the energy, and the inertia's slope its difference.
    [Fact]
    [Trait("Proof", "property")]
    public void InertiaAndForcesOfALinkageMatchDifferences()
    {
        var proof = Proof.Of(Machines.Of(ExampleFiles.Text("smith")));
        var cam = proof.Cams[0];
        var bodies = new FallingBodies(proof, cam, cam.Drops[0].Fall.From);
        var parts = proof.Assembly.Parts.Where(p => p.Body.Member is 1 or 2).Select(p => (p.Body, Moments: MassMoments.Of(p))).ToList();
        Assert.Equal(["lift", "arm"], bodies.Members);
        Assert.Equal(parts.Sum(p => p.Moments.Mass), bodies.Mass, 1e-9);
        Gen.Double[0.5, 8].Sample(q =>
        {
            var state = bodies.At(q);
            Assert.Equal(Richardson.First(x => bodies.At(x).M, q, 0.2), state.M1, 1e-6 * state.M);
            Assert.Equal(-Richardson.First(x => Height(x), q, 0.2), state.Drive, 1e-6 * Math.Abs(state.Drive));
            Assert.True(state.M > 0 && state.Drive < 0 && state.Friction > 0);
        }, threads: 1);

        // Potential energy from where the members stand, as the machine's own pose has them.
        double Height(double q)
        {
            var machine = proof.Machine;
            var pass = new Pass(machine, Jackwork.Cams.ForwardRun.Forward(machine));
            var given = new double[machine.Members.Count];
            for (given[1] = 0; given[1] < q; given[1] = Math.Min(q, given[1] + 0.5))
            {
                pass.Go(0, given: given);
            }

            pass.Go(0, given: given);
            var arm = pass.States[2].Q.Value;
            var (sin, cos) = Math.SinCos(arm);
            var sum = 0.0;
            foreach (var (body, m) in parts)
            {
                double X(double x) => x + 20;
                sum += m.Mass * G * (body.IsRod ? 130 + q + m.Centre.X / 28 * (158 + (30 * sin) - 130 - q) : body.Member == 1 ? m.Centre.Y + q : 158 + X(m.Centre.X) * sin + (m.Centre.Y - 158) * cos);
            }

            return sum;
        }
    }

    // The faster the crank the larger the angle of the fall, and never less than the tip asks; turned so slowly that it is that.
    [Fact]
    [Trait("Proof", "property")]
    public void TheAngleGrowsWithTheSpeed() => Gen.Select(Gen.Bool, Gen.Double[3, 14], Gen.Double[4, 14]).Sample((lever, lift, roller) =>
    {
        var sizes = new DropRig { Lever = lever, Lift = lift, Roller = roller }.Drop();
        var last = sizes.Face.Needs;
        Assert.Equal(last, sizes.Sizes.Angle(1e-3), 1e-5);
        foreach (var rpm in (double[])[1, 5, 20, 60, 150])
        {
            var angle = sizes.Sizes.Angle(rpm);
            Assert.True(angle >= last - 1e-9, $"{angle} at {rpm} rpm after {last}");
            last = angle;
        }
    }, iter: 12);

    [Fact]
    [Trait("Proof", "property")]
    public void SpeedAndSpringAreInversesOfTheAngle() => Gen.Select(Gen.Bool, Gen.Double[4, 12], Gen.Double[30, 90]).Sample((lever, lift, rpm) =>
    {
        var drop = new DropRig { Lever = lever, Lift = lift, Rpm = rpm, From = 180, RiseTo = 170, To = 350 }.Drop();
        var angle = drop.Fall.CrankAngle;
        Assert.Equal(rpm, drop.Sizes.FastestRpm(angle), 1e-3 * rpm);
        Assert.Equal(0, drop.Sizes.ForceWithin(angle + 1e-9));

        // A spring as strong as asked brings it down in the angle asked.
        var wanted = drop.Face.Needs + 0.6 * (angle - drop.Face.Needs);
        var force = drop.Sizes.ForceWithin(wanted)!.Value;
        Assert.True(force > 0);
        Assert.Equal(wanted, TrueFall.Of(drop.Face, FallTable.Of(drop.Face.Fall, drop.Cam.Follower.Reach, new FallingBodies(drop.Proof, drop.Cam, drop.Face.Fall.From).At), drop.Machine.CrankSpeed, force).CrankAngle, 1e-4);
        Assert.Null(drop.Sizes.ForceWithin(drop.Face.Needs * 0.99));
    }, iter: 8);

    // Of a rise at constant speed the follower still goes up as it comes to the tip, and is thrown up by it: h = u^2/2g higher, down later.
    [Fact]
    [Trait("Proof", "closed form")]
    public void WhatStillRisesIsThrownUp()
    {
        var drop = new DropRig { Rpm = 180, Roller = 3, RiseLaw = "constant-velocity", RiseTo = 200, From = 200, To = 340 }.Drop();
        var u = 10 / Machines.Rad(160) * drop.Machine.CrankSpeed;
        Assert.Equal(0, drop.Fall.Ridden);
        Assert.Equal((u + Math.Sqrt(u * u + 2 * G * 10)) / G, drop.Fall.Time, 1e-8);
        var top = drop.Face.Fall.Q.Value + u * u / (2 * G);
        Assert.Equal(top, drop.Fall.At(u / G * drop.Machine.CrankSpeed), 1e-4);
    }
}
