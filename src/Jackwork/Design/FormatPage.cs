using System.Globalization;
using System.Reflection;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The page docs/design-file.md, made from the types that the reader binds to, so that it lists every key.</summary>
public static class FormatPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Write()
    {
        var b = new StringBuilder();
        b.Append("# The design file\n\n<!-- Made by 'dev docs' from the types in src/Jackwork/Design; change them, not this page. -->\n\n");
        var queue = new Queue<Type>([typeof(DesignSpec)]);
        var seen = new HashSet<Type>(queue);
        while (queue.TryDequeue(out var type))
        {
            var section = type.GetCustomAttribute<SectionAttribute>()!;
            b.Append(CultureInfo.InvariantCulture, $"## {section.Title}\n\n{section.Text}\n\n| key | value | meaning |\n| --- | --- | --- |\n");
            foreach (var k in KeyInfo.Of(type))
            {
                b.Append(CultureInfo.InvariantCulture, $"| `{k.Name}`{(k.Key.Required ? " (needed)" : "")} | {Kind(k.Type, k.Key)} | {k.Key.Text} |\n");
                var inner = Inner(k.Type);
                if (inner.GetCustomAttribute<SectionAttribute>() is not null && seen.Add(inner))
                {
                    queue.Enqueue(inner);
                }
            }

            b.Append('\n');
        }

        return b.ToString().TrimEnd('\n') + "\n";
    }

    private static Type Inner(Type type) => KeyInfo.ItemOf(type, typeof(IReadOnlyList<>)) ?? KeyInfo.ItemOf(type, typeof(NamedMap<>)) ?? type;

    private static string Kind(Type type, KeyAttribute key)
    {
        var unit = key.Unit.Length > 0 ? ", " + key.Unit : "";
        var range = double.IsFinite(key.Min) && double.IsFinite(key.Max) ? FormattableString.Invariant($", {key.Min} to {key.Max}")
            : double.IsFinite(key.Min) ? FormattableString.Invariant($", {key.Min} or more") : "";
        if (KeyInfo.ItemOf(type, typeof(IReadOnlyList<>)) is { } item)
        {
            var what = item.GetCustomAttribute<SectionAttribute>() is { } s ? $"[{s.Title}](#{s.Title})" : Kind(item, key);
            return (key.Count > 0 ? $"list of {key.Count}: " : "list: ") + what;
        }

        return type switch
        {
            _ when KeyInfo.ItemOf(type, typeof(NamedMap<>)) is not null => "one for each name",
            _ when type == typeof(string) => key.Words.Length > 0 ? string.Join(" or ", key.Words.Split(' ').Select(w => $"`{w}`")) : "text",
            _ when type == typeof(bool) => "true or false",
            _ when type == typeof(int) => "whole number" + range,
            _ when type == typeof(double) => "number" + range + unit,
            _ when type == typeof(NumberOrWord) => $"number{range}{unit}, or `{key.OrWord}`",
            _ when type == typeof(Point3) => "[x, y, z]" + unit,
            _ when type == typeof(Vec3) => "direction",
            _ => $"[{type.GetCustomAttribute<SectionAttribute>()!.Title}](#{type.GetCustomAttribute<SectionAttribute>()!.Title})",
        };
    }
}
