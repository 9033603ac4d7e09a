using System.Globalization;
using System.Numerics;
using System.Text;
using Jackwork.Meshes;
using SharpGLTF.Schema2;

namespace Jackwork.Tests.Meshes;

/// <summary>Writes meshes as files; glTF by SharpGLTF, which knows nothing of our reader.</summary>
internal static class MeshFiles
{
    public static byte[] BinaryStl(TriangleMesh mesh, string head = "")
    {
        using var stream = new MemoryStream();
        using var w = new BinaryWriter(stream);
        w.Write(Encoding.ASCII.GetBytes(head.PadRight(80)[..80]));
        w.Write((uint)mesh.Triangles.Length);
        foreach (var t in mesh.Triangles)
        {
            var n = mesh.DoubleArea(t).Unit();
            foreach (var v in (double[])[n.X, n.Y, n.Z, .. Corners(mesh, t)])
            {
                w.Write((float)v);
            }

            w.Write((ushort)0);
        }

        return stream.ToArray();
    }

    public static byte[] TextStl(TriangleMesh mesh)
    {
        var b = new StringBuilder("solid a head\n");
        foreach (var t in mesh.Triangles)
        {
            var c = Corners(mesh, t);
            b.Append("  facet normal 0 0 0\n    outer loop\n");
            for (var i = 0; i < 9; i += 3)
            {
                b.Append(CultureInfo.InvariantCulture, $"      vertex {(float)c[i]:e8} {(float)c[i + 1]:e8} {(float)c[i + 2]:e8}\n");
            }

            b.Append("    endloop\n  endfacet\n");
        }

        return Encoding.ASCII.GetBytes(b + "endsolid a head\n");
    }

    public static byte[] Obj(TriangleMesh mesh, bool fromTheEnd = false)
    {
        var b = new StringBuilder("# a head\r\nmtllib head.mtl\r\no Head\r\n");
        foreach (var p in mesh.Points)
        {
            b.Append(CultureInfo.InvariantCulture, $"v {p.X:R} {p.Y:R} {p.Z:R}\r\n");
        }

        b.Append("vt 0 0\r\nvn 0 0 1\r\nusemtl wood\r\ns off\r\n");
        string At(int i) => fromTheEnd ? $"{i - mesh.Points.Length}" : $"{i + 1}/1/1";
        foreach (var t in mesh.Triangles)
        {
            b.Append(CultureInfo.InvariantCulture, $"f {At(t.A)} {At(t.B)} \\\r\n {At(t.C)}\r\n");
        }

        return Encoding.ASCII.GetBytes(b.ToString());
    }

    /// <summary>The mesh under two nodes, the inner one placed by <paramref name="inner"/>, the outer by <paramref name="outer"/>.</summary>
    public static ModelRoot Model(TriangleMesh mesh, Matrix4x4 outer, Matrix4x4 inner)
    {
        var root = ModelRoot.CreateModel();
        var node = root.UseScene("scene").CreateNode("outer");
        node.LocalMatrix = outer;
        var child = node.CreateNode("inner");
        child.LocalMatrix = inner;
        child.Mesh = root.CreateMesh("mesh");
        var primitive = child.Mesh.CreatePrimitive();
        byte[] places = [.. mesh.Points.SelectMany(p => (double[])[p.X, p.Y, p.Z]).SelectMany(v => BitConverter.GetBytes((float)v))];
        byte[] indices = [.. mesh.Triangles.SelectMany(t => (int[])[t.A, t.B, t.C]).SelectMany(BitConverter.GetBytes)];
        var (at, order) = (root.CreateAccessor(), root.CreateAccessor());
        at.SetVertexData(root.UseBufferView(new ArraySegment<byte>(places), 0, BufferMode.ARRAY_BUFFER), 0, mesh.Points.Length, new SharpGLTF.Memory.AttributeFormat(DimensionType.VEC3, EncodingType.FLOAT));
        order.SetIndexData(root.UseBufferView(new ArraySegment<byte>(indices), 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, 3 * mesh.Triangles.Length, IndexEncodingType.UNSIGNED_INT);
        primitive.SetVertexAccessor("POSITION", at);
        primitive.SetIndexAccessor(order);
        primitive.DrawPrimitiveType = PrimitiveType.TRIANGLES;
        return root;
    }

    public static byte[] Glb(TriangleMesh mesh) => [.. Model(mesh, Matrix4x4.Identity, Matrix4x4.Identity).WriteGLB()];

    /// <summary>The JSON file and the binary files beside it, by their names.</summary>
    public static Dictionary<string, byte[]> Gltf(TriangleMesh mesh)
    {
        var files = new Dictionary<string, ArraySegment<byte>>();
        WriteContext.CreateFromDictionary(files).WithTextSettings().WriteTextSchema2("head", Model(mesh, Matrix4x4.Identity, Matrix4x4.Identity));
        return files.ToDictionary(f => f.Key, f => f.Value.ToArray());
    }

    /// <summary>The JSON file with the numbers in itself.</summary>
    public static byte[] Embedded(TriangleMesh mesh)
    {
        var files = Gltf(mesh);
        return Encoding.UTF8.GetBytes(files.Where(f => f.Key.EndsWith(".bin", StringComparison.Ordinal)).Aggregate(
            Encoding.UTF8.GetString(files["head.gltf"]),
            (text, f) => text.Replace($"\"{f.Key}\"", $"\"data:application/octet-stream;base64,{Convert.ToBase64String(f.Value)}\"", StringComparison.Ordinal)));
    }

    private static double[] Corners(TriangleMesh mesh, Triangle t)
    {
        var (a, b, c) = mesh.Corners(t);
        return [a.X, a.Y, a.Z, b.X, b.Y, b.Z, c.X, c.Y, c.Z];
    }
}
