using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>A plate with holes, a cylinder or a round-ended bar in a view: loops swept along the frame's z.</summary>
internal sealed class PrismSolid : ViewSolid
{
    /// <summary>A joint of the outline that turns by more than this, rad, is an edge; less is a smooth curve's fit.</summary>
    private const double SharpTurn = 5 * Math.PI / 180;

    private readonly Frame frame;
    private readonly ImmutableArray<Corner[]> loops;
    private readonly double bottom;
    private readonly double top;
    private readonly bool rims;

    // The viewer's direction in the frame.
    private readonly Vec3 sight;
    private readonly List<double> crossings = [];

    /// <summary>Takes a plate that stands as it does in the view.</summary>
    /// <param name="plate">Its frame is seen from the view.</param>
    /// <param name="rims">Whether the edges of its two faces are to be drawn; not those of a rod that ends in balls.</param>
    public PrismSolid(PlateShape plate, bool rims = true)
    {
        (frame, bottom, top, this.rims) = (plate.Frame, plate.Bottom, plate.Top, rims);
        loops = [.. plate.Holes.Select(h => Flat(h, false)).Prepend(Flat(plate.Rim, true))];
        sight = frame.Undo(new Vec3(0, 0, 1));
        Bounds = loops[0].SelectMany(c => (Point3[])[At(c, bottom), At(c, top)]).Select(p => new Bounds(p, p)).Aggregate((a, b) => a.Around(b));
    }

    /// <inheritdoc/>
    public override Bounds Bounds { get; }

    /// <inheritdoc/>
    public override IEnumerable<ViewEdge> Edges
    {
        get
        {
            foreach (var loop in loops)
            {
                foreach (var (level, seen) in rims ? [(bottom, sight.Z < -Square), (top, sight.Z > Square)] : Array.Empty<(double, bool)>())
                {
                    for (var i = 0; i < loop.Length; i++)
                    {
                        var (a, b) = (loop[i], loop[(i + 1) % loop.Length]);
                        if (seen || Faces(a, b))
                        {
                            yield return new(At(a, level), At(b, level), seen);
                        }
                    }
                }

                if (Math.Abs(sight.X) + Math.Abs(sight.Y) < Square)
                {
                    continue;
                }

                for (var i = 0; i < loop.Length; i++)
                {
                    var (before, here, after) = (loop[(i + loop.Length - 1) % loop.Length], loop[i], loop[(i + 1) % loop.Length]);
                    if (here.Sharp ? Faces(before, here) || Faces(here, after) : Faces(before, here) != Faces(here, after))
                    {
                        yield return new(At(here, bottom), At(here, top));
                    }
                }
            }
        }
    }

    /// <inheritdoc/>
    public override double Top(double x, double y)
    {
        var o = frame.Undo(new Point3(x, y, 0));
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        if (Math.Abs(sight.Z) > Square)
        {
            var (a, b) = ((bottom - o.Z) / sight.Z, (top - o.Z) / sight.Z);
            (low, high) = (Math.Min(a, b), Math.Max(a, b));
        }
        else if (o.Z < bottom || o.Z > top)
        {
            return double.NegativeInfinity;
        }

        var along = new Vec2(sight.X, sight.Y);
        var length = along.Length;
        if (length < Square)
        {
            return Holds(new(o.X, o.Y)) ? high : double.NegativeInfinity;
        }

        Cross(new(o.X, o.Y), along);
        for (var i = crossings.Count - 1; i > 0; i -= 2)
        {
            var (from, to) = (Math.Max(low, crossings[i - 1]), Math.Min(high, crossings[i]));
            if (from < to)
            {
                return to;
            }
        }

        return double.NegativeInfinity;
    }

    // Places along the line, as multiples of its direction, at which it crosses the loops. A corner counts as left of the line or
    // not, the same for both its sides, so their number is even.
    private void Cross(Point2 o, Vec2 along)
    {
        crossings.Clear();
        foreach (var loop in loops)
        {
            var last = loop[^1].At - o;
            var lastSide = along.Cross(last);
            foreach (var corner in loop)
            {
                var p = corner.At - o;
                var side = along.Cross(p);
                if (side < 0 != lastSide < 0)
                {
                    var q = last + lastSide / (lastSide - side) * (p - last);
                    crossings.Add(q.Dot(along) / along.Dot(along));
                }

                (last, lastSide) = (p, side);
            }
        }

        crossings.Sort();
    }

    private bool Holds(Point2 p)
    {
        Cross(p, new(1, 0));
        return crossings.Count(t => t > 0) % 2 == 1;
    }

    // Whether a wall is turned to the viewer; one seen edge on is not.
    private bool Faces(Corner a, Corner b) => new Vec2(sight.X, sight.Y).Cross((b.At - a.At).Unit()) > Square;

    private Point3 At(Corner c, double level) => frame.Apply(new Point3(c.At.X, c.At.Y, level));

    // The loop's corners with the solid on the left.
    private static Corner[] Flat(Outline loop, bool solidInside)
    {
        var outline = loop.SignedArea > 0 == solidInside ? loop : loop.Reversed();
        var corners = new List<Corner>();
        var last = outline.Segments[^1];
        foreach (var s in outline.Segments)
        {
            var (before, after) = (last.TangentAt(1), s.TangentAt(0));
            var sharp = Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) > SharpTurn;
            var n = s.IsLine ? 1 : (int)Math.Ceiling(Math.Abs(s.Sweep) / (2 * Math.PI) * Pieces(s.Radius));
            for (var i = 0; i < n; i++)
            {
                corners.Add(new(s.PointAt((double)i / n), sharp && i == 0));
            }

            last = s;
        }

        return [.. corners];
    }

    private readonly record struct Corner(Point2 At, bool Sharp);
}
