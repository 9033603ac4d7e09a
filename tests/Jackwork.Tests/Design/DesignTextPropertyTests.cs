using System.Reflection;
using System.Text.Json.Nodes;
using CsCheck;
using Jackwork.Design;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>After an edit an independent reader sees the change that was asked for and nothing else, the typed reader likewise, and every comment stands that should.</summary>
[Trait("Proof", "independent")]
public sealed class DesignTextPropertyTests
{
    private static readonly string[] Values = ["14", "-0.5", "1e3", "0", "rest", "auto", "[1, 2, 3]", "{from: 10, to: 20, reach: 5}", "\"two words\"", "'it''s'", "[]", "{}", "[[1, 2], [3, 4]]"];

    private static readonly Gen<(string Text, int Seed)> Texts = Gen.Select(SpecGen.Design, Gen.Int[0, int.MaxValue]).Select((spec, seed) => (new MakersHand(seed).Write(DesignWriter.Write(spec)), seed));

    [Fact]
    public void SetInRandomDesigns() => Texts.Sample((text, seed) => SetHolds(text, new Random(seed)), iter: 500);

    [Fact]
    public void RemoveFromRandomDesigns() => Texts.Sample((text, seed) => RemoveHolds(text, new Random(seed)), iter: 500);

    [Fact]
    public void AddToRandomDesigns() => Texts.Sample((text, seed) => AddHolds(text, new Random(seed)), iter: 500);

    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void OfTheExamples(string name)
    {
        var text = ExampleFiles.Text(name);
        for (var seed = 0; seed < 60; seed++)
        {
            SetHolds(text, new Random(seed));
            RemoveHolds(text, new Random(seed));
            AddHolds(text, new Random(seed));
        }
    }

    /// <summary>Every number of the examples, so that no place is left to chance.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void EveryNumberOfTheExamples(string name)
    {
        var text = ExampleFiles.Text(name);
        var before = PlainYaml.Read(text);
        var comments = PlainYaml.Comments(text);
        foreach (var path in PlainYaml.Paths(before).Where(p => PlainYaml.At(before, p) is JsonValue v && double.TryParse(v.GetValue<string>()[1..], out _)).Where((_, i) => i % 7 == 0))
        {
            Same(Expected(before, e => PlainYaml.Put(e, path, JsonValue.Create("p7.25"))), comments, Done(DesignText.Set(text, path, "7.25"), text), path);
        }
    }

    /// <summary>A run of edits, each of the text that the one before gave, as a drag makes them.</summary>
    [Fact]
    public void ARunOfEdits() => Texts.Sample((text, seed) =>
    {
        var random = new Random(seed);
        for (var n = 0; n < 8; n++)
        {
            text = SetHolds(text, random);
        }
    }, iter: 60);

    private static string SetHolds(string text, Random random)
    {
        var before = PlainYaml.Read(text);
        var paths = PlainYaml.Paths(before).ToArray();
        var path = paths[random.Next(paths.Length)];
        var value = Values[random.Next(Values.Length)];
        var edit = Done(DesignText.Set(text, path, value), text);
        Same(Expected(before, e => PlainYaml.Put(e, path, PlainYaml.Read(value))), PlainYaml.Comments(text), edit, path);
        return edit;
    }

    private static void RemoveHolds(string text, Random random)
    {
        var before = PlainYaml.Read(text);
        var paths = PlainYaml.Paths(before).ToArray();
        var path = paths[random.Next(paths.Length)];
        var edit = DesignText.Remove(text, path);
        var after = Done(edit, text);
        Same(Expected(before, e => TakeOut(e, path)), null, after, path);

        // Comments go only from the stretch that was taken out; where something takes its place, only that has comments of it.
        var (old, now) = (PlainYaml.Comments(text), PlainYaml.Comments(after));
        var gone = PlainYaml.Comments(text).Where(c => !now.Contains(c)).ToArray();
        Assert.Equal(old.Where(c => !gone.Contains(c)), now);
        Assert.All(gone, c => Assert.Contains(c, text.Substring(edit.Start, edit.Length), StringComparison.Ordinal));
    }

    private static void AddHolds(string text, Random random)
    {
        var before = PlainYaml.Read(text);
        var containers = PlainYaml.Paths(before).Where(p => PlainYaml.At(before, p) is JsonArray).Concat(((string[])["members", "timing", "parts"])).Append("").ToArray();
        var at = containers[random.Next(containers.Length)];
        var there = PlainYaml.At(before, at);
        var key = there is JsonArray ? null : at.Length == 0 ? "limits" : "new-one";
        if (there is not JsonArray && PlainYaml.At(before, at.Length == 0 ? "limits" : at + ".new-one") is not null)
        {
            Assert.False(DesignText.Add(text, at, key, "1").IsDone);
            return;
        }

        var value = Values[random.Next(Values.Length)];
        var edit = Done(DesignText.Add(text, at, key, value), text);
        var expected = Expected(before, e =>
        {
            if (there is null)
            {
                PlainYaml.Put(e, at, new JsonObject());
            }

            PlainYaml.Put(e, (at.Length == 0 ? "" : at + ".") + (key ?? $"{((JsonArray)there!).Count + 1}"), PlainYaml.Read(value));
        });
        Same(expected, PlainYaml.Comments(text), edit, at);
    }

    private static string Done(TextEdit edit, string text)
    {
        Assert.True(edit.IsDone, edit.Refusal + "\n" + text);
        Assert.Equal(edit.Text, text.Remove(edit.Start, edit.Length).Insert(edit.Start, edit.Replacement));
        return edit.Text;
    }

    private static JsonNode Expected(JsonNode before, Action<JsonNode> change)
    {
        var expected = before.DeepClone();
        change(expected);
        return expected;
    }

    // Empty maps and lists go with what was in them where the format's key may be left out.
    private static void TakeOut(JsonNode root, string path)
    {
        for (var (parent, _) = PlainYaml.Split(path); PlainYaml.At(root, parent) is { } p && (p is JsonObject { Count: 1 } or JsonArray { Count: 1 }) && MayBeLeftOut(parent); (parent, _) = PlainYaml.Split(path))
        {
            path = parent;
        }

        PlainYaml.Remove(root, path);
    }

    // Whether the format's key at a place may be left out; an item of a map or list is no key of the format.
    private static bool MayBeLeftOut(string path)
    {
        var (at, key) = (typeof(DesignSpec), (KeyAttribute?)null);
        foreach (var step in path.Split('.'))
        {
            if (at.IsGenericType)
            {
                (at, key) = (at.GetGenericArguments()[^1], null);
                continue;
            }

            var property = at.GetProperties().FirstOrDefault(p => Jackwork.Design.Names.Kebab(p.Name) == step);
            if (property is null)
            {
                return false;
            }

            (at, key) = (Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType, property.GetCustomAttribute<KeyAttribute>());
        }

        return key is { Required: false };
    }

    private static void Same(JsonNode expected, IReadOnlyList<string>? comments, string text, string path)
    {
        var now = PlainYaml.Read(text);
        Assert.True(JsonNode.DeepEquals(expected, now), $"{path}\n{expected}\n{now}\n{text}");
        if (comments is not null)
        {
            Assert.Equal(comments, PlainYaml.Comments(text));
        }
    }
}
