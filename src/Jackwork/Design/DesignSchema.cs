using System.Text.Json;
using System.Text.Json.Nodes;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The JSON Schema of the design file, made from the types that the reader binds to.</summary>
public static class DesignSchema
{
    /// <summary>The schema's text (JSON Schema 2020-12), as kept in docs/design.schema.json.</summary>
    public static string Write()
    {
        var root = Part(typeof(DesignSpec));
        root.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        root.Insert(1, "title", "Jackwork design file, version 1");
        return root.ToJsonString(new JsonSerializerOptions { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }) + "\n";
    }

    private static JsonObject Part(Type type)
    {
        var properties = new JsonObject();
        var required = new JsonArray();
        foreach (var k in KeyInfo.Of(type))
        {
            var schema = Value(k.Type, k.Key);
            schema["description"] = k.Key.Text.Replace("`", "'", StringComparison.Ordinal) + (k.Key.Unit.Length > 0 ? $" Unit: {k.Key.Unit}." : "");
            properties[k.Name] = schema;
            if (k.Key.Required)
            {
                required.Add(k.Name);
            }
        }

        var result = new JsonObject { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = properties };
        if (required.Count > 0)
        {
            result["required"] = required;
        }

        return result;
    }

    private static JsonObject Value(Type type, KeyAttribute key)
    {
        if (type == typeof(string))
        {
            var words = key.Words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            return words.Length == 0
                ? new() { ["type"] = "string" }
                : new() { ["enum"] = new JsonArray([.. words.Select(w => (JsonNode)w)]) };
        }

        if (type == typeof(bool))
        {
            return new() { ["type"] = "boolean" };
        }

        if (type == typeof(int) || type == typeof(double))
        {
            return Number(key, type == typeof(int));
        }

        if (type == typeof(NumberOrWord))
        {
            return new() { ["anyOf"] = new JsonArray(Number(key, false), new JsonObject { ["const"] = key.OrWord }) };
        }

        if (type == typeof(Point3))
        {
            return Three();
        }

        if (type == typeof(Vec3))
        {
            return new() { ["anyOf"] = new JsonArray(new JsonObject { ["enum"] = new JsonArray("x", "y", "z", "-x", "-y", "-z") }, Three()) };
        }

        if (KeyInfo.ItemOf(type, typeof(IReadOnlyList<>)) is { } item)
        {
            var list = new JsonObject { ["type"] = "array", ["items"] = Value(item, key) };
            if (key.Count > 0)
            {
                list["minItems"] = key.Count;
                list["maxItems"] = key.Count;
            }

            return list;
        }

        return KeyInfo.ItemOf(type, typeof(NamedMap<>)) is { } named
            ? new() { ["type"] = "object", ["propertyNames"] = new JsonObject { ["pattern"] = "^[a-z][a-z0-9]*(-[a-z0-9]+)*$", ["maxLength"] = 40, ["not"] = new JsonObject { ["const"] = Names.Case } }, ["additionalProperties"] = Part(named) }
            : Part(type);
    }

    // The same bounds as the reader's.
    private static JsonObject Number(KeyAttribute key, bool whole)
    {
        return new()
        {
            ["type"] = whole ? "integer" : "number",
            ["minimum"] = Math.Max(key.Min, -Binder.LargestNumber),
            ["maximum"] = Math.Min(key.Max, Binder.LargestNumber),
        };
    }

    private static readonly KeyAttribute Plain = new("");

    private static JsonObject Three() => new() { ["type"] = "array", ["items"] = Number(Plain, false), ["minItems"] = 3, ["maxItems"] = 3 };
}
