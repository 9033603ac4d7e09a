using System.Globalization;
using System.Reflection;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The page docs/design-file.md, made from the types that the reader binds to, so that it lists every key.</summary>
public static class FormatPage
{
    private const string Opening = """
        # The design file

        <!-- Made by 'dev docs' from the types in src/Jackwork/Design; change them, not this page. -->

        A design is written by hand, in any text editor, as YAML 1.2 in UTF-8. Most of it is `key: value`; what belongs
        together stands in braces on one line, or indented by spaces (never tabs) on lines of its own. Lists stand in
        square brackets, or one a line after hyphens. After `#` you may write what you like. Text needs quotes only where it
        holds a colon, a `#` or quotes itself; numbers take a decimal point.

        A file is read whole or not at all. Whatever is wrong with it is told in one go, each with its line and column,
        what was found there and what would be right. An unknown key is an error, never passed over.

        Below, every key has its own line: *needed* ones must be given. Each section ends with an example. The first is a
        whole design; every other one gives a few of its keys anew. (One that gives `members` leaves the timing out unless
        it gives that too.)


        """;

    /// <summary>The parts of the file that have a section, in the order of the page.</summary>
    public static IReadOnlyList<Type> Sections { get; } = Walk();

    /// <summary>The page as Markdown.</summary>
    public static string Write()
    {
        var b = new StringBuilder(Opening);
        foreach (var type in Sections)
        {
            var section = SectionOf(type)!;
            b.Append(CultureInfo.InvariantCulture, $"## {section.Title}\n\n{section.Text}\n\n| key | value | meaning |\n| --- | --- | --- |\n");
            foreach (var k in KeyInfo.Of(type))
            {
                b.Append(CultureInfo.InvariantCulture, $"| `{k.Name}`{(k.Key.Required ? " (needed)" : "")} | {Kind(k.Type, k.Key)} | {k.Key.Text} |\n");
            }

            b.Append(CultureInfo.InvariantCulture, $"\n```yaml\n{section.Example}\n```\n\n");
        }

        b.Append("## Table of materials\n\n| name | density, g/cm^3 | source of the density |\n| --- | --- | --- |\n");
        foreach (var m in Material.All)
        {
            b.Append(CultureInfo.InvariantCulture, $"| {m.Name} | {m.Density} | {m.Source} |\n");
        }

        return b.ToString().TrimEnd('\n') + "\n";
    }

    /// <summary>The section that a part of the file has on the page, or null for a plain value.</summary>
    internal static SectionAttribute? SectionOf(Type part) => part.GetCustomAttribute<SectionAttribute>();

    private static List<Type> Walk()
    {
        var found = new List<Type> { typeof(DesignSpec) };
        for (var i = 0; i < found.Count; i++)
        {
            found.AddRange(KeyInfo.Of(found[i]).Select(k => Inner(k.Type)).Where(t => SectionOf(t) is not null && !found.Contains(t)).Distinct());
        }

        return found;
    }

    private static Type Inner(Type type) => KeyInfo.ItemOf(type, typeof(IReadOnlyList<>)) ?? KeyInfo.ItemOf(type, typeof(NamedMap<>)) ?? type;

    private static string Kind(Type type, KeyAttribute key)
    {
        var unit = key.Unit.Length > 0 ? ", " + key.Unit : "";
        var range = key.Min == key.Max ? FormattableString.Invariant($", {key.Min}")
            : double.IsFinite(key.Min) && double.IsFinite(key.Max) ? FormattableString.Invariant($", {key.Min} to {key.Max}")
            : double.IsFinite(key.Min) ? FormattableString.Invariant($", {key.Min} or more") : "";
        if (KeyInfo.ItemOf(type, typeof(IReadOnlyList<>)) is { } item)
        {
            return (key.Count > 0 ? $"list of {key.Count}: " : "list: ") + (SectionOf(item) is { } s ? Link(s) : Kind(item, key));
        }

        return type switch
        {
            _ when KeyInfo.ItemOf(type, typeof(NamedMap<>)) is { } named => $"for each name: {Link(SectionOf(named)!)}",
            _ when type == typeof(string) => key.Words.Length > 0 ? string.Join(" or ", key.Words.Split(' ').Select(w => $"`{w}`")) : "text",
            _ when type == typeof(bool) => "true or false",
            _ when type == typeof(int) => "whole number" + range,
            _ when type == typeof(double) => "number" + range + unit,
            _ when type == typeof(NumberOrWord) => $"number{range}{unit}, or `{key.OrWord}`",
            _ when type == typeof(Point3) => "[x, y, z]" + unit,
            _ when type == typeof(Vec3) => "direction",
            _ => Link(SectionOf(type)!),
        };
    }

    // Headings become anchors as Markdown pages make them: lower case, spaces to hyphens, other signs left out.
    private static string Link(SectionAttribute section) =>
        $"[{section.Title}](#{string.Concat(section.Title.ToLowerInvariant().Replace(' ', '-').Where(c => char.IsAsciiLetterLower(c) || c == '-'))})";
}
