using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Writers;

/// <summary>Writes a drawing as SVG 1.1 at full size: one user unit is one millimetre, one group a layer, arcs as arcs, lettering as strokes.</summary>
/// <remarks>y is negated, so a drawing's origin stays the origin of the file. Numbers are rounded to 0.0001 mm.</remarks>
public static class SvgWriter
{
    /// <summary>The whole file as text; to be stored as UTF-8.</summary>
    public static string Write(Drawing drawing)
    {
        var sheet = drawing.Sheet;
        var svg = new StringBuilder();
        svg.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{N(sheet.Width)}mm\" height=\"{N(sheet.Height)}mm\" ");
        svg.Append(CultureInfo.InvariantCulture, $"viewBox=\"{N(sheet.Min.X)} {N(-sheet.Max.Y)} {N(sheet.Width)} {N(sheet.Height)}\">\n");
        svg.Append("<title>").Append(Escaped(drawing.Title)).Append("</title>\n");
        if (drawing.Ground is { } ground)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{N(sheet.Min.X)}\" y=\"{N(-sheet.Max.Y)}\" width=\"{N(sheet.Width)}\" height=\"{N(sheet.Height)}\" fill=\"{ground.Hex}\"/>\n");
        }

        foreach (var layer in drawing.ByLayer)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<g id=\"{layer.Key}\" fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n");
            foreach (var mark in layer)
            {
                Append(svg, mark);
            }

            svg.Append("</g>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Append(StringBuilder svg, Primitive mark)
    {
        switch (mark)
        {
            case Primitive.Path p:
                svg.Append("<path d=\"");
                AppendRun(svg, p.Segments, p.Closed);
                svg.Append(CultureInfo.InvariantCulture, $"\" {Stroke(p.Pen)}/>\n");
                break;
            case Primitive.Circle c:
                svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(c.Centre.X)}\" cy=\"{N(-c.Centre.Y)}\" r=\"{N(c.Radius)}\" {Stroke(c.Pen)}/>\n");
                break;
            case Primitive.Region r:
                svg.Append("<path d=\"");
                foreach (var loop in r.Loops)
                {
                    AppendRun(svg, loop.Segments, true);
                }

                svg.Append(CultureInfo.InvariantCulture, $"\" fill=\"{r.Fill.Hex}\" fill-rule=\"evenodd\"/>\n");
                break;
            case Primitive.Text t:
                svg.Append(CultureInfo.InvariantCulture, $"<path aria-label=\"{Escaped(t.Value)}\" d=\"");
                foreach (var stroke in t.Strokes())
                {
                    AppendRun(svg, stroke, false);
                }

                svg.Append(CultureInfo.InvariantCulture, $"\" {Stroke(t.Pen)}/>\n");
                break;
        }
    }

    private static void AppendRun(StringBuilder svg, ImmutableArray<Segment> run, bool closed)
    {
        svg.Append(CultureInfo.InvariantCulture, $"M{N(run[0].Start.X)} {N(-run[0].Start.Y)}");
        foreach (var s in run)
        {
            if (s.IsLine)
            {
                svg.Append(CultureInfo.InvariantCulture, $"L{N(s.End.X)} {N(-s.End.Y)}");
                continue;
            }

            // An arc of more than half a turn goes in two halves, so that its end points fix it well after rounding.
            ReadOnlySpan<double> stops = Math.Abs(s.Sweep) > Math.PI ? [0.5, 1] : [1];
            foreach (var t in stops)
            {
                var to = s.PointAt(t);
                svg.Append(CultureInfo.InvariantCulture, $"A{N(s.Radius)} {N(s.Radius)} 0 0 {(s.Bulge > 0 ? 0 : 1)} {N(to.X)} {N(-to.Y)}");
            }
        }

        svg.Append(closed ? "Z" : "");
    }

    private static string Stroke(Pen pen)
    {
        var dashes = pen.Dashes.Length == 0 ? "" : $" stroke-dasharray=\"{string.Join(' ', pen.Dashes.ToArray().Select(N))}\"";
        return $"stroke=\"{pen.Colour.Hex}\" stroke-width=\"{N(pen.Width)}\"{dashes}";
    }

    private static string N(double mm)
    {
        var text = mm.ToString("0.####", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    // The five characters XML reserves, and none of those it forbids (XML 1.0, section 2.2).
    private static string Escaped(string text)
    {
        var b = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => b.Append("&amp;"),
                '<' => b.Append("&lt;"),
                '>' => b.Append("&gt;"),
                '"' => b.Append("&quot;"),
                '\'' => b.Append("&#39;"),
                < ' ' or '\uFFFE' or '\uFFFF' => b.Append(' '),
                _ => b.Append(c),
            };
        }

        return b.ToString();
    }
}
