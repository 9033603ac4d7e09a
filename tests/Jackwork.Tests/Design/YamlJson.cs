using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Jackwork.Tests.Design;

/// <summary>YAML as JSON by the core schema of YAML 1.2 (YAML Ain't Markup Language version 1.2.2, section 10.3.2), as editors do to hold a file against a JSON Schema.</summary>
internal static partial class YamlJson
{
    /// <summary>The document as JSON.</summary>
    public static JsonNode? Convert(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return Node(stream.Documents[0].RootNode);
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Node(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Select(Node)]),
        YamlScalarNode { Style: ScalarStyle.Plain } s => Plain(s.Value!),
        YamlScalarNode s => JsonValue.Create(s.Value),
        _ => throw new InvalidOperationException($"A {node.NodeType} has no place in JSON."),
    };

    private static JsonNode? Plain(string s) => s switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => true,
        "false" or "False" or "FALSE" => false,
        _ when Number().IsMatch(s) => double.Parse(s, CultureInfo.InvariantCulture),
        _ => s,
    };

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex Number();
}
