using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text.Json;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>Reads the triangles of glTF 2.0 files, in one binary file or as JSON, each mesh where its node puts it.</summary>
/// <remarks>
/// Khronos Group, glTF 2.0 Specification (ISO/IEC 12113:2022): sections 3.5 (scenes and nodes), 3.7.2 (meshes), 4.4 (binary files). Materials,
/// pictures, cameras, lights and animations are passed over. Lines, strips, fans, skins, shape keys in use and compressed numbers are refused.
/// </remarks>
internal sealed class GltfReader
{
    private const uint Magic = 0x46546C67, Json = 0x4E4F534A, Binary = 0x004E4942;

    private const int Triangles = 4;

    /// <summary>A quaternion's square may differ from 1 by this: the fifth digit, which exporters round to.</summary>
    private const double Unit = 1e-4;

    /// <summary>Extensions that a file may need without its shape hanging on them.</summary>
    private static readonly string[] Looks = ["KHR_materials_", "KHR_texture_", "KHR_lights_"];

    private readonly JsonElement root;
    private readonly GltfNumbers numbers;
    private readonly ImmutableArray<Point3>.Builder points = ImmutableArray.CreateBuilder<Point3>();

    private GltfReader(JsonElement root, ReadOnlyMemory<byte>? binary, Func<string, byte[]?> beside)
    {
        this.root = root;
        numbers = new(root, binary, beside);
    }

