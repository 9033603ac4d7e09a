using System.Text;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Jackwork.Tests.Design;

/// <summary>Writes a design as different makers would: blocks or brackets, one line or many, spaces, quotes, comments, blank lines, line ends of either kind.</summary>
internal sealed class MakersHand(int seed)
{
    private readonly Random random = new(seed);
    private readonly StringBuilder b = new();
    private string end = "\n";
    private int comments;
    private int literal;

    /// <summary>The same content in a hand of its own.</summary>
    public string Write(string yaml)
    {
        b.Clear();
        end = Chance(3) ? "\r\n" : "\n";
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        if (Chance(3))
        {
            b.Append(Comment()).Append(end);
        }

        Map((YamlMappingNode)stream.Documents[0].RootNode, 0);
        var text = b.ToString();

        // Text on lines of its own would lose its line break with the file's.
        return Chance(3) && b.Length != literal ? text.TrimEnd('\r', '\n') : text;
    }

    private bool Chance(int oneIn) => random.Next(oneIn) == 0;

    private string Comment() => $"# remark {++comments}, with {{brackets}}, [more], 'quotes': and - signs";

    private string Spaces(int most) => new(' ', random.Next(most + 1));

    private void Map(YamlMappingNode map, int indent, bool beside = false)
    {
        foreach (var (key, value) in map.Children)
        {
            Before(indent, ref beside);
            b.Append(Scalar((YamlScalarNode)key, true)).Append(':');
            Value(value, indent);
        }
    }

    private void List(YamlSequenceNode list, int indent, bool beside = false)
    {
        foreach (var item in list)
        {
            Before(indent, ref beside);
            b.Append('-');
            if (Chance(2) && item is YamlMappingNode { Children.Count: > 0 } or YamlSequenceNode { Children.Count: > 0 })
            {
                var gap = 1 + random.Next(2);
                b.Append(' ', gap);
                Block(item, indent + 1 + gap, true);
            }
            else
            {
                Value(item, indent);
            }
        }
    }

    private void Block(YamlNode node, int indent, bool beside)
    {
        if (node is YamlMappingNode map)
        {
            Map(map, indent, beside);
        }
        else
        {
            List((YamlSequenceNode)node, indent, beside);
        }
    }

    // Blank and comment lines above an entry, and its spaces; nothing beside a hyphen.
    private void Before(int indent, ref bool beside)
    {
        if (!beside)
        {
            b.Append(Chance(6) ? end : "").Append(Chance(5) ? Spaces(6) + Comment() + end : "").Append(Chance(5) ? new string(' ', indent) + Comment() + end : "").Append(' ', indent);
        }

        beside = false;
    }

    private void Value(YamlNode node, int indent)
    {
        if (node is YamlScalarNode s && IsSimple(s) && Chance(4))
        {
            b.Append(" |").Append(Chance(2) ? "-" : "").Append(Chance(3) ? " " + Comment() : "").Append(end).Append(' ', indent + 3).Append(s.Value).Append(end);
            b.Append(Chance(3) ? end : "");
            literal = b.Length;
        }
        else if (node is YamlMappingNode { Children.Count: > 0 } or YamlSequenceNode { Children.Count: > 0 } && Chance(2))
        {
            b.Append(Chance(4) ? "  " + Comment() : "").Append(end);
            Block(node, indent + 1 + random.Next(4), false);
        }
        else
        {
            b.Append(' ').Append(Spaces(2));
            Flow(node, indent + 2);
            b.Append(Chance(5) ? Spaces(3) + " " + Comment() : "").Append(end);
        }
    }

    private void Flow(YamlNode node, int indent)
    {
        if (node is YamlScalarNode s)
        {
            b.Append(Scalar(s, false));
            return;
        }

        var broken = Chance(4);
        var items = node is YamlMappingNode m ? m.Children.Select(c => (Key: Scalar((YamlScalarNode)c.Key, true) + ":" + " " + Spaces(1), c.Value)).ToArray() : [.. ((YamlSequenceNode)node).Select(i => (Key: "", Value: i))];
        b.Append(node is YamlMappingNode ? '{' : '[').Append(Spaces(1));
        for (var i = 0; i < items.Length; i++)
        {
            if (broken && Chance(2))
            {
                b.Append(Chance(3) ? " " + Comment() : "").Append(end).Append(' ', indent);
            }

            b.Append(items[i].Key);
            Flow(items[i].Value, indent + 2);
            b.Append(i + 1 < items.Length || Chance(8) ? Spaces(1) + "," + " " + Spaces(1) : Spaces(1));
        }

        if (broken && Chance(2))
        {
            b.Append(Chance(3) ? " " + Comment() : "").Append(end).Append(' ', indent);
        }

        b.Append(node is YamlMappingNode ? '}' : ']');
    }

    // Text that any style of scalar can hold.
    private static bool IsSimple(YamlScalarNode s) => s.Style != ScalarStyle.Plain && s.Value!.Length > 0 && s.Value.All(c => c is >= ' ' and <= '~') && s.Value[0] != ' ' && s.Value[^1] != ' ';

    private string Scalar(YamlScalarNode s, bool key)
    {
        if (s.Style == ScalarStyle.Plain && !(key && Chance(10)))
        {
            return s.Value!;
        }

        return Chance(2) && s.Value!.All(c => c is >= ' ' and <= '~')
            ? $"'{s.Value!.Replace("'", "''", StringComparison.Ordinal)}'"
            : "\"" + string.Concat(s.Value!.Select(c => c is >= ' ' and <= '~' and not '"' and not '\\' ? c.ToString() : $"\\u{(int)c:x4}")) + "\"";
    }
}
