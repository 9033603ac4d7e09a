using System.Text;
using CsCheck;
using Jackwork.Design;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>Whatever the text, path and value are, an edit is made or refused; nothing throws, and a refused text is as it was.</summary>
[Trait("Proof", "property")]
public sealed class DesignTextFuzzTests
{
    private static readonly string[] Steps = ["members", "timing", "head", "moves", "1", "2", "3", "reach", "limits", "clearance", "touching", "rules", "crank", "rpm", "lever", "cam", "base", "", "-1", "99999999999", "x", "case", "parts"];

    private static readonly Gen<string> Path = Gen.OneOf(Gen.OneOf<string>(Steps).Array[1, 5].Select(s => string.Join('.', s)), Gen.String[0, 20]);

    private static readonly Gen<string> Value = Gen.OneOf(Gen.OneOf<string>("1", "[1]", "{a: 1}", "&a 1", "*a", "]", "a]", "}", "# c", "- a", "? a", "|", "a: b", "'", "\"\\u0000\"", "~", "1 #", "%", "---", "..."), Gen.String[0, 12]);

    [Fact]
    public void RandomBytes() => Gen.Select(Gen.Byte.Array[0, 200], Path, Value).Sample((bytes, path, value) => Try(Encoding.UTF8.GetString(bytes), path, value), iter: 2000);

    [Fact]
    public void RandomCharacters() => Gen.Select(Gen.String[0, 100], Path, Value).Sample((text, path, value) => Try(text, path, value), iter: 2000);

    [Fact]
    public void BrokenExamples() => Gen.Select(Gen.Int[0, int.MaxValue], Path, Value).Sample((seed, path, value) => Try(new Vandal(seed).Break(ExampleFiles.Text("nodding-bird")), path, value), iter: 500);

    private static void Try(string text, string path, string value)
    {
        foreach (var edit in (TextEdit[])[DesignText.Set(text, path, value), DesignText.Remove(text, path), DesignText.Add(text, path, null, value), DesignText.Add(text, path, value, value), DesignText.RenameMember(text, "lever", value), DesignText.RenameMember(text, path, "arm")])
        {
            Assert.Equal(edit.IsDone ? text.Remove(edit.Start, edit.Length).Insert(edit.Start, edit.Replacement) : text, edit.Text);
            if (edit.IsDone)
            {
                PlainYaml.Comments(edit.Text);
            }
            else
            {
                Assert.NotEmpty(edit.Refusal!);
            }
        }
    }
}
