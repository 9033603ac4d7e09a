using System.Collections;
using System.Globalization;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>Writes a design as text that reads back equal: one member a block, small things on one line.</summary>
public static class DesignWriter
{
    /// <summary>Longest line kept in one piece, characters.</summary>
    private const int LineWidth = 110;

    /// <summary>The file's text.</summary>
    /// <exception cref="ArgumentException">A text holds half of a surrogate pair, which no file can hold.</exception>
    public static string Write(DesignSpec spec)
    {
        var b = new StringBuilder();
        Block(b, spec, 0);
        return b.ToString();
    }

    private static void Block(StringBuilder b, object part, int indent)
    {
        foreach (var (name, value) in Entries(part))
        {
            var pad = new string(' ', indent);
            var flow = Flow(value);
            if (indent + name.Length + 2 + flow.Length <= LineWidth && !(value is INamedMap))
            {
                b.Append(pad).Append(name).Append(": ").Append(flow).Append('\n');
            }
            else if (value is IList list && list.Count > 0 && !IsLeaf(list[0]!))
            {
                b.Append(pad).Append(name).Append(":\n");
                foreach (var item in list)
                {
                    b.Append(pad).Append("  - ").Append(Flow(item!)).Append('\n');
                }
            }
            else if (!IsLeaf(value) && value is not IList && (value is not INamedMap map || map.Items.Any()))
            {
                b.Append(pad).Append(name).Append(":\n");
                Block(b, value, indent + 2);
            }
            else
            {
                b.Append(pad).Append(name).Append(": ").Append(flow).Append('\n');
            }
        }
    }

    private static IEnumerable<(string Name, object Value)> Entries(object part) => part is INamedMap map
        ? map.Items
        : KeyInfo.Of(part.GetType())
            .Select(k => (k, value: k.Property.GetValue(part)))
            .Where(x => x.value is not null && (x.k.Key.Required || !IsDefault(x.k.Property.PropertyType, x.value)))
            .Select(x => (x.k.Name, x.value!));

    // A key that may be left out and whose value is what leaving it out means.
    private static bool IsDefault(Type declared, object value) => (declared == typeof(bool) && value is false) || (declared == typeof(double) && value is 0.0);

    private static bool IsLeaf(object value) => value is string or bool or int or double or NumberOrWord or Point3 or Vec3;

    private static string Flow(object value) => value switch
    {
        string s => Quote(s),
        bool b => b ? "true" : "false",
        int i => i.ToString(CultureInfo.InvariantCulture),
        double d => Number(d),
        NumberOrWord n => n.Word ?? Number(n.Number),
        Point3 p => $"[{Number(p.X)}, {Number(p.Y)}, {Number(p.Z)}]",
        Vec3 v => Axis(v),
        IEnumerable list and not INamedMap => "[" + string.Join(", ", list.Cast<object>().Select(Flow)) + "]",
        _ => "{" + string.Join(", ", Entries(value).Select(e => $"{e.Name}: {Flow(e.Value)}")) + "}",
    };

    // The shortest text that reads back as the same number.
    private static string Number(double d) => d.ToString("R", CultureInfo.InvariantCulture);

    private static string Axis(Vec3 v) => (v.X, v.Y, v.Z) switch
    {
        (1, 0, 0) => "x",
        (0, 1, 0) => "y",
        (0, 0, 1) => "z",
        (-1, 0, 0) => "-x",
        (0, -1, 0) => "-y",
        (0, 0, -1) => "-z",
        _ => $"[{Number(v.X)}, {Number(v.Y)}, {Number(v.Z)}]",
    };

    /// <summary>Any text as a value: plain words stay plain, but for those that some YAML readers take for something else.</summary>
    internal static string Quote(string s) => Names.IsName(s) && s is not ("true" or "false" or "null" or "y" or "n" or "yes" or "no" or "on" or "off") ? s : Escaped(s);

    // YAML double-quoted style takes JSON's escapes.
    private static string Escaped(string s)
    {
        var b = new StringBuilder("\"");
        for (var i = 0; i < s.Length; i++)
        {
            var c = s[i];
            if (i + 1 < s.Length && char.IsSurrogatePair(c, s[i + 1]))
            {
                b.Append(c).Append(s[++i]);
                continue;
            }

            if (char.IsSurrogate(c))
            {
                throw new ArgumentException(FormattableString.Invariant($"The text has half of a surrogate pair, U+{(int)c:X4}, at index {i}; only whole characters can be written."));
            }

            _ = c switch
            {
                '"' => b.Append("\\\""),
                '\\' => b.Append("\\\\"),
                '\n' => b.Append("\\n"),
                '\r' => b.Append("\\r"),
                '\t' => b.Append("\\t"),
                < ' ' or '\u007f' or (>= '\u0080' and <= '\u009f') or '\u2028' or '\u2029' or '\ufeff' or '\ufffe' or '\uffff' => b.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture)),
                _ => b.Append(c),
            };
        }

        return b.Append('"').ToString();
    }
}
