using System.Globalization;
using System.Text;

namespace Jackwork.Bench.Chart;

/// <summary>Numbers and lines as SVG writes them.</summary>
internal static class Svg
{
    /// <summary>A number to a tenth of a pixel.</summary>
    public static string N(double v) => Math.Round(v, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A number to a tenth, for reading.</summary>
    public static string Read(double v) => (Math.Round(v, 1) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A path through points; what lies on the line between its neighbours is left out.</summary>
    public static string Line(IReadOnlyList<(double X, double Y)> points)
    {
        var d = new StringBuilder();
        for (var i = 0; i < points.Count; i++)
        {
            if (i > 0 && i < points.Count - 1 && Level(points[i - 1].Y, points[i].Y) && Level(points[i].Y, points[i + 1].Y))
            {
                continue;
            }

            d.Append(i == 0 ? 'M' : 'L').Append(N(points[i].X)).Append(' ').Append(N(points[i].Y));
        }

        return d.ToString();
    }

    /// <summary>A path round a ring's middle from one share of a turn to another, clockwise from the top.</summary>
    public static string Sector(double from, double to, double inner, double outer)
    {
        to = Math.Min(to, from + 0.9999);
        var large = to - from > 0.5 ? 1 : 0;
        var (a, b, c, e) = (Round(from, outer), Round(to, outer), Round(to, inner), Round(from, inner));
        return $"M{N(a.X)} {N(a.Y)}A{N(outer)} {N(outer)} 0 {large} 1 {N(b.X)} {N(b.Y)}L{N(c.X)} {N(c.Y)}A{N(inner)} {N(inner)} 0 {large} 0 {N(e.X)} {N(e.Y)}Z";
    }

    /// <summary>A point at a share of a turn, clockwise from the top.</summary>
    public static (double X, double Y) Round(double share, double radius) => (radius * Math.Sin(2 * Math.PI * share), -radius * Math.Cos(2 * Math.PI * share));

    // A twentieth of a pixel is not seen.
    private static bool Level(double a, double b) => Math.Abs(a - b) < 0.05;
}
