using System.Diagnostics;
using System.Globalization;
using CsCheck;
using Jackwork.Timing.Laws;
using MathNet.Numerics.LinearAlgebra;
using Xunit;

namespace Jackwork.Tests.Timing;

/// <summary>The smooth curve through points against two other ways to compute it.</summary>
public sealed class QuinticSplineTests
{
    private const double SpeedIn = 0.3;
    private const double SpeedOut = -0.7;

    // Deliberately uneven; positions of a hand that waves.
    private static readonly double[] X = [10, 22, 24, 50, 61, 90, 118, 121.5, 170];
    private static readonly double[] Y = [0, 12, 13.5, 4, -7, 22, 18, 18.5, 3];

    // SciPy's B-spline interpolation of degree 5 with clamped ends: another basis, another solver.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(0, 0)]
    [InlineData(SpeedIn, SpeedOut)]
    public void AgreesWithSciPy(double speedIn, double speedOut)
    {
        var at = Enumerable.Range(0, 161).Select(i => X[0] + i * (X[^1] - X[0]) / 160).ToArray();
        var script = $"""
            from scipy.interpolate import make_interp_spline
            f = make_interp_spline({List(X)}, {List(Y)}, k=5, bc_type=([(1, {Text(speedIn)}), (2, 0.0)], [(1, {Text(speedOut)}), (2, 0.0)]))
            for x in {List(at)}: print(repr(float(f(x))), repr(float(f(x, 1))), repr(float(f(x, 2))))
            """;
        var lines = Python(script).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(at.Length, lines.Length);
        var ours = QuinticSpline.Through(X, Y, speedIn, speedOut);
        for (var i = 0; i < at.Length; i++)
        {
            var theirs = lines[i].Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
            var (s, v, a) = Evaluate(ours, at[i]);
            Assert.Equal(theirs[0], s, 1e-9);
            Assert.Equal(theirs[1], v, 1e-9);
            Assert.Equal(theirs[2], a, 1e-9);
        }
    }

    // All 6 n coefficients as unknowns, each condition a row, solved by MathNet's LU.
    [Fact]
    [Trait("Proof", "independent")]
    public void AgreesWithTheFullSystemOfConditions() => Points.Sample(p =>
    {
        var (x, y) = (p.X, p.Y);
        var n = x.Length - 1;
        var (m, rhs) = (Matrix<double>.Build.Dense(6 * n, 6 * n), Vector<double>.Build.Dense(6 * n));
        var row = 0;
        for (var i = 0; i < n; i++)
        {
            Put(i, 0, 0, 1);
            rhs[row++] = y[i];
            Put(i, 0, 1, 1);
            rhs[row++] = y[i + 1];
            for (var k = 1; k <= 4 && i + 1 < n; k++)
            {
                Put(i, k, 1, 1);
                Put(i + 1, k, 0, -1);
                row++;
            }
        }

        foreach (var (piece, k, t, value) in new[] { (0, 1, 0, SpeedIn), (0, 2, 0, 0.0), (n - 1, 1, 1, SpeedOut), (n - 1, 2, 1, 0.0) })
        {
            Put(piece, k, t, 1);
            rhs[row++] = value;
        }

        var c = m.Solve(rhs);
        var ours = QuinticSpline.Through(x, y, SpeedIn, SpeedOut);
        for (var i = 0; i < n; i++)
        {
            double[] theirs = [.. Enumerable.Range(0, 6).Select(j => c[6 * i + j])];
            double[] mine = [ours[i].C0, ours[i].C1, ours[i].C2, ours[i].C3, ours[i].C4, ours[i].C5];
            for (var j = 0; j < 6; j++)
            {
                Assert.Equal(theirs[j], mine[j], 1e-9 * (1 + theirs.Max(Math.Abs)));
            }
        }

        // The k-th derivative of piece i at its time t, per unit of x.
        void Put(int i, int k, int t, double sign)
        {
            for (var j = k; j < 6; j++)
            {
                var falling = Enumerable.Range(j - k + 1, k).Aggregate(1.0, (f, q) => f * q);
                m[row, 6 * i + j] += j == k || t == 1 ? sign * falling / Math.Pow(x[i + 1] - x[i], k) : 0;
            }
        }
    });

    // A single quintic is its own spline: the 3-4-5 law, sampled, comes back.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ReproducesAQuintic()
    {
        var law = MotionLaws.Find("polynomial-345")!;
        double[] x = [0, 0.1, 0.35, 0.4, 0.72, 1];
        var spline = QuinticSpline.Through(x, [.. x.Select(t => law.At(t).S)]);
        for (var i = 0; i + 1 < x.Length; i++)
        {
            foreach (var u in new[] { 0, 0.3, 0.5, 0.9, 1 })
            {
                Assert.Equal(law.At(x[i] + u * (x[i + 1] - x[i])).S, spline[i].At(u).S, 1e-13);
            }
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void BadAbscissaeAreRefused()
    {
        Assert.Throws<ArgumentException>(() => QuinticSpline.Through([0], [0]));
        Assert.Throws<ArgumentException>(() => QuinticSpline.Through([0, 1], [0]));
        Assert.Throws<ArgumentException>(() => QuinticSpline.Through([0, 1, 1], [0, 1, 2]));
        Assert.Throws<ArgumentException>(() => QuinticSpline.Through([0, double.NaN, 1], [0, 1, 2]));
    }

    private static Gen<(double[] X, double[] Y)> Points => Gen.Int[1, 12].SelectMany(n =>
        Gen.Select(Gen.Double[0.5, 3].Array[n], Gen.Double[-10, 10].Array[n + 1], (gaps, y) =>
        {
            var x = new double[n + 1];
            for (var i = 0; i < n; i++)
            {
                x[i + 1] = x[i] + gaps[i];
            }

            return (x, y);
        }));

    private static LawValue Evaluate(IReadOnlyList<Quintic> pieces, double x)
    {
        var i = Math.Min(Array.FindLastIndex(X, a => a <= x), pieces.Count - 1);
        var h = X[i + 1] - X[i];
        var (s, v, a) = pieces[i].At((x - X[i]) / h);
        return new(s, v / h, a / (h * h));
    }

    private static string Text(double v) => v.ToString("R", CultureInfo.InvariantCulture);

    private static string List(IEnumerable<double> values) => "[" + string.Join(",", values.Select(v => "float('" + Text(v) + "')")) + "]";

    // Debian's Python with its package python3-scipy.
    private static string Python(string script)
    {
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(script);
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, errors.Result);
        return output;
    }
}
