using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>Reads the polygons of Wavefront OBJ files: <c>v</c> and <c>f</c>. Names, groups, materials, normals, texture places, points and lines bound no solid and are passed over.</summary>
/// <remarks>
/// Points count from 1; a negative number counts back from the last point so far. A face with more than three corners
/// is cut into triangles. Free-form curves and surfaces are refused.
/// (Wavefront Technologies, Advanced Visualizer Manual, appendix B1, Object Files, from memory.)
/// </remarks>
internal static class ObjReader
{
    /// <summary>Most corners of one face; cutting it takes the square of that.</summary>
    private const int MostCorners = 500;

    private static readonly string[] FreeForm = ["cstype", "curv", "curv2", "surf", "vp"];

    /// <summary>The mesh, in the file's unit.</summary>
    public static TriangleMesh Read(ReadOnlySpan<byte> bytes)
    {
        var points = ImmutableArray.CreateBuilder<Point3>();
        var faces = new List<(int[] Corners, int Line)>();
        var (line, held, count) = (0, "", 0L);
        foreach (var l in Encoding.Latin1.GetString(bytes).AsSpan().EnumerateLines())
        {
            line++;
            if (l.EndsWith("\\"))
            {
                held += l[..^1].ToString() + " ";
                continue;
            }

            var words = (held + l.ToString()).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            held = "";
            if (words.Length == 0)
            {
                continue;
            }

            if (FreeForm.Contains(words[0]))
            {
                throw new MeshRefusal(FormattableString.Invariant($"line {line} has '{words[0]}': free-form curves and surfaces are not read"), "Export it as polygons");
            }

            if (words[0] == "v")
            {
                points.Add(words.Length >= 4 ? MeshText.Point(words, line) : throw Damaged(line, "a point of fewer than three numbers"));
            }
            else if (words[0] == "f")
            {
                faces.Add((Face(words, points.Count, line), line));
                MeshText.Limit(count += faces[^1].Corners.Length - 2);
            }
        }

        var all = points.ToImmutable();
        return new(all, [.. faces.SelectMany(f => Polygon.Cut(all, f.Corners) ?? throw Damaged(f.Line, "a face that crosses itself"))]);
    }

    private static int[] Face(string[] words, int known, int line)
    {
        if (words.Length is < 4 or > MostCorners + 1)
        {
            throw Damaged(line, FormattableString.Invariant($"a face of {words.Length - 1} corners; 3 to {MostCorners} are taken"));
        }

        // The number before the first stroke is the point's; an index that there is not is left for the check.
        return [.. words.Skip(1).Select(w => int.TryParse(w.Split('/')[0], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var i) && i != 0
            ? i > 0 ? i - 1 : known + i
            : throw Damaged(line, $"'{MeshText.Short(w)}' where a point's number is meant"))];
    }

    private static MeshRefusal Damaged(int line, string what) => new(FormattableString.Invariant($"line {line} of this OBJ file has {what}"), "Export it again, as triangles");
}
