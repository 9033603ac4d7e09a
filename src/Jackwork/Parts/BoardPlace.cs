using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Where one board of the case stands: its outline in a frame whose z runs out of the case.</summary>
/// <param name="Name">Which side it is.</param>
/// <param name="Frame">x and y in the board, z outward, origin on the case's origin carried into the board's inner face.</param>
/// <param name="Rim">Its outline, mm.</param>
internal sealed record BoardPlace(string Name, Frame Frame, Outline Rim)
{
    /// <summary>All six, left and right between the others, front and back covering their ends.</summary>
    public static IEnumerable<BoardPlace> All(Point3 a, Point3 b, double t)
    {
        Vec3 x = new(1, 0, 0), y = new(0, 1, 0), z = new(0, 0, 1);
        yield return new("left", new(z, y, -x, new(a.X, 0, 0)), Box(a.Z, a.Y, b.Z, b.Y));
        yield return new("right", new(-z, y, x, new(b.X, 0, 0)), Box(-b.Z, a.Y, -a.Z, b.Y));
        yield return new("bottom", new(x, z, -y, new(0, a.Y, 0)), Box(a.X - t, a.Z, b.X + t, b.Z));
        yield return new("top", new(x, -z, y, new(0, b.Y, 0)), Box(a.X - t, -b.Z, b.X + t, -a.Z));
        yield return new("back", new(-x, y, -z, new(0, 0, a.Z)), Box(-b.X - t, a.Y - t, -a.X + t, b.Y + t));
        yield return new("front", new(x, y, z, new(0, 0, b.Z)), Box(a.X - t, a.Y - t, b.X + t, b.Y + t));
    }

    /// <summary>An opening as the design asks for it.</summary>
    public Outline Opening(OpeningSpec o)
    {
        var p = Flat(o.At);
        return o.Hole is { } d
            ? Outline.Circle(p, d / 2)
            : Box(p.X - o.Size![0] / 2, p.Y - o.Size[1] / 2, p.X + o.Size[0] / 2, p.Y + o.Size[1] / 2);
    }

    /// <summary>The hole that a shaft or axle asks for where it crosses the board squarely; null where it doesn't reach it.</summary>
    public Outline? Bearing(Part shaft, double thickness)
    {
        var bounds = shaft.Pieces[0].BoundsIn(Frame.Inverse());
        var (least, most) = (bounds.Least, bounds.Most);
        var (width, height) = (most.X - least.X, most.Y - least.Y);
        var (min, max) = Rim.Bounds();
        var within = least.X > min.X && most.X < max.X && least.Y > min.Y && most.Y < max.Y;
        return within && most.Z > 0 && least.Z < thickness && Math.Abs(width - height) < 1e-6
            ? Outline.Circle(new((least.X + most.X) / 2, (least.Y + most.Y) / 2), (width + Fits.Running) / 2)
            : null;
    }

    /// <summary>Whether a hole leaves wood all round it.</summary>
    public bool Holds(Outline hole)
    {
        var ((a, b), (p, q)) = (Rim.Bounds(), hole.Bounds());
        return p.X > a.X && p.Y > a.Y && q.X < b.X && q.Y < b.Y;
    }

    private Point2 Flat(Point3 p)
    {
        var q = Frame.Undo(p);
        return new(q.X, q.Y);
    }

    private static Outline Box(double x0, double y0, double x1, double y1) => Outline.Polygon([new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)]);
}