    /// <summary>The mesh, in metres; each triangle has points of its own.</summary>
    public static TriangleMesh Read(ReadOnlyMemory<byte> bytes, Func<string, byte[]?> beside)
    {
        var (json, binary) = IsBinary(bytes.Span) ? Chunks(bytes) : (bytes, default(ReadOnlyMemory<byte>?));
        if (json.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
        {
            json = json[3..];
        }

        using var document = JsonDocument.Parse(json);
        var reader = new GltfReader(document.RootElement, binary, beside);
        reader.AddScene();
        return new(reader.points.ToImmutable(), [.. Enumerable.Range(0, reader.points.Count / 3).Select(i => new Triangle(3 * i, 3 * i + 1, 3 * i + 2))]);
    }

    private static bool IsBinary(ReadOnlySpan<byte> bytes) => bytes.Length >= 4 && BinaryPrimitives.ReadUInt32LittleEndian(bytes) == Magic;

    private static (ReadOnlyMemory<byte> Json, ReadOnlyMemory<byte>? Binary) Chunks(ReadOnlyMemory<byte> bytes)
    {
        (ReadOnlyMemory<byte>? json, ReadOnlyMemory<byte>? binary) = (null, null);
        for (long at = 12; at < bytes.Length;)
        {
            var rest = bytes[(int)at..];
            long length = rest.Length < 8 ? 0 : BinaryPrimitives.ReadUInt32LittleEndian(rest.Span);
            if (rest.Length < 8 + length)
            {
                throw new MeshRefusal(FormattableString.Invariant($"this glTF file breaks off after {bytes.Length} bytes"), GltfJson.Damaged);
            }

            var chunk = rest.Slice(8, (int)length);
            switch (BinaryPrimitives.ReadUInt32LittleEndian(rest.Span[4..]))
            {
                case Json: json ??= chunk; break;
                case Binary: binary ??= chunk; break;
            }

            at += 8 + length;
        }

        return (json ?? throw new MeshRefusal("this glTF file holds no JSON", GltfJson.Damaged), binary);
    }

    private void AddScene()
    {
        var version = root.Get("asset")?.Text("version") ?? throw new MeshRefusal("this is no glTF file: it names no 'asset' with a 'version'", GltfJson.Damaged);
        if (!version.StartsWith("2.", StringComparison.Ordinal))
        {
            throw new MeshRefusal($"this glTF file is of version '{MeshText.Short(version)}'; 2.0 is read", "Export it as glTF 2.0");
        }

        var needed = root.List("extensionsRequired").Select(e => e.ValueKind == JsonValueKind.String ? e.GetString()! : "").FirstOrDefault(e => !Looks.Any(l => e.StartsWith(l, StringComparison.Ordinal)));
        if (needed is not null)
        {
            throw new MeshRefusal($"this glTF file can't be read without the extension '{MeshText.Short(needed)}'", "Export it without compression and extensions");
        }

        var nodes = root.List("nodes");
        var scenes = root.List("scenes");
        var waiting = new Stack<(int Node, Affine Place)>();
        if (scenes.Count > 0)
        {
            Push(waiting, GltfJson.Item(scenes, root.Index("scene") ?? 0, "scene").List("nodes"), Affine.Identity);
        }

        var seen = new HashSet<int>();
        while (waiting.TryPop(out var next))
        {
            if (!seen.Add(next.Node))
            {
                throw new MeshRefusal(FormattableString.Invariant($"in this glTF file the node {next.Node} hangs on two others or on itself"), GltfJson.Damaged);
            }

            var node = GltfJson.Item(nodes, next.Node, "node");
            var place = next.Place.Compose(PlaceOf(node));
            AddMesh(node, place);
            Push(waiting, node.List("children"), place);
        }
    }

    private static void Push(Stack<(int, Affine)> waiting, IReadOnlyList<JsonElement> children, Affine place)
    {
        // The first is taken first.
        foreach (var child in children.Reverse())
        {
            waiting.Push((child.ValueKind == JsonValueKind.Number && child.TryGetInt32(out var i) && i >= 0 ? i : throw GltfJson.Wrong("nodes", "a list of nodes"), place));
        }
    }

    private static Affine PlaceOf(JsonElement node)
    {
        if (node.Numbers("matrix", 16) is { } m)
        {
            return m[3] == 0 && m[7] == 0 && m[11] == 0 && m[15] == 1
                ? new(new(m[0], m[1], m[2]), new(m[4], m[5], m[6]), new(m[8], m[9], m[10]), new(m[12], m[13], m[14]))
                : throw GltfJson.Wrong("matrix", "one of shift, turn and scale: its last row is not 0, 0, 0, 1");
        }

        var (t, q, s) = (node.Numbers("translation", 3) ?? [0, 0, 0], node.Numbers("rotation", 4) ?? [0, 0, 0, 1], node.Numbers("scale", 3) ?? [1, 1, 1]);
        var square = q.Sum(x => x * x);
        var by = 1 / Math.Sqrt(square);
        return Math.Abs(square - 1) < Unit
            ? Affine.Of(new(t[0], t[1], t[2]), (by * q[0], by * q[1], by * q[2], by * q[3]), new(s[0], s[1], s[2]))
            : throw GltfJson.Wrong("rotation", "a quaternion of length 1");
    }

    private void AddMesh(JsonElement node, Affine place)
    {
        if (node.Index("mesh") is not { } index)
        {
            return;
        }

        var mesh = GltfJson.Item(root.List("meshes"), index, "mesh");
        if (node.Get("skin") is not null || node.List("weights").Concat(mesh.List("weights")).Any(w => w.ValueKind != JsonValueKind.Number || !w.TryGetDouble(out var d) || d != 0))
        {
            throw new MeshRefusal(FormattableString.Invariant($"in this glTF file the mesh {index} is bent by a skin or by shape keys"), "Apply them in the modelling program, so that the mesh stands as it is");
        }

        foreach (var primitive in mesh.List("primitives"))
        {
            AddTriangles(primitive, place);
        }
    }

    private void AddTriangles(JsonElement primitive, Affine place)
    {
        if ((primitive.Index("mode") ?? Triangles) != Triangles)
        {
            throw new MeshRefusal("this glTF file holds points, lines, strips or fans", "Export the surface as plain triangles");
        }

        var (known, at) = numbers.Places(primitive.Get("attributes")?.Index("POSITION") ?? throw new MeshRefusal("this glTF file holds a mesh without places", GltfJson.Damaged));
        var (count, corner) = primitive.Index("indices") is { } i ? numbers.Indices(i) : (known, k => (uint)k);
        MeshText.Limit((points.Count + (long)count) / 3);
        for (var k = 0; k + 2 < count; k += 3)
        {
            // A mirror image runs its triangles the other way round (section 3.7.4).
            foreach (var c in place.IsMirror ? (ReadOnlySpan<int>)[k, k + 2, k + 1] : [k, k + 1, k + 2])
            {
                points.Add(corner(c) < known
                    ? place.Apply(at((int)corner(c)))
                    : throw new MeshRefusal(new MeshProblem(MeshFault.NoSuchPoint, FormattableString.Invariant($"a triangle of this glTF file names the point {corner(c)}, but there are {known}"), GltfJson.Damaged, 1)));
            }
        }
    }
}
