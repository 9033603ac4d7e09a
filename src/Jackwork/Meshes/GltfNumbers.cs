using System.Buffers.Binary;
using System.Text.Json;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>The numbers of a glTF file: its buffers, views and accessors.</summary>
/// <remarks>Khronos Group, glTF 2.0 Specification (ISO/IEC 12113:2022), sections 3.6.1 and 3.6.2.</remarks>
/// <param name="root">The file's JSON.</param>
/// <param name="binary">The binary chunk; empty where there is none.</param>
/// <param name="beside">Gives the bytes of a file that this one names.</param>
internal sealed class GltfNumbers(JsonElement root, ReadOnlyMemory<byte>? binary, Func<string, byte[]?> beside)
{
    private const int Byte = 5121, Short = 5123, Int = 5125, Float = 5126;

    private readonly IReadOnlyList<JsonElement> accessors = root.List("accessors"), views = root.List("bufferViews"), buffers = root.List("buffers");
    private readonly Dictionary<int, ReadOnlyMemory<byte>> known = [];

    /// <summary>The places of an accessor, read as they are asked for.</summary>
    public (int Count, Func<int, Point3> At) Places(int accessor)
    {
        var (bytes, count, stride, component) = Run(accessor, "VEC3", 12);
        if (component != Float)
        {
            throw new MeshRefusal("this glTF file holds places that are no single-precision numbers", "Export it without quantised (compressed) places");
        }

        float Single(int at) => BinaryPrimitives.ReadSingleLittleEndian(bytes.Span[at..]);
        return (count, i => new(Single(stride * i), Single(stride * i + 4), Single(stride * i + 8)));
    }

    /// <summary>The indices of an accessor.</summary>
    public (int Count, Func<int, uint> At) Indices(int accessor)
    {
        var (bytes, count, stride, component) = Run(accessor, "SCALAR", 0);
        return component switch
        {
            Byte => (count, i => bytes.Span[stride * i]),
            Short => (count, i => BinaryPrimitives.ReadUInt16LittleEndian(bytes.Span[(stride * i)..])),
            Int => (count, i => BinaryPrimitives.ReadUInt32LittleEndian(bytes.Span[(stride * i)..])),
            _ => throw new MeshRefusal(FormattableString.Invariant($"this glTF file holds indices of the component type {component}"), GltfJson.Damaged),
        };
    }

    // The bytes from the accessor's first element on, long enough for all; a width of 0 is that of one component.
    private (ReadOnlyMemory<byte> Bytes, int Count, int Stride, int Component) Run(int accessor, string type, int width)
    {
        var a = GltfJson.Item(accessors, accessor, "accessor");
        if (a.Get("sparse") is not null || a.Index("bufferView") is not { } viewIndex)
        {
            throw new MeshRefusal("this glTF file holds sparse numbers, which are not read", "Export it without sparse accessors or shape keys");
        }

        var component = a.Index("componentType") ?? 0;
        if (a.Text("type") != type)
        {
            throw GltfJson.Wrong("type", $"'{type}'");
        }

        var view = GltfJson.Item(views, viewIndex, "buffer view");
        var buffer = Buffer(view.Index("buffer") ?? 0);
        width = width > 0 ? width : component switch { Byte => 1, Short => 2, _ => 4 };
        var stride = view.Index("byteStride") ?? width;
        long count = a.Index("count") ?? 0;
        var (start, length) = ((long)(view.Index("byteOffset") ?? 0), (long)(view.Index("byteLength") ?? 0));
        long from = a.Index("byteOffset") ?? 0;
        var needed = count == 0 ? 0 : from + stride * (count - 1) + width;
        if (stride < width || needed > length || start + length > buffer.Length)
        {
            throw new MeshRefusal(FormattableString.Invariant($"in this glTF file {count} numbers take {needed} bytes of a view of {length} bytes from byte {start} on, in a buffer of {buffer.Length}"), GltfJson.Damaged);
        }

        return (buffer.Slice((int)(start + Math.Min(from, length)), (int)(length - Math.Min(from, length))), (int)count, stride, component);
    }

    private ReadOnlyMemory<byte> Buffer(int index)
    {
        if (!known.TryGetValue(index, out var bytes))
        {
            var buffer = GltfJson.Item(buffers, index, "buffer");
            bytes = buffer.Text("uri") is { } uri ? Named(uri) : binary ?? throw new MeshRefusal("this glTF file names a binary chunk that it does not have", GltfJson.Damaged);
            known.Add(index, bytes);
        }

        return bytes;
    }

    private byte[] Named(string uri)
    {
        if (uri.StartsWith("data:", StringComparison.Ordinal))
        {
            const string mark = ";base64,";
            var at = uri.IndexOf(mark, StringComparison.Ordinal);
            var data = new byte[uri.Length];
            return at > 0 && Convert.TryFromBase64String(uri[(at + mark.Length)..], data, out var length)
                ? data[..length]
                : throw new MeshRefusal("this glTF file holds data that is not written in base 64", GltfJson.Damaged);
        }

        return beside(Uri.UnescapeDataString(uri)) ?? throw new MeshRefusal($"this glTF file keeps its numbers in '{MeshText.Short(uri)}', which is not there", "Put that file beside it, or export one file with everything in it (.glb)");
    }
}
