using System.Globalization;
using System.Text.RegularExpressions;
using Jackwork.Geometry;
using Microsoft.Playwright;

namespace Jackwork.Tests.Bench;

/// <summary>A closed path as a browser has drawn it: its points in the drawing's own mm, y down, arcs cut into chords.</summary>
/// <remarks>Reads what the page writes: M, L, A of at most half a turn, Z. Arcs after W3C, Scalable Vector Graphics (SVG) 1.1, appendix F.6.5.</remarks>
internal sealed partial class DrawnPath
{
    /// <summary>How far a chord may stray from its arc, mm.</summary>
    private const double Stray = 0.001;

    /// <summary>Gives a path's data, its matrix to the drawing, and what its data attributes and circle say.</summary>
    private const string Seen = """
        what => {
          const svg = document.querySelector('.side svg.figure'), e = svg.querySelector(what);
          const m = svg.getScreenCTM().inverse().multiply(e.getScreenCTM());
          return JSON.stringify([e.getAttribute('d') ?? `M${e.getAttribute('cx')} ${e.getAttribute('cy')}L${e.getAttribute('r')} 0`, m.a, m.b, m.c, m.d, m.e, m.f]);
        }
        """;

    private DrawnPath(double[] matrix, List<Point2> own)
    {
        Matrix = matrix;
        Own = own;
        Points = own.ConvertAll(At);
    }

    /// <summary>The matrix a, b, c, d, e, f from its own coordinates to the drawing's.</summary>
    public double[] Matrix { get; }

    /// <summary>Its points in its own coordinates.</summary>
    public IReadOnlyList<Point2> Own { get; }

    /// <summary>Its points in the drawing; the first loop only.</summary>
    public List<Point2> Points { get; }

    /// <summary>An element of the drawing on a page, by selector.</summary>
    public static async Task<DrawnPath> Of(IPage page, string selector)
    {
        using var seen = System.Text.Json.JsonDocument.Parse(await page.EvaluateAsync<string>(Seen, selector));
        var parts = seen.RootElement.EnumerateArray().ToArray();
        return new([.. parts.Skip(1).Select(p => p.GetDouble())], Read(parts[0].GetString()!));
    }

    /// <summary>A point of its own coordinates in the drawing.</summary>
    public Point2 At(Point2 p) => new(Matrix[0] * p.X + Matrix[2] * p.Y + Matrix[4], Matrix[1] * p.X + Matrix[3] * p.Y + Matrix[5]);

    /// <summary>Distance of a point of the drawing to the loop, mm.</summary>
    public double DistanceTo(Point2 p) => Edges().Min(e => new Segment(e.A, e.B, 0).DistanceTo(p));

    /// <summary>Whether a point of the drawing lies within the loop: an odd number of edges lies to its right.</summary>
    public bool Holds(Point2 p) => Edges().Count(e => (e.A.Y > p.Y) != (e.B.Y > p.Y) && p.X < e.A.X + (p.Y - e.A.Y) / (e.B.Y - e.A.Y) * (e.B.X - e.A.X)) % 2 == 1;

    private IEnumerable<(Point2 A, Point2 B)> Edges()
    {
        for (var i = 0; i < Points.Count; i++)
        {
            var (a, b) = (Points[i], Points[(i + 1) % Points.Count]);
            if (a != b)
            {
                yield return (a, b);
            }
        }
    }

    private static List<Point2> Read(string d)
    {
        var points = new List<Point2>();
        foreach (Match m in Step().Matches(d.Split('Z')[0]))
        {
            var n = m.Groups[2].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(s => double.Parse(s, CultureInfo.InvariantCulture)).ToArray();
            var end = new Point2(n[^2], n[^1]);
            if (m.Groups[1].Value == "A")
            {
                var (start, r) = (points[^1], n[0]);
                var half = 0.5 * (end - start);
                var off = Math.Sqrt(Math.Max(0, r * r - half.Dot(half)));
                var centre = start + half + (n[4] == 1 ? off : -off) * half.Left.Unit();
                var turn = Math.Atan2((start - centre).Cross(end - centre), (start - centre).Dot(end - centre));
                var chords = (int)Math.Ceiling(Math.Abs(turn) / (2 * Math.Acos(1 - Math.Min(1, Stray / r))));
                points.AddRange(Enumerable.Range(1, Math.Max(0, chords - 1)).Select(k => centre + (start - centre).Turned(turn * k / chords)));
            }

            points.Add(end);
        }

        return points;
    }

    [GeneratedRegex("([MLA])([^MLAZ]+)")]
    private static partial Regex Step();
}
