using System.Globalization;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>What the mesh formats written as text have in common.</summary>
internal static class MeshText
{
    /// <summary>The point of a line: a word, then three numbers.</summary>
    public static Point3 Point(string[] words, int line) => new(Number(words[1], line), Number(words[2], line), Number(words[3], line));

    /// <summary>The beginning of a line, for messages.</summary>
    public static string Short(ReadOnlySpan<char> line) => new string([.. line.Trim()[..Math.Min(40, line.Trim().Length)].ToArray().Select(c => char.IsControl(c) ? '?' : c)]);

    /// <summary>Ends the reading where there are more triangles than are taken.</summary>
    public static void Limit(long triangles)
    {
        if (triangles > MeshLimits.MostTriangles)
        {
            throw new MeshRefusal(new MeshProblem(MeshFault.TooMany, FormattableString.Invariant($"the mesh has more than the {MeshLimits.MostTriangles} triangles that are taken"), "Make it coarser (decimate it) in the modelling program", MeshLimits.MostTriangles + 1));
        }
    }

    private static double Number(string word, int line) =>
        double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var d)
            ? d
            : throw new MeshRefusal(FormattableString.Invariant($"line {line} has '{Short(word)}' where a number is meant"), "Export it again; the file is damaged");
}
