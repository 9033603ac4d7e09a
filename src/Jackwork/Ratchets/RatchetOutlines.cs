using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Ratchets;

/// <summary>The outlines of a ratchet wheel and its pawl, mm, counter-clockwise about the wheel's axis, fed counter-clockwise; see <see cref="RatchetSizes"/>.</summary>
public static class RatchetOutlines
{
    /// <summary>Room between the pawl and what it must not touch of the wheel, mm (common practice, no source).</summary>
    public const double Clear = 0.5;

    /// <summary>The wheel: backs, rounded corners and faces in turn.</summary>
    public static Outline Wheel(RatchetSizes s)
    {
        var (corner, before) = (s.OnFace(s.Face), s.Tip.Turned(-s.Law.Pitch));
        var start = corner + s.Rounded * (before - corner).Unit();
        var end = s.OnFace(s.Seat);
        ImmutableArray<Segment> tooth = [new(before, start, 0), new(start, end, -Math.Tan((Math.PI - s.CornerAngle) / 4)), new(end, s.Tip, 0)];
        return new([.. Enumerable.Range(0, s.Law.Teeth).SelectMany(i => tooth.Select(x => x.Turned(i * s.Law.Pitch)))]);
    }

    /// <summary>The pawl as its nose lies on the face at the x axis: from the nose along the wheel, clear of the tip behind, to the boss about its pivot, and back.</summary>
    /// <param name="s">The sizes.</param>
    /// <param name="boss">Radius of the boss, mm.</param>
    public static Outline Pawl(RatchetSizes s, double boss)
    {
        var (top, toe) = (s.OnFace(-s.Depth / 2), s.OnFace(Toe(s)));
        var heel = Heel(s);
        var (low, high) = (Tangent(s.Pivot, boss, heel, 1), Tangent(s.Pivot, boss, top, -1));
        var (from, to) = ((low - s.Pivot).Angle, (high - s.Pivot).Angle);
        var arc = Segment.Arc(s.Pivot, boss, from, to - from + (to < from ? Math.Tau : 0));
        return new([new(top, toe, 0), new(toe, heel, 0), new(heel, arc.Start, 0), arc, new(arc.End, top, 0)]);
    }

    /// <summary>Whether the boss leaves the pawl a body: it neither reaches over the tip behind nor into the wheel.</summary>
    public static bool HasBody(RatchetSizes s, double boss) => s.Pivot.DistanceTo(Heel(s)) > boss && s.PivotRadius - boss >= s.Radius + Clear && Toe(s) > 0;

    // How far down the face the nose reaches, and the place where the pawl passes the tip behind.
    private static double Toe(RatchetSizes s) => s.Seat - Clear;

    private static Point2 Heel(RatchetSizes s) => s.Tip.Turned(-s.Law.Pitch) + Clear * s.Tip.Turned(-s.Law.Pitch).FromOrigin.Unit();

    // Where a line from a point touches a circle, on the left (+1) or right of the way from its middle to the point.
    private static Point2 Tangent(Point2 middle, double radius, Point2 from, int side)
    {
        var d = from - middle;
        return middle + radius * Vec2.FromAngle(d.Angle + side * Math.Acos(radius / d.Length));
    }
}
