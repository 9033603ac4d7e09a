using Jackwork.Geometry;

namespace Jackwork.Eccentrics;

/// <summary>The outline of a strap: a ring round the disc, and a straight arm to an eye round its pin.</summary>
/// <remarks>The ring's radius A about the origin, the eye's B about (L, 0), the arm 2 B wide along x: its sides meet the ring at x = sqrt(A^2 - B^2), at the angle asin(B/A).</remarks>
public static class StrapOutline
{
    /// <summary>The outline, counter-clockwise, mm.</summary>
    /// <param name="ring">Outer radius of the ring A, more than <paramref name="eye"/>.</param>
    /// <param name="eye">Outer radius of the eye B.</param>
    /// <param name="length">Distance of the eye's middle from the ring's L, more than A.</param>
    public static Outline Of(double ring, double eye, double length)
    {
        var root = Math.Sqrt(ring * ring - eye * eye);
        var t = Math.Asin(eye / ring);
        return new(
        [
            new(new(root, -eye), new(length, -eye), 0),
            Segment.Arc(new(length, 0), eye, -Math.PI / 2, Math.PI),
            new(new(length, eye), new(root, eye), 0),
            Segment.Arc(Point2.Origin, ring, t, Math.PI - t),
            Segment.Arc(Point2.Origin, ring, Math.PI, Math.PI - t),
        ]);
    }
}
