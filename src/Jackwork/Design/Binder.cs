using System.Globalization;
using System.Reflection;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>Turns nodes into the typed content of a design, noting every problem on the way.</summary>
internal sealed class Binder(ProblemList problems)
{
    private static readonly Dictionary<string, Vec3> Axes = new()
    {
        ["x"] = new(1, 0, 0), ["y"] = new(0, 1, 0), ["z"] = new(0, 0, 1),
        ["-x"] = new(-1, 0, 0), ["-y"] = new(0, -1, 0), ["-z"] = new(0, 0, -1),
    };

    /// <summary>The value of a part of the file; null (with problems noted) where it can't be made.</summary>
    public object? Part(Type type, Node node, string path)
    {
        problems.Remember(path, node.At);
        if (node is not MapNode map)
        {
            return Wrong(node, path, "keys with values", $"Write {{{string.Join(", ", KeyInfo.Of(type).Where(k => k.Key.Required).Select(k => k.Name + ": ..."))}}}");
        }

        var keys = KeyInfo.Of(type);
        var part = Activator.CreateInstance(type)!;
        var good = true;
        var seen = new HashSet<string>();
        foreach (var (key, value) in map.Entries)
        {
            var at = Join(path, key.Text);
            if (IsMerge(key))
            {
                RefuseMerge(key, path);
            }
            else if (!seen.Add(key.Text))
            {
                problems.Add(key.At, path, $"the key '{Short(key.Text)}' stands twice", "Keep one of the two");
            }
            else if (keys.FirstOrDefault(k => k.Name == key.Text) is not { } info)
            {
                problems.Add(key.At, path, $"unknown key '{Short(key.Text)}'", Names.Suggest(key.Text, [.. keys.Select(k => k.Name)]));
            }
            else
            {
                problems.Remember(at, value is ScalarNode ? value.At : key.At);
                var bound = Value(info.Type, info.Key, value, at);
                good &= bound is not null;
                if (bound is not null)
                {
                    info.Property.SetValue(part, bound);
                }
            }
        }

        foreach (var missing in keys.Where(k => k.Key.Required && !seen.Contains(k.Name)))
        {
            good = false;
            problems.Add(path, $"the key '{missing.Name}' is missing", $"Add '{missing.Name}': {missing.Key.Text.TrimEnd('.')}");
        }

        return good ? part : null;
    }

    private object? Value(Type type, KeyAttribute key, Node node, string path)
    {
        if (type == typeof(string))
        {
            return Text(key, node, path);
        }

        if (type == typeof(bool))
        {
            return node is ScalarNode { Quoted: false, Text: "true" or "false" } b ? b.Text == "true" : Wrong(node, path, "true or false", "Write true or false");
        }

        if (type == typeof(int) || type == typeof(double))
        {
            return Number(key, node, path, type == typeof(int));
        }

        if (type == typeof(NumberOrWord))
        {
            return node is ScalarNode s && s.Text == key.OrWord
                ? new NumberOrWord(0, key.OrWord)
                : Number(key, node, path, false) is double d ? new NumberOrWord(d) : null;
        }

        if (type == typeof(Point3))
        {
            return Three(node, path) is { } p ? new Point3(p.X, p.Y, p.Z) : null;
        }

        if (type == typeof(Vec3))
        {
            return Axis(node, path);
        }

        if (KeyInfo.ItemOf(type, typeof(IReadOnlyList<>)) is { } item)
        {
            return List(item, key, node, path);
        }

        return KeyInfo.ItemOf(type, typeof(NamedMap<>)) is { } named ? Map(named, node, path) : Part(type, node, path);
    }

    private object? Text(KeyAttribute key, Node node, string path)
    {
        if (node is not ScalarNode { IsNothing: false } s)
        {
            return Wrong(node, path, "text", "Write a word, or text in quotes");
        }

        var words = key.Words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 || words.Contains(s.Text) ? s.Text : Wrong(node, path, "one of " + string.Join(", ", words), Names.Suggest(s.Text, words));
    }

    private object? Number(KeyAttribute key, Node node, string path, bool whole)
    {
        var unit = key.Unit.Length > 0 ? " " + key.Unit : "";
        var kind = whole ? "a whole number" : "a number";
        if (key.Min == key.Max)
        {
            // One value only, as for the version.
            var only = key.Min.ToString(CultureInfo.InvariantCulture);
            return node is ScalarNode { Quoted: false } v && v.Text == only ? (whole ? (object)(int)key.Min : key.Min) : Wrong(node, path, only, "Write " + only);
        }

        var range = (double.IsFinite(key.Min), double.IsFinite(key.Max)) switch
        {
            (true, true) => FormattableString.Invariant($" from {key.Min} to {key.Max}{unit}"),
            (true, false) => FormattableString.Invariant($", {key.Min}{unit} or more"),
            _ => unit.Length > 0 ? " in" + unit : "",
        };
        var right = $"Write {kind}{range}{(key.OrWord.Length > 0 ? $", or '{key.OrWord}'" : "")}";
        if (node is not ScalarNode { Quoted: false } s)
        {
            return Wrong(node, path, kind, right);
        }

