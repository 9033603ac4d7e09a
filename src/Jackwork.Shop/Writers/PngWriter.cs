using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using SkiaSharp;
using static System.FormattableString;

namespace Jackwork.Shop.Writers;

/// <summary>Writes a drawing as a PNG picture, antialiased. Lettering is strokes, so no font is needed and the picture is the same everywhere.</summary>
public static class PngWriter
{
    /// <summary>Largest side of a picture, pixels; larger ones would need gigabytes of memory.</summary>
    public const int LargestSide = 16384;

    /// <summary>The picture as PNG bytes, the sheet at <paramref name="pixelsPerMm"/>; each side rounded up to whole pixels.</summary>
    public static byte[] Write(Drawing drawing, double pixelsPerMm)
    {
        var width = Math.Ceiling(drawing.Sheet.Width * pixelsPerMm);
        var height = Math.Ceiling(drawing.Sheet.Height * pixelsPerMm);
        if (!(width is >= 1 and <= LargestSide && height is >= 1 and <= LargestSide))
        {
            throw new ArgumentOutOfRangeException(nameof(pixelsPerMm), Invariant($"{pixelsPerMm} pixels per mm make a picture of {width} by {height} pixels; each side must be 1 to {LargestSide} pixels."));
        }

        using var surface = SKSurface.Create(new SKImageInfo((int)width, (int)height, SKColorType.Rgba8888, SKAlphaType.Premul));
        var canvas = surface.Canvas;
        canvas.Clear(drawing.Ground is { } ground ? Ink(ground) : SKColors.Transparent);
        canvas.Scale((float)pixelsPerMm, (float)pixelsPerMm);
        foreach (var mark in drawing.ByLayer.SelectMany(l => l))
        {
            Paint(canvas, mark, drawing.Sheet);
        }

        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static void Paint(SKCanvas canvas, Primitive mark, Box sheet)
    {
        switch (mark)
        {
            case Primitive.Path p:
                Stroke(canvas, p.Pen, b => Append(b, p.Segments, p.Closed, sheet));
                break;
            case Primitive.Circle c:
                var o = On(sheet, c.Centre);
                Stroke(canvas, c.Pen, b => b.AddCircle(o.X, o.Y, (float)c.Radius, SKPathDirection.Clockwise));
                break;
            case Primitive.Region r:
                using (var paint = new SKPaint { IsAntialias = true, Color = Ink(r.Fill), Style = SKPaintStyle.Fill })
                using (var b = new SKPathBuilder { FillType = SKPathFillType.EvenOdd })
                {
                    foreach (var loop in r.Loops)
                    {
                        Append(b, loop.Segments, true, sheet);
                    }

                    using var path = b.Detach();
                    canvas.DrawPath(path, paint);
                }

                break;
            case Primitive.Text t:
                Stroke(canvas, t.Pen, b =>
                {
                    foreach (var stroke in t.Strokes())
                    {
                        Append(b, stroke, false, sheet);
                    }
                });
                break;
        }
    }

    private static void Stroke(SKCanvas canvas, Pen pen, Action<SKPathBuilder> draw)
    {
        using var builder = new SKPathBuilder();
        draw(builder);
        using var path = builder.Detach();
        using var dash = pen.Dashes.Length == 0 ? null : SKPathEffect.CreateDash([.. pen.Dashes.ToArray().Select(d => (float)d)], 0);
        using var paint = new SKPaint
        {
            IsAntialias = true,
            Color = Ink(pen.Colour),
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)pen.Width,
            StrokeCap = SKStrokeCap.Round,
            StrokeJoin = SKStrokeJoin.Round,
            PathEffect = dash,
        };
        canvas.DrawPath(path, paint);
    }

    private static void Append(SKPathBuilder path, ImmutableArray<Segment> run, bool closed, Box sheet)
    {
        path.MoveTo(On(sheet, run[0].Start));
        foreach (var s in run)
        {
            if (s.IsLine)
            {
                path.LineTo(On(sheet, s.End));
                continue;
            }

            var radius = (float)s.Radius;
            var turn = s.Bulge > 0 ? SKPathDirection.CounterClockwise : SKPathDirection.Clockwise;
            path.ArcTo(new SKPoint(radius, radius), 0, SKPathArcSize.Small, turn, On(sheet, s.PointAt(0.5)));
            path.ArcTo(new SKPoint(radius, radius), 0, SKPathArcSize.Small, turn, On(sheet, s.End));
        }

        if (closed)
        {
            path.Close();
        }
    }

    private static SKPoint On(Box sheet, Point2 p) => new((float)(p.X - sheet.Min.X), (float)(sheet.Max.Y - p.Y));

    private static SKColor Ink(Colour c) => new(c.Red, c.Green, c.Blue);
}
