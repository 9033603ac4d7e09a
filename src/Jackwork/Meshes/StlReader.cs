using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>Reads STL files, binary and text. Their normals are passed over: the order of the corners says the same.</summary>
/// <remarks>
/// Binary: 80 bytes of anything, the number n of triangles, then 50 bytes each: normal and three corners as 12 singles, and two
/// bytes of no fixed meaning. Text: <c>solid</c>, <c>facet normal</c>, <c>outer loop</c>, three <c>vertex</c>, <c>endloop</c>,
/// <c>endfacet</c>, <c>endsolid</c>. A binary file may begin with the word solid too, so its length decides.
/// (M. Burns, Automated Fabrication, 1993, section 6.5, from memory.)
/// </remarks>
internal static class StlReader
{
    private const int Head = 84, Each = 50, Normal = 12;

    private const string Damaged = "Export it again; the file is damaged";

    /// <summary>The mesh, in the file's unit.</summary>
    public static TriangleMesh Read(ReadOnlySpan<byte> bytes)
    {
        long count = bytes.Length >= Head ? BinaryPrimitives.ReadUInt32LittleEndian(bytes[80..]) : -1;
        if (count >= 0 && bytes.Length == Head + Each * count)
        {
            return Binary(bytes[Head..], count);
        }

        var text = Encoding.Latin1.GetString(bytes);
        if (text.AsSpan().TrimStart().StartsWith("solid", StringComparison.OrdinalIgnoreCase))
        {
            return Text(text);
        }

        throw new MeshRefusal(
            count < 0
                ? FormattableString.Invariant($"this is no STL file: it has {bytes.Length} bytes and does not begin with the word 'solid'")
                : FormattableString.Invariant($"by its head this STL file has {count} triangles, which take {Head + Each * count} bytes, but it has {bytes.Length} bytes"),
            Damaged);
    }

    private static TriangleMesh Binary(ReadOnlySpan<byte> bytes, long count)
    {
        if (count > MeshLimits.MostTriangles)
        {
            throw new MeshRefusal(MeshCheck.TooMany(count));
        }

        var points = ImmutableArray.CreateBuilder<Point3>((int)(3 * count));
        for (var at = 0; at < bytes.Length; at += Each)
        {
            for (var corner = 1; corner <= 3; corner++)
            {
                var p = bytes[(at + Normal * corner)..];
                points.Add(new(BinaryPrimitives.ReadSingleLittleEndian(p), BinaryPrimitives.ReadSingleLittleEndian(p[4..]), BinaryPrimitives.ReadSingleLittleEndian(p[8..])));
            }
        }

        return Soup(points);
    }

    private static TriangleMesh Text(string text)
    {
        var points = ImmutableArray.CreateBuilder<Point3>();
        var (line, corners, ended) = (0, -1, false);
        foreach (var l in text.AsSpan().EnumerateLines())
        {
            line++;
            var words = l.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            var word = words.Length == 0 ? "" : words[0].ToLowerInvariant();
            switch (word)
            {
                case "" or "outer" or "endloop":
                    break;
                case "solid" or "endsolid" when corners < 0:
                    ended = word == "endsolid";
                    break;
                case "facet" when corners < 0 && !ended:
                    corners = 0;
                    break;
                case "vertex" when corners is >= 0 and < 3 && words.Length == 4:
                    points.Add(MeshText.Point(words, line));
                    corners++;
                    break;
                case "endfacet" when corners == 3:
                    corners = -1;
                    MeshText.Limit(points.Count / 3);
                    break;
                default:
                    throw new MeshRefusal(FormattableString.Invariant($"line {line} of this STL file does not belong there: '{MeshText.Short(l)}'"), Damaged);
            }
        }

        return ended ? Soup(points) : throw new MeshRefusal(FormattableString.Invariant($"this STL file breaks off after {points.Count / 3} triangles, without 'endsolid'"), Damaged);
    }

    // Three points for each triangle, none shared.
    private static TriangleMesh Soup(ImmutableArray<Point3>.Builder points) =>
        new(points.ToImmutable(), [.. Enumerable.Range(0, points.Count / 3).Select(i => new Triangle(3 * i, 3 * i + 1, 3 * i + 2))]);
}