        if (s.Text.ToLowerInvariant() is ".nan" or ".inf" or "-.inf" or "+.inf" or "nan" or "inf" or "infinity" or "-infinity")
        {
            return Wrong(node, path, "a finite number", right);
        }

        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (!double.TryParse(s.Text, style, CultureInfo.InvariantCulture, out var d))
        {
            return Wrong(node, path, kind, s.Text.Contains(',', StringComparison.Ordinal) ? "Use a point for decimals" : right);
        }

        if (Math.Abs(d) > LargestNumber)
        {
            return Wrong(node, path, FormattableString.Invariant($"{kind} of size {LargestNumber:0} at most"), right);
        }

        if (d < key.Min || d > key.Max)
        {
            return Wrong(node, path, kind + range, right);
        }

        return !whole ? d : d == Math.Floor(d) && Math.Abs(d) < int.MaxValue ? (int)d : Wrong(node, path, kind, right);
    }

    /// <summary>Largest number taken, mm or deg: a kilometre; more is a slip, and would only spoil the arithmetic.</summary>
    public const double LargestNumber = 1e6;

    private static readonly KeyAttribute Plain = new("");

    private Vec3? Three(Node node, string path)
    {
        if (node is not ListNode { Items.Count: 3 } list)
        {
            Wrong(node, path, "three numbers", "Write [x, y, z]");
            return null;
        }

        var n = list.Items.Select((i, k) => Number(Plain, i, $"{path}.{k + 1}", false) as double?).ToArray();
        return n.All(d => d is not null) ? new Vec3(n[0]!.Value, n[1]!.Value, n[2]!.Value) : null;
    }

    private object? Axis(Node node, string path)
    {
        if (node is ScalarNode s)
        {
            return Axes.TryGetValue(s.Text, out var axis) ? axis : Wrong(node, path, "a direction", "Write x, y, z, -x, -y, -z or [x, y, z]");
        }

        if (Three(node, path) is not { } v)
        {
            return null;
        }

        return v.Length > ShortestAxis ? v : Wrong(node, path, "a direction", FormattableString.Invariant($"A direction needs a length above zero; [{v.X}, {v.Y}, {v.Z}] points nowhere"));
    }

    /// <summary>Shortest vector taken as a direction, in its own units: below it rounding decides where it points.</summary>
    private const double ShortestAxis = 1e-9;

    private object? List(Type item, KeyAttribute key, Node node, string path)
    {
        if (node is not ListNode list)
        {
            return Wrong(node, path, "a list", key.Count > 0 ? $"Write {key.Count} values in square brackets" : "Write values in square brackets, or one a line after hyphens");
        }

        if (key.Count > 0 && list.Items.Count != key.Count)
        {
            return Wrong(node, path, $"a list of {key.Count}", $"Write {key.Count} values");
        }

        var result = (System.Collections.IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(item))!;
        var good = true;
        for (var i = 0; i < list.Items.Count; i++)
        {
            var at = $"{path}.{i + 1}";
            problems.Remember(at, list.Items[i].At);
            var value = Value(item, key, list.Items[i], at);
            good &= value is not null;
            if (value is not null)
            {
                result.Add(value);
            }
        }

        return good ? result : null;
    }

    private object? Map(Type item, Node node, string path)
    {
        if (node is not MapNode map)
        {
            return Wrong(node, path, "names with values", "Write 'name: {...}', one a line");
        }

        var pair = typeof(KeyValuePair<,>).MakeGenericType(typeof(string), item);
        var list = (System.Collections.IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(pair))!;
        var good = true;
        var seen = new HashSet<string>();
        foreach (var (key, value) in map.Entries)
        {
            if (IsMerge(key))
            {
                RefuseMerge(key, path);
            }
            else if (!Names.IsName(key.Text) || key.Text == Names.Case)
            {
                problems.Add(key.At, path, $"'{Short(key.Text)}' is not a name", key.Text == Names.Case ? "'case' is the fixed frame; choose another name" : "Use lower-case letters, digits and single hyphens, a letter first, at most 40");
                good = false;
            }
            else if (!seen.Add(key.Text))
            {
                problems.Add(key.At, path, $"the name '{key.Text}' stands twice", "Give each its own name");
                good = false;
            }
            else
            {
                problems.Remember(Join(path, key.Text), key.At);
                var bound = Part(item, value, Join(path, key.Text));
                good &= bound is not null;
                if (bound is not null)
                {
                    list.Add(Activator.CreateInstance(pair, key.Text, bound));
                }
            }
        }

        return good ? Activator.CreateInstance(typeof(NamedMap<>).MakeGenericType(item), list) : null;
    }

    private static bool IsMerge(ScalarNode key) => key is { Text: "<<", Quoted: false };

    private void RefuseMerge(ScalarNode key, string path) =>
        problems.Add(key.At, path, "the merge key '<<' is not read", "Write the keys out, or give the whole value an anchor and use it by its alias");

    private object? Wrong(Node node, string path, string wanted, string remedy)
    {
        problems.Add(node.At, path, $"expected {wanted}, found {node.Kind}", remedy);
        return null;
    }

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    private static string Short(string s) => s.Length > 40 ? s[..40] + "..." : s;
}
