using Jackwork.Tests.Design;
using System.Diagnostics;
using System.Text.Json;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The model against the validator that the Khronos Group keeps for glTF 2.0 (npm package gltf-validator).</summary>
[Trait("Proof", "independent")]
public sealed class ModelValidatorTests
{
    private const string Script = """
        const validator = require('gltf-validator'), fs = require('fs');
        validator.validateBytes(new Uint8Array(fs.readFileSync(process.argv[1])))
          .then(report => console.log(JSON.stringify(report)));
        """;

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void The_validator_finds_nothing_to_say(string example)
    {
        var report = Validate(ModelFiles.Of(example).Bytes);
        var issues = report.GetProperty("issues");
        Assert.True(issues.GetProperty("messages").GetArrayLength() == 0, issues.ToString());
        var info = report.GetProperty("info");
        Assert.Equal(1, info.GetProperty("animationCount").GetInt32());
        Assert.Equal(ModelFiles.Of(example).Proof.Assembly.Parts.Count, info.GetProperty("drawCallCount").GetInt32());
    }

    [Fact]
    public void A_piece_that_cannot_close_still_gives_a_sound_file()
    {
        // The gull is asked to rise 140 mm, which its rod can't reach.
        var text = ExampleFiles.Text("keeper").Replace("reach: 40, law: modified-sine", "reach: 140, law: modified-sine", StringComparison.Ordinal);
        var (proof, bytes) = ModelFiles.Make(text);
        Assert.NotEmpty(proof.Motion.Gaps);
        var issues = Validate(bytes).GetProperty("issues");
        Assert.True(issues.GetProperty("messages").GetArrayLength() == 0, issues.ToString());
    }

    [Fact]
    public void The_validator_does_find_a_normal_that_was_made_too_long()
    {
        var bytes = (byte[])ModelFiles.Of("nodding-bird").Bytes.Clone();
        var model = ModelFiles.Read("nodding-bird").Model;
        var normals = model.LogicalMeshes[0].Primitives[0].GetVertexAccessor("NORMAL");
        var at = 12 + 8 + BitConverter.ToInt32(bytes, 12) + 8 + normals.SourceBufferView.Content.Offset + normals.ByteOffset;
        BitConverter.GetBytes(2f).CopyTo(bytes, at);
        Assert.NotEqual(0, Validate(bytes).GetProperty("issues").GetProperty("numErrors").GetInt32());
    }

    private static JsonElement Validate(byte[] model)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, model);
            var start = new ProcessStartInfo("node", ["-e", Script, file])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                WorkingDirectory = Path.GetFullPath(Path.Combine(ExampleFiles.FolderOf("keeper"), "..", "..", "tests", "npm")),
            };
            using var run = Process.Start(start)!;
            var errors = run.StandardError.ReadToEndAsync();
            var output = run.StandardOutput.ReadToEnd();
            run.WaitForExit();
            Assert.True(run.ExitCode == 0, errors.Result + "('./dev test' installs the validator.)");
            using var json = JsonDocument.Parse(output);
            return json.RootElement.Clone();
        }
        finally
        {
            File.Delete(file);
        }
    }
}
