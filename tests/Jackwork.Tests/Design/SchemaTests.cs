using System.Text.Json;
using System.Text.Json.Nodes;
using Jackwork.Design;
using Json.Schema;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>The JSON Schema, read by another library, takes and refuses the same designs as the reader.</summary>
[Trait("Proof", "independent")]
public sealed class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(DesignSchema.Write());

    /// <summary>Values put in place of others: one of each kind, in and out of ranges.</summary>
    private static readonly string[] Wrongs = ["null", "true", "-1", "0", "0.05", "7", "7.5", "400", "90000", "2e6", "\"word\"", "\"x\"", "\"auto\"", "\"rest\"", "\"cycloidal\"", "[]", "[1]", "[1, 2]", "[1, 2, 3]", "{}", "{\"along\": \"x\"}"];

    /// <summary>Every kind of place with the shortest example that has it: there it is tried, as nothing else in a design changes what may stand at it.</summary>
    private static readonly Dictionary<string, string> Homes = ExampleFiles.Names.OrderBy(n => ExampleFiles.Text(n).Length)
        .SelectMany(n => Paths(YamlJson.Convert(ExampleFiles.Text(n)), []).Where(p => p.Length > 0).Select(p => (Kind: Kind(p), Name: n)))
        .DistinctBy(x => x.Kind).ToDictionary(x => x.Kind, x => x.Name);

    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    public static TheoryData<string> NamesOfHomes => [.. Homes.Values.Distinct()];

    public static TheoryData<int> Sections => [.. Enumerable.Range(0, FormatPage.Sections.Count)];

    [Theory]
    [MemberData(nameof(Names))]
    public void TakesTheExamples(string name) => Assert.True(Takes(YamlJson.Convert(ExampleFiles.Text(name))));

    [Fact]
    public void TakesWhatTheWriterWrites() =>
        CsCheck.Check.Sample(SpecGen.Design, spec => Assert.True(Takes(YamlJson.Convert(DesignWriter.Write(spec))), DesignWriter.Write(spec)), iter: 300);

    /// <summary>Values of the examples in turn are left out, given a neighbour with an unknown key, or replaced by each of the wrong values: the first two of each kind, since the hundredth part of a design is read as the first.</summary>
    [Theory]
    [MemberData(nameof(NamesOfHomes))]
    public void AgreesWithTheReaderOnEveryMutation(string name)
    {
        var (taken, refused) = (0, 0);
        foreach (var mutated in Mutations(YamlJson.Convert(ExampleFiles.Text(name))!, name))
        {
            var text = mutated.ToJsonString();
            var reading = DesignReader.Read(text);
            var takes = Takes(mutated);
            Assert.True(takes == (reading.Spec is not null), $"schema {(takes ? "takes" : "refuses")}, reader: {string.Join(" ", reading.Problems)}\n{text}");
            _ = takes ? taken++ : refused++;
        }

        Assert.True(refused > taken, $"{taken} taken, {refused} refused");
    }

    [Fact]
    public void SomeHundredsOfKindsOfPlacesAreTried() => Assert.InRange(Homes.Count, 300, 5000);

    private static bool Takes(JsonNode? design) => Schema.Evaluate(JsonSerializer.SerializeToElement(design)).IsValid;

    private static IEnumerable<JsonNode> Mutations(JsonNode root, string name)
    {
        foreach (var path in Paths(root, []).GroupBy(Kind).Where(kind => Homes.GetValueOrDefault(kind.Key) == name).SelectMany(kind => kind.Take(2)).ToList())
        {
            if (path[^1] is string)
            {
                yield return Changed(root, path, (parent, key) => ((JsonObject)parent).Remove((string)key));
                yield return Changed(root, path, (parent, key) => parent["no-such-key"] = 1);
                yield return Changed(root, path, (parent, key) => parent["Case"] = 1);
            }

            foreach (var wrong in Wrongs)
            {
                // The reader takes a number for a text, as one writes a title of 1900; the schema of an editor need not.
                var value = JsonNode.Parse(wrong);
                if (IsText(At(root, path)) && value is JsonValue or JsonArray { Count: > 0 } && !IsText(value))
                {
                    continue;
                }

                yield return Changed(root, path, (parent, key) => Set(parent, key, value?.DeepClone()));
            }
        }
    }

    private static bool IsText(JsonNode? node) => node switch
    {
        JsonValue v => v.GetValueKind() == JsonValueKind.String,
        JsonArray { Count: > 0 } list => list.All(IsText),
        _ => false,
    };

    private static IEnumerable<object[]> Paths(JsonNode? node, object[] path) => (node switch
    {
        JsonObject map => map.SelectMany(e => Paths(e.Value, [.. path, e.Key])),
        JsonArray list => list.SelectMany((e, i) => Paths(e, [.. path, i])),
        _ => [],
    }).Prepend(path);

    // A path without the numbers of list items and the names that a design gives.
    private static string Kind(object[] path) =>
        string.Join('.', path.Select((step, i) => step is int || (i == 1 && path[0] is "members" or "timing" or "parts") ? "*" : step));

    private static JsonNode Changed(JsonNode root, object[] path, Action<JsonNode, object> change)
    {
        var copy = root.DeepClone();
        change(At(copy, path[..^1])!, path[^1]);
        return copy;
    }

    private static JsonNode? At(JsonNode root, object[] path) => path.Aggregate((JsonNode?)root, (n, key) => key is string s ? n![s] : n![(int)key]);

    private static void Set(JsonNode parent, object key, JsonNode? value)
    {
        if (key is string s)
        {
            parent[s] = value;
        }
        else
        {
            parent[(int)key] = value;
        }
    }
}
