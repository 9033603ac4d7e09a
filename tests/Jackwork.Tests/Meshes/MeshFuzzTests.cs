using Jackwork.Meshes;
using Xunit;
using static Jackwork.Tests.Meshes.MeshFiles;

namespace Jackwork.Tests.Meshes;

/// <summary>Whatever bytes a mesh file holds, it is read or refused; nothing throws.</summary>
[Trait("Proof", "property")]
public sealed class MeshFuzzTests
{
    private static readonly string[] Words = ["solid", "facet normal 0 0 1", "outer loop", "vertex 1 2 3", "endloop", "endfacet", "endsolid", "v 1 2 3", "f 1 2 3 4", "f -1/2/3 1e9 7", "\\", "\n", "{", "}", "[", "]", ":", ",", "\"nodes\"", "\"\\ud800\"", "-1", "1e999", "99999999999", "null", "0.5"];

    [Theory]
    [InlineData("a.stl")]
    [InlineData("a.obj")]
    [InlineData("a.glb")]
    [InlineData("a.gltf")]
    public void Random_bytes_and_words(string name)
    {
        for (var seed = 0; seed < 3000; seed++)
        {
            var random = new Random(seed);
            var bytes = new byte[random.Next(0, 400)];
            random.NextBytes(bytes);
            Try(name, bytes, seed);
            Try(name, System.Text.Encoding.UTF8.GetBytes((seed % 2 == 0 ? "solid\n" : "") + string.Join(seed % 3 == 0 ? "\n" : " ", Enumerable.Range(0, 20).Select(_ => Words[random.Next(Words.Length)]))), seed);
        }
    }

    [Fact]
    public void Good_files_with_a_few_bytes_changed_cut_out_or_put_in()
    {
        var mesh = KnownMeshes.Ball(10, 1);
        var good = 0;
        foreach (var (name, file) in (ReadOnlySpan<(string, byte[])>)[("a.stl", BinaryStl(mesh)), ("a.stl", TextStl(mesh)), ("a.obj", Obj(mesh)), ("a.glb", Glb(mesh)), ("a.gltf", Embedded(mesh))])
        {
            for (var seed = 0; seed < 3000; seed++)
            {
                var random = new Random(seed);
                var bytes = file.ToList();
                for (var k = random.Next(1, 4); k > 0; k--)
                {
                    // A glTF file's head is short beside its numbers, so half of the changes go there.
                    var at = random.Next(random.Next(2) == 0 ? bytes.Count : Math.Min(bytes.Count, 900));
                    switch (random.Next(4))
                    {
                        case 0: bytes[at] = (byte)random.Next(256); break;
                        case 1: bytes[at] = (byte)"0123456789-.{}[],\" "[random.Next(19)]; break;
                        case 2: bytes.RemoveRange(at, Math.Min(bytes.Count - at, random.Next(1, 9))); break;
                        default: bytes.InsertRange(at, bytes.GetRange(at, Math.Min(bytes.Count - at, random.Next(1, 9)))); break;
                    }
                }

                good += Try(name, [.. bytes], seed) ? 1 : 0;
            }
        }

        Assert.InRange(good, 500, 14_500);
    }

    private static bool Try(string name, byte[] bytes, int seed)
    {
        try
        {
            var reading = MeshFile.Read(name, bytes, _ => null);
            Assert.Equal(reading.Mesh is null, reading.Problems.Count > 0);
            var check = reading.Mesh is { } m ? MeshCheck.Of(m) : reading;
            Assert.Equal(check.Mesh is null, check.Problems.Count > 0);
            Assert.All(check.Problems, p => Assert.True(p is { What.Length: > 0 and < 400, Remedy.Length: > 0 }, p.What));
            return check.Mesh is not null;
        }
        catch (Exception e)
        {
            Assert.Fail($"{name}, seed {seed}: {e}");
            return false;
        }
    }
}
