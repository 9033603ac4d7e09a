using System.Text.Json.Nodes;
using Jackwork.Geometry;

namespace Jackwork.Shop.Model;

/// <summary>The numbers of a glTF file in one buffer, with the views and accessors that say where each run of them lies.</summary>
/// <remarks>Khronos Group, glTF 2.0 Specification, sections 3.6 and 5.1 (ISO/IEC 12113:2022). Everything is 4 bytes wide, so every run is aligned.</remarks>
internal sealed class BinaryChunk
{
    private const int Float = 5126, UnsignedInt = 5125, Vertices = 34962, Indices = 34963;

    private readonly MemoryStream bytes = new();

    /// <summary>Runs of bytes in the buffer.</summary>
    public JsonArray Views { get; } = [];

    /// <summary>What the runs hold.</summary>
    public JsonArray Accessors { get; } = [];

    /// <summary>The buffer.</summary>
    public byte[] Bytes => bytes.ToArray();

    /// <summary>Places or normals of a mesh's corners; returns the accessor.</summary>
    public int Corners(IEnumerable<Vec3> values) => Vectors(values, Vertices);

    /// <summary>Values of a track of places; returns the accessor.</summary>
    public int Places(IEnumerable<Vec3> values) => Vectors(values, null);

    /// <summary>Values of a track of rotations; returns the accessor.</summary>
    public int Rotations(IEnumerable<Turn> values) =>
        Run("VEC4", 4, Float, null, [.. values.SelectMany(t => (float[])[(float)t.X, (float)t.Y, (float)t.Z, (float)t.W])]);

    /// <summary>Times of keys, s; returns the accessor.</summary>
    public int Times(IEnumerable<float> seconds) => Run("SCALAR", 1, Float, null, [.. seconds]);

    /// <summary>Corners of triangles; returns the accessor.</summary>
    public int Triangles(IReadOnlyList<int> indices)
    {
        Begin("SCALAR", UnsignedInt, indices.Count, 4 * indices.Count, Indices);
        foreach (var i in indices)
        {
            bytes.Write(BitConverter.GetBytes((uint)i));
        }

        return Accessors.Count - 1;
    }

    private int Vectors(IEnumerable<Vec3> values, int? target) =>
        Run("VEC3", 3, Float, target, [.. values.SelectMany(v => (float[])[(float)v.X, (float)v.Y, (float)v.Z])]);

    private int Run(string type, int width, int component, int? target, float[] values)
    {
        Begin(type, component, values.Length / width, 4 * values.Length, target);
        JsonArray Each(Func<IEnumerable<float>, float> of) =>
            [.. Enumerable.Range(0, width).Select(c => JsonValue.Create((double)of(values.Where((_, i) => i % width == c))))];
        var accessor = Accessors[^1]!;
        accessor["min"] = Each(Enumerable.Min);
        accessor["max"] = Each(Enumerable.Max);
        foreach (var v in values)
        {
            bytes.Write(BitConverter.GetBytes(v));
        }

        return Accessors.Count - 1;
    }

    private void Begin(string type, int component, int count, int length, int? target)
    {
        var view = new JsonObject { ["buffer"] = 0, ["byteOffset"] = bytes.Length, ["byteLength"] = length };
        if (target is { } t)
        {
            view["target"] = t;
        }

        Views.Add((JsonNode)view);
        Accessors.Add((JsonNode)new JsonObject { ["bufferView"] = Views.Count - 1, ["componentType"] = component, ["count"] = count, ["type"] = type });
    }
}
