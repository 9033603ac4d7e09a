using BenchmarkDotNet.Attributes;
using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Benchmarks;

/// <summary>Everything that a check of the keeper does, and its clearances alone.</summary>
/// <remarks>Warmed up until the runtime has compiled all of it for good, as on a bench that has been open for some seconds.</remarks>
[MemoryDiagnoser]
[WarmupCount(30)]
public class KeeperProof
{
    private readonly Machine machine;
    private readonly Proof proof;

    /// <summary>Reads the keeper once.</summary>
    public KeeperProof()
    {
        machine = MachineBuilder.Build(File.ReadAllText(Example.Keeper)).Machine!;
        proof = Proof.Of(machine);
    }

    /// <summary>From the machine to the verdict: motion, cams, run as cut, parts, clearance, all checks.</summary>
    [Benchmark(Baseline = true)]
    public int Everything() => Verdict.Of(Proof.Of(machine)).Findings.Count;

    /// <summary>The parts' solids.</summary>
    [Benchmark]
    public int Solids() => Assembly.Of(proof).Parts.Count;

    /// <summary>The clearance of every pair over the whole performance.</summary>
    [Benchmark]
    public int Clearance() => ClearanceSweep.Of(machine, new(proof.Motion, proof.Assembly.Parts), proof.Assembly, 0.5).Count;

    /// <summary>The checks alone.</summary>
    [Benchmark]
    public int Checks() => Verdict.Of(proof).Findings.Count;
}
