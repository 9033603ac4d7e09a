using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Jackwork.Bench.Sessions;
using Jackwork.Shop.Model;

namespace Jackwork.Bench.Stage;

/// <summary>Meshes as one array, little-endian: for each the numbers of corners and of indices as 32-bit integers, then places (mm) and normals as floats, then the indices.</summary>
internal static class StageMeshes
{
    /// <summary>Writes the meshes of some parts.</summary>
    public static void Write(Stream stream, Shapes solids, IEnumerable<int> parts)
    {
        foreach (var part in parts)
        {
            stream.Write(Of(solids.Meshes[part]));
        }
    }

    /// <summary>A mark that changes with the mesh.</summary>
    public static string MarkOf(Mesh mesh) => Convert.ToHexStringLower(SHA256.HashData(Of(mesh)))[..16];

    private static byte[] Of(Mesh mesh)
    {
        var n = mesh.Corners.Length;
        var bytes = new byte[8 + 24 * n + 4 * mesh.Triangles.Length];
        var ints = MemoryMarshal.Cast<byte, int>(bytes.AsSpan());
        (ints[0], ints[1]) = (n, mesh.Triangles.Length);
        var floats = MemoryMarshal.Cast<byte, float>(bytes.AsSpan());
        for (var i = 0; i < n; i++)
        {
            var (p, v) = (mesh.Corners[i], mesh.Normals[i]);
            (floats[2 + 3 * i], floats[3 + 3 * i], floats[4 + 3 * i]) = ((float)p.X, (float)p.Y, (float)p.Z);
            (floats[2 + 3 * (n + i)], floats[3 + 3 * (n + i)], floats[4 + 3 * (n + i)]) = ((float)v.X, (float)v.Y, (float)v.Z);
        }

        mesh.Triangles.AsSpan().CopyTo(ints[(2 + 6 * n)..]);
        return bytes;
    }
}
