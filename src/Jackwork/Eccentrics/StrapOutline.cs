using Jackwork.Geometry;

namespace Jackwork.Eccentrics;

/// <summary>The outline of a strap: a ring round the disc and an eye round its pin, with straight sides that touch both.</summary>
/// <remarks>
/// The ring's radius A about the origin, the eye's B about (L, 0), A &gt;= B, L &gt; A - B: the sides touch both circles where the direction from their middles
/// makes the angle t with x, cos t = (A - B)/L.
/// </remarks>
public static class StrapOutline
{
    /// <summary>The outline, counter-clockwise, mm.</summary>
    /// <param name="ring">Outer radius of the ring A.</param>
    /// <param name="eye">Outer radius of the eye B.</param>
    /// <param name="length">Distance of the eye's middle from the ring's L.</param>
    public static Outline Of(double ring, double eye, double length)
    {
        var t = Math.Acos((ring - eye) / length);
        var pin = new Point2(length, 0);
        var (out1, out2) = (Vec2.FromAngle(-t), Vec2.FromAngle(t));
        return new(
        [
            new(Point2.Origin + ring * out1, pin + eye * out1, 0),
            Segment.Arc(pin, eye, -t, 2 * t),
            new(pin + eye * out2, Point2.Origin + ring * out2, 0),
            Segment.Arc(Point2.Origin, ring, t, Math.PI - t),
            Segment.Arc(Point2.Origin, ring, Math.PI, Math.PI - t),
        ]);
    }
}
