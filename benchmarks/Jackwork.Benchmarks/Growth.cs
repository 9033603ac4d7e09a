using BenchmarkDotNet.Attributes;
using Jackwork.Checks;
using Jackwork.Parts;

namespace Jackwork.Benchmarks;

/// <summary>How the time grows with the parts: rows of birds from one to two dozen.</summary>
[MemoryDiagnoser]
public class Growth
{
    private Proof proof = null!;

    /// <summary>The rows.</summary>
    public static IEnumerable<Flock> Rows => new[] { 1, 2, 5, 10, 15, 24 }.Select(n => new Flock(n));

    /// <summary>The row at hand.</summary>
    [ParamsSource(nameof(Rows))]
    public Flock Row { get; set; } = null!;

    /// <summary>Solves it once.</summary>
    [GlobalSetup]
    public void Solve() => proof = Proof.Of(Row.Machine);

    /// <summary>The motion of the whole performance alone: the yardstick.</summary>
    [Benchmark(Baseline = true)]
    public double MotionAlone()
    {
        proof.Motion.SolveAgain();
        return proof.Motion.Of(0)[1].Value;
    }

    /// <summary>The clearance of every pair over the whole performance.</summary>
    [Benchmark]
    public int Clearance() => ClearanceSweep.Of(Row.Machine, new(proof.Motion, proof.Assembly.Parts), proof.Assembly, 0.5).Count;

    /// <summary>From the machine to the verdict.</summary>
    [Benchmark]
    public int Everything() => Verdict.Of(Proof.Of(Row.Machine)).Findings.Count;
}
