using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>A window in a fan-shaped plate, between two arms, the boss and the rim, with rounded corners.</summary>
/// <remarks>The middles of its corners are the corners of the window set in by their radius; where the arms meet outside the boss it has three.</remarks>
internal static class FanWindow
{
    /// <summary>The window, counter-clockwise; null where there is no room for one.</summary>
    /// <param name="behind">Its clockwise side.</param>
    /// <param name="ahead">Its counter-clockwise side, less than half a turn on.</param>
    /// <param name="inner">Radius of the boss, mm.</param>
    /// <param name="outer">Inner radius of the rim, mm.</param>
    /// <param name="corner">Radius of the corners, mm.</param>
    public static Outline? Of(FanSide behind, FanSide ahead, double inner, double outer, double corner)
    {
        var (a, b) = (behind.Inset(corner), ahead.Inset(corner));
        var (low, high) = (inner + corner, outer - corner);
        if (high <= Math.Max(low, Math.Max(Math.Abs(a.Offset), Math.Abs(b.Offset))))
        {
            return null;
        }

        var (pa, pb) = (a.At(high), b.At(high));
        var tip = a.Meet(b);
        var isPointed = tip.FromOrigin.Length > low && tip.FromOrigin.Dot(pa.FromOrigin + pb.FromOrigin) > 0;
        if (pa.FromOrigin.Cross(pb.FromOrigin) <= 0 || (isPointed && (tip.FromOrigin.Length >= high || (pa - tip).Cross(pb - tip) <= 0)))
        {
            return null;
        }

        var path = new LoopPath(Point2.Origin + outer * pa.FromOrigin.Unit());
        path.Arc(Point2.Origin, Point2.Origin + outer * pb.FromOrigin.Unit());
        path.Arc(pb, pb + corner * b.Normal);
        if (isPointed)
        {
            path.Line(tip + corner * b.Normal);
            path.Arc(tip, tip + corner * a.Normal);
        }
        else
        {
            var (qa, qb) = (a.At(low), b.At(low));
            if (qa.FromOrigin.Cross(qb.FromOrigin) <= 0)
            {
                return null;
            }

            path.Line(qb + corner * b.Normal);
            path.Arc(qb, Point2.Origin + inner * qb.FromOrigin.Unit());
            path.Arc(Point2.Origin, Point2.Origin + inner * qa.FromOrigin.Unit());
            path.Arc(qa, qa + corner * a.Normal);
        }

        path.Line(pa + corner * a.Normal);
        path.Arc(pa, Point2.Origin + outer * pa.FromOrigin.Unit());
        return path.Close();
    }
}
