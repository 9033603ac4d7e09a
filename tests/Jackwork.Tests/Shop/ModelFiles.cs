using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Shop.Model;
using Jackwork.Shop.Package;
using Jackwork.Tests.Design;
using SharpGLTF.Schema2;

namespace Jackwork.Tests.Shop;

/// <summary>The models of the examples as the package holds them, read again by SharpGLTF.</summary>
internal static class ModelFiles
{
    /// <summary>A glTF file counts in metres.</summary>
    public const double MmPerMetre = 1000;

    private static readonly Dictionary<string, (Proof, byte[])> Made = [];

    /// <summary>An example worked out, and the bytes of its model.</summary>
    public static (Proof Proof, byte[] Bytes) Of(string example)
    {
        lock (Made)
        {
            if (!Made.TryGetValue(example, out var made))
            {
                Made.Add(example, made = Make(ExampleFiles.Text(example)));
            }

            return made;
        }
    }

    /// <summary>A design worked out, and the bytes of its model.</summary>
    public static (Proof Proof, byte[] Bytes) Make(string design)
    {
        var proof = Proof.Of(MachineBuilder.Build(design).Machine!);
        return (proof, GlbWriter.Write(proof, Profiles.Of(proof)));
    }

    /// <summary>An example worked out, and its model read again.</summary>
    public static (Proof Proof, ModelRoot Model) Read(string example)
    {
        var (proof, bytes) = Of(example);
        return (proof, ModelRoot.ParseGLB(bytes));
    }
}
