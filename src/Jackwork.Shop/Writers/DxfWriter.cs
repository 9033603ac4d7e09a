using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Writers;

/// <summary>Writes a drawing as an ASCII drawing exchange file of version AC1015, in mm, with all sections that version asks for.</summary>
/// <remarks>
/// Paths become light polylines with bulges, closed ones with the closed flag; circles stay circles; lettering becomes open
/// polylines along the strokes. Filled regions are written as the closed loops that bound them, without the tint. Colours and pens
/// are not written: each layer has its own colour. Lengths are rounded to 1e-9 mm.
/// </remarks>
public static class DxfWriter
{
    /// <summary>The whole file as ASCII text.</summary>
    public static string Write(Drawing drawing)
    {
        var frame = new DxfFrame(drawing);
        var body = new DxfTags();
        frame.WriteTables(body);
        frame.WriteBlocks(body);
        body.Section("ENTITIES");
        foreach (var mark in drawing.ByLayer.SelectMany(l => l))
        {
            WriteMark(body, mark);
        }

        body.EndSection();
        frame.WriteObjects(body);
        body.Tag(0, "EOF");

        // The header comes first but needs the next free handle.
        var head = new DxfTags();
        frame.WriteHeader(head, body.NextHandle);
        return head.Text + body.Text;
    }

    private static void WriteMark(DxfTags tags, Primitive mark)
    {
        switch (mark)
        {
            case Primitive.Path p:
                WritePolyline(tags, p.Layer, p.Segments, p.Closed);
                break;
            case Primitive.Circle c:
                tags.Entity("CIRCLE", c.Layer, "AcDbCircle");
                tags.Point(10, c.Centre);
                tags.Tag(30, 0.0);
                tags.Tag(40, c.Radius);
                break;
            case Primitive.Region r:
                foreach (var loop in r.Loops)
                {
                    WritePolyline(tags, r.Layer, loop.Segments, true);
                }

                break;
            case Primitive.Text t:
                foreach (var stroke in t.Strokes())
                {
                    WritePolyline(tags, t.Layer, stroke, false);
                }

                break;
        }
    }

    // A bulge belongs to the vertex its segment starts from; an open run has one vertex more than segments.
    private static void WritePolyline(DxfTags tags, string layer, ImmutableArray<Segment> run, bool closed)
    {
        tags.Entity("LWPOLYLINE", layer, "AcDbPolyline");
        tags.Tag(90, closed ? run.Length : run.Length + 1);
        tags.Tag(70, closed ? 1 : 0);
        tags.Tag(43, 0.0);
        foreach (var s in run)
        {
            tags.Point(10, s.Start);
            if (!s.IsLine)
            {
                tags.Tag(42, s.Bulge);
            }
        }

        if (!closed)
        {
            tags.Point(10, run[^1].End);
        }
    }
}
