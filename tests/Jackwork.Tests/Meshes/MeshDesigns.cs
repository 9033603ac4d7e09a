using System.Globalization;
using Jackwork.Checks;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Meshes;

/// <summary>Designs with one turning shaft and parts, read with files that stand only in memory.</summary>
internal static class MeshDesigns
{
    public const string Head = "jackwork: 1\ntitle: T\ncrank: {turns: shaft, rpm: 30}\nmembers:\n  shaft: {pivot: {through: [0, 0, 0], along: z}, body: {bare: true}}\nparts:\n";

    /// <summary>Gives the files by their names.</summary>
    public static Func<string, byte[]?> Files(params (string Name, byte[] Bytes)[] files) => name => files.FirstOrDefault(f => f.Name == name).Bytes;

    /// <summary>A design that must be right, worked out.</summary>
    public static Proof Proof(string parts, params (string Name, byte[] Bytes)[] files)
    {
        var result = MachineBuilder.Build(Head + parts, Files(files));
        Assert.True(result.Machine is not null, string.Join('\n', result.Problems));
        return Jackwork.Checks.Proof.Of(result.Machine!);
    }

    public static string Num(double d) => d.ToString("R", CultureInfo.InvariantCulture);
}
