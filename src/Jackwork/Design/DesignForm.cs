using System.Globalization;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A design's text read as a form: every place with what the format says of it and what is written there. The text need not be right; it has to be YAML with keys.</summary>
public sealed class DesignForm
{
    private readonly DesignSource source;

    private DesignForm(DesignSource source) => this.source = source;

    /// <summary>Names of the members, in the order written.</summary>
    public IReadOnlyList<string> Members => Names("members");

    /// <summary>Names of the design's own parts, in the order written.</summary>
    public IReadOnlyList<string> Parts => Names("parts");

    /// <summary>Reads a text; null where it is not YAML with keys.</summary>
    public static DesignForm? Of(string text) => DesignSource.Read(text, out _) is { } source ? new(source) : null;

    /// <summary>The names or keys that the text has at a path; none where there is nothing of the kind.</summary>
    public IReadOnlyList<string> Names(string path) =>
        NodePath.Follow(source.Root, path) is { Rest.Count: 0, Last: MapNode map } ? [.. map.Entries.Select(e => e.Key.Text)] : [];

    /// <summary>What stands at a path; null where the format knows no such place.</summary>
    /// <param name="path">Keys, names and numbers from 1 parted by points; empty for the whole design.</param>
    public FormField? At(string path)
    {
        var at = NodePath.Follow(source.Root, path);
        var type = at.Type;
        foreach (var step in at.Rest)
        {
            type = type?.Of(step);
        }

        return type is null ? null : Field(path, path.Split('.')[^1], type, at.Rest.Count == 0 ? at.Last : null);
    }

    private FormField Field(string path, string name, FormatType type, Node? node)
    {
        var kind = KindOf(type);
        var key = type.Key ?? Plain;
        var given = node switch
        {
            null or ScalarNode { IsNothing: true } => null,
            ScalarNode s => s.Text,
            _ => source.Text[node.Extent.Start..node.Extent.End],
        };
        var inner = (kind, node) switch
        {
            (FieldKind.Part, MapNode map) => type.Keys.Select(k => Field(Join(path, k.Name), k.Name, new(k.Type, k.Key), map.Entries.FirstOrDefault(e => e.Key.Text == k.Name).Value)),
            (FieldKind.Named, MapNode map) => map.Entries.Select(e => Field(Join(path, e.Key.Text), e.Key.Text, type.Named!, e.Value)),
            (FieldKind.List, ListNode list) => list.Items.Select((item, i) => Field(Join(path, Number(i + 1)), Number(i + 1), type.Item!, item)),
            (FieldKind.Point, ListNode list) => list.Items.Select((item, i) => Field(Join(path, Number(i + 1)), i < 3 ? "xyz"[i].ToString() : Number(i + 1), new(typeof(double), Coordinate), item)),
            _ => [],
        };
        return new(path, name, key, kind, given, [.. inner], StartOf(type));
    }

    private static FieldKind KindOf(FormatType type) => type.Type switch
    {
        var t when t == typeof(string) => type.Key is { Words.Length: > 0 } ? FieldKind.Word : FieldKind.Text,
        var t when t == typeof(bool) => FieldKind.Flag,
        var t when t == typeof(int) => FieldKind.Whole,
        var t when t == typeof(double) || t == typeof(NumberOrWord) => FieldKind.Number,
        var t when t == typeof(Vec3) => FieldKind.Direction,
        var t when t == typeof(Point3) => FieldKind.Point,
        _ => type.Item is not null ? FieldKind.List : type.Named is not null ? FieldKind.Named : FieldKind.Part,
    };

    // What the format needs, each at its plainest: words the first, numbers 10 or what their limits leave, names the first member's.
    private string StartOf(FormatType type)
    {
        var key = type.Key ?? Plain;
        return KindOf(type) switch
        {
            FieldKind.Text => key.Refers == Refers.Nothing ? DesignWriter.Quote("new") : Members.FirstOrDefault() ?? "new",
            FieldKind.Word => key.Words.Split(' ')[0],
            FieldKind.Flag => "true",
            FieldKind.Direction => "x",
            FieldKind.Point => "[0, 0, 0]",
            FieldKind.List => $"[{string.Join(", ", Enumerable.Repeat(StartOf(type.Item!), Math.Max(1, key.Count)))}]",
            FieldKind.Named => "{}",
            FieldKind.Part => $"{{{string.Join(", ", type.Keys.Where(k => k.Key.Required).Select(k => $"{k.Name}: {StartOf(new(k.Type, k.Key))}"))}}}",
            _ => DesignText.Number(Math.Clamp(10, Math.Max(key.Min, -Binder.LargestNumber), Math.Min(key.Max, Binder.LargestNumber)), 3),
        };
    }

    private static readonly KeyAttribute Plain = new("");

    private static readonly KeyAttribute Coordinate = new("") { Unit = "mm" };

    private static string Join(string path, string step) => path.Length == 0 ? step : $"{path}.{step}";

    private static string Number(int i) => i.ToString(CultureInfo.InvariantCulture);
}
