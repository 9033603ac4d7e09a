using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>A ball in a view: no edge, a circle for silhouette.</summary>
internal sealed class BallSolid(Point3 centre, double radius) : ViewSolid
{
    /// <inheritdoc/>
    public override Bounds Bounds => new(centre + -radius * new Vec3(1, 1, 1), centre + radius * new Vec3(1, 1, 1));

    /// <inheritdoc/>
    public override IEnumerable<ViewEdge> Edges
    {
        get
        {
            // Tangents rather than chords, so that no part of the circle lies within the ball.
            var n = Pieces(radius);
            var r = radius / Math.Cos(Math.PI / n);
            Point3 At(int i) => centre + new Vec3(r * Math.Cos(2 * Math.PI * i / n), r * Math.Sin(2 * Math.PI * i / n), 0);
            for (var i = 0; i < n; i++)
            {
                yield return new(At(i), At(i + 1));
            }
        }
    }

    /// <inheritdoc/>
    public override double Top(double x, double y)
    {
        var left = radius * radius - (x - centre.X) * (x - centre.X) - (y - centre.Y) * (y - centre.Y);
        return left > 0 ? centre.Z + Math.Sqrt(left) : double.NegativeInfinity;
    }
}
