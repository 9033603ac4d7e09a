using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;
using YamlDotNet.RepresentationModel;

namespace Jackwork.Tests.Design;

/// <summary>A text as an independent reader sees it: the representation graph of YAML Ain't Markup Language version 1.2.2, section 3.2.1, by YamlDotNet's own model, with the comments of its scanner.</summary>
internal static class PlainYaml
{
    /// <summary>The content; every scalar is text that begins with p for a plain one, q for the others.</summary>
    public static JsonNode Read(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return Node(stream.Documents.Single().RootNode);
    }

    /// <summary>The comments, in order.</summary>
    public static IReadOnlyList<string> Comments(string yaml)
    {
        var found = new List<string>();
        var scanner = new Scanner(new StringReader(yaml), skipComments: false);
        while (scanner.MoveNext())
        {
            if (scanner.Current is Comment c)
            {
                found.Add(c.Value.Trim());
            }
        }

        return found;
    }

    /// <summary>Every path below the root, list items from 1.</summary>
    public static IEnumerable<string> Paths(JsonNode node, string at = "") => Children(node).SelectMany(c => Paths(c.Value, Join(at, c.Step)).Prepend(Join(at, c.Step)));

    /// <summary>What stands at a path; null for nothing.</summary>
    public static JsonNode? At(JsonNode root, string path) => path.Length == 0 ? root : path.Split('.').Aggregate((JsonNode?)root, (n, step) => n is null ? null : Children(n).FirstOrDefault(c => c.Step == step).Value);

    /// <summary>The parent's path and the last step.</summary>
    public static (string Parent, string Step) Split(string path) => path.LastIndexOf('.') is var dot && dot < 0 ? ("", path) : (path[..dot], path[(dot + 1)..]);

    /// <summary>Puts a value at a path whose parent is there.</summary>
    public static void Put(JsonNode root, string path, JsonNode value)
    {
        var (parent, step) = Split(path);
        if (At(root, parent) is JsonArray list)
        {
            var i = int.Parse(step, CultureInfo.InvariantCulture) - 1;
            if (i == list.Count)
            {
                list.Add(value);
            }
            else
            {
                list[i] = value;
            }
        }
        else
        {
            At(root, parent)![step] = value;
        }
    }

    /// <summary>Takes out what stands at a path.</summary>
    public static void Remove(JsonNode root, string path)
    {
        var (parent, step) = Split(path);
        if (At(root, parent) is JsonArray list)
        {
            list.RemoveAt(int.Parse(step, CultureInfo.InvariantCulture) - 1);
        }
        else
        {
            ((JsonObject)At(root, parent)!).Remove(step);
        }
    }

    private static string Join(string at, string step) => at.Length == 0 ? step : $"{at}.{step}";

    private static IEnumerable<(string Step, JsonNode Value)> Children(JsonNode node) => node switch
    {
        JsonObject o => o.Select(p => (p.Key, p.Value!)),
        JsonArray a => a.Select((v, i) => ((i + 1).ToString(CultureInfo.InvariantCulture), v!)),
        _ => [],
    };

    private static JsonNode Node(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, (JsonNode?)Node(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Select(Node)]),
        YamlScalarNode s => JsonValue.Create((s.Style == ScalarStyle.Plain ? "p" : "q") + s.Value),
        _ => throw new InvalidOperationException($"A {node.NodeType} has no place here."),
    };
}
