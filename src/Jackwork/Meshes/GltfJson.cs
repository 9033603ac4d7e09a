using System.Text.Json;

namespace Jackwork.Meshes;

/// <summary>Values of a glTF file's JSON; what is of the wrong kind ends the reading.</summary>
internal static class GltfJson
{
    /// <summary>What to do about a file that breaks its own rules.</summary>
    public const string Damaged = "Export it again; the file is damaged";

    /// <summary>A value; null where there is none.</summary>
    public static JsonElement? Get(this JsonElement e, string key) => e.ValueKind == JsonValueKind.Object && e.TryGetProperty(key, out var value) ? value : null;

    /// <summary>A whole number, 0 or more; null where there is none.</summary>
    public static int? Index(this JsonElement e, string key) => e.Get(key) is not { } value
        ? null
        : value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var i) && i >= 0 ? i : throw Wrong(key, "a whole number, 0 or more");

    /// <summary>A list; empty where there is none.</summary>
    public static IReadOnlyList<JsonElement> List(this JsonElement e, string key) => e.Get(key) is not { } value
        ? []
        : value.ValueKind == JsonValueKind.Array ? [.. value.EnumerateArray()] : throw Wrong(key, "a list");

    /// <summary>A list of so many numbers; null where there is none.</summary>
    public static double[]? Numbers(this JsonElement e, string key, int count)
    {
        if (e.Get(key) is null)
        {
            return null;
        }

        double[] numbers = [.. e.List(key).Select(v => v.ValueKind == JsonValueKind.Number && v.TryGetDouble(out var d) ? d : double.NaN)];
        return numbers.Length == count && numbers.All(double.IsFinite) ? numbers : throw Wrong(key, FormattableString.Invariant($"{count} finite numbers"));
    }

    /// <summary>A text; null where there is none.</summary>
    public static string? Text(this JsonElement e, string key) => e.Get(key) is not { } value
        ? null
        : value.ValueKind == JsonValueKind.String ? value.GetString() : throw Wrong(key, "text");

    /// <summary>An item of a list of the file.</summary>
    public static JsonElement Item(IReadOnlyList<JsonElement> list, int index, string what) =>
        index < list.Count ? list[index] : throw new MeshRefusal(FormattableString.Invariant($"this glTF file names the {what} {index}, but has {list.Count}"), Damaged);

    /// <summary>The refusal of a value of the wrong kind.</summary>
    public static MeshRefusal Wrong(string key, string wanted) => new($"in this glTF file '{key}' is not {wanted}", Damaged);
}
