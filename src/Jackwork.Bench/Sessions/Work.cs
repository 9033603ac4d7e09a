using System.Collections.Immutable;
using Jackwork.Bench.Stage;
using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Shop.Model;
using Jackwork.Shop.Package;
using Jackwork.Shop.Timing;

namespace Jackwork.Bench.Sessions;

/// <summary>What a drag needs of a text that reads: the motion, and with it chart and poses; the rest is worked out when asked for.</summary>
public sealed class Work
{
    private readonly Lazy<byte[]> poses;
    private readonly Lazy<PerformanceChart?> chart;

    private Work(int version, Proof proof, double ms)
    {
        (Version, Proof, Ms) = (version, proof, ms);
        poses = new(() => StagePoses.Write(this));
        chart = new(() => proof.Machine.Acted.Count > 0 ? ChartOf.Performance(proof) : null);
    }

    /// <summary>Version of the text.</summary>
    public int Version { get; }

    /// <summary>What was worked out; parts wait until they are asked for.</summary>
    public Proof Proof { get; }

    /// <summary>The machine.</summary>
    public Machine Machine => Proof.Machine;

    /// <summary>How long reading and solving took, ms.</summary>
    public double Ms { get; }

    /// <summary>Where every body stands over the performance, as the stage takes it.</summary>
    public byte[] Poses => poses.Value;

    /// <summary>The performance, ready to be drawn; null where nothing is acted.</summary>
    public PerformanceChart? Chart => chart.Value;

    /// <summary>Works a text out, or says what is wrong with it; what an earlier text has already is taken from there.</summary>
    public static (Work? Work, IReadOnlyList<Problem> Problems) Of(int version, string text, Func<string, byte[]?> files, Work? before = null)
    {
        var clock = System.Diagnostics.Stopwatch.GetTimestamp();
        var result = MachineBuilder.Build(text, files);
        return result.Machine is { } machine
            ? (new(version, Proof.OfMotion(machine, before?.Proof), System.Diagnostics.Stopwatch.GetElapsedTime(clock).TotalMilliseconds), [])
            : (null, result.Problems);
    }
}

/// <summary>The parts of a worked-out text as meshes.</summary>
public sealed class Shapes
{
    private readonly IReadOnlyList<MeshSource> sources;

    private Shapes(Work work, IReadOnlyList<MeshSource> sources, IReadOnlyList<Mesh> meshes, ImmutableArray<string> marks) =>
        (Work, this.sources, Meshes, Marks) = (work, sources, meshes, marks);

    /// <summary>What they were made from.</summary>
    public Work Work { get; }

    /// <summary>One mesh for each part of the assembly.</summary>
    public IReadOnlyList<Mesh> Meshes { get; }

    /// <summary>A mark for each mesh that changes with its shape, so that the stage fetches only what changed.</summary>
    public ImmutableArray<string> Marks { get; }

    /// <summary>Version of the text.</summary>
    public int Version => Work.Version;

    /// <summary>The parts.</summary>
    public IReadOnlyList<Part> Parts => Work.Proof.Assembly.Parts;

    /// <summary>Makes the meshes; those that an earlier text has already are taken from there.</summary>
    public static Shapes Of(Work work, Shapes? before)
    {
        var sources = PartMeshes.Sources(work.Proof, Profiles.Of(work.Proof));
        var (meshes, marks) = (new Mesh[sources.Count], new string[sources.Count]);
        var known = before?.sources.Select((s, i) => (s.Part.Name, i)).DistinctBy(x => x.Name).ToDictionary(x => x.Name, x => x.i) ?? [];
        for (var i = 0; i < sources.Count; i++)
        {
            var isKnown = known.TryGetValue(sources[i].Part.Name, out var k) && sources[i].MakesTheSameAs(before!.sources[k]);
            meshes[i] = isKnown ? before!.Meshes[k] : PartMeshes.Of(work.Machine, sources[i]);
            marks[i] = isKnown ? before!.Marks[k] : StageMeshes.MarkOf(meshes[i]);
        }

        return new(work, sources, meshes, [.. marks]);
    }
}

/// <summary>What some of the checks say of a text.</summary>
/// <param name="Work">What was looked at.</param>
/// <param name="Findings">The findings.</param>
/// <param name="Ms">How long it took, ms.</param>
public sealed record Judged(Work Work, IReadOnlyList<Finding> Findings, double Ms);
