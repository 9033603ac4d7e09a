using System.Globalization;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Bench.Elements;

/// <summary>Outlines and numbers for drawings in mm, y up: the drawing's group turns them over.</summary>
internal static class Figure
{
    /// <summary>A length or angle for a drawing, to a ten-thousandth.</summary>
    public static string N(double v) => (Math.Round(v, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A rate, which is multiplied by whole turns, to its last digit.</summary>
    public static string Rate(double v) => v.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number for reading, to two decimals.</summary>
    public static string Two(double v) => (Math.Round(v, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A loop with its arcs as arcs.</summary>
    public static string Loop(Outline outline)
    {
        var d = new StringBuilder().Append(CultureInfo.InvariantCulture, $"M{N(outline.Segments[0].Start.X)} {N(outline.Segments[0].Start.Y)}");
        foreach (var s in outline.Segments)
        {
            // An arc of more than half a turn goes in two halves, so that its ends fix it well after rounding.
            ReadOnlySpan<double> stops = Math.Abs(s.Sweep) > Math.PI ? [0.5, 1] : [1];
            foreach (var stop in stops)
            {
                var to = s.PointAt(stop);
                d.Append(s.IsLine ? "L" : $"A{N(s.Radius)} {N(s.Radius)} 0 0 {(s.Bulge > 0 ? 1 : 0)} ").Append(N(to.X)).Append(' ').Append(N(to.Y));
            }
        }

        return d.Append('Z').ToString();
    }

    /// <summary>A line through points.</summary>
    public static string Line(IEnumerable<Point2> points) => "M" + string.Join('L', points.Select(p => $"{N(p.X)} {N(p.Y)}"));

    /// <summary>A circle's path about the origin, for a hole: clockwise.</summary>
    public static string Hole(double radius) => $"M{N(radius)} 0A{N(radius)} {N(radius)} 0 0 0 {N(-radius)} 0A{N(radius)} {N(radius)} 0 0 0 {N(radius)} 0Z";

    /// <summary>A table of numbers as a data attribute carries it.</summary>
    public static string Table(IEnumerable<double> values) => string.Join(' ', values.Select(N));
}
