using Jackwork.Geometry;

namespace Jackwork.Shop.Drawings;

/// <summary>An upright rectangle in a drawing, mm, y up. <c>default</c> is the single point at the origin.</summary>
/// <param name="Min">Lower left corner.</param>
/// <param name="Max">Upper right corner.</param>
public readonly record struct Box(Point2 Min, Point2 Max)
{
    /// <summary>Size along x, mm.</summary>
    public double Width => Max.X - Min.X;

    /// <summary>Size along y, mm.</summary>
    public double Height => Max.Y - Min.Y;

    /// <summary>The middle of the box.</summary>
    public Point2 Centre => Min.Midpoint(Max);

    /// <summary>The box of size <paramref name="width"/> by <paramref name="height"/> mm about <paramref name="centre"/>.</summary>
    public static Box About(Point2 centre, double width, double height) =>
        new(new(centre.X - width / 2, centre.Y - height / 2), new(centre.X + width / 2, centre.Y + height / 2));

    /// <summary>The smallest box about at least one line or arc, mm.</summary>
    public static Box Around(IEnumerable<Segment> segments) => segments.Select(s =>
    {
        // An outline takes in the start of each of its segments; going there and back takes in both ends.
        var (min, max) = new Outline([s, s.Reversed()]).Bounds();
        return new Box(min, max);
    }).Aggregate((a, b) => a.Union(b));

    /// <summary>The smallest box that holds both.</summary>
    public Box Union(Box other) => new(
        new(Math.Min(Min.X, other.Min.X), Math.Min(Min.Y, other.Min.Y)),
        new(Math.Max(Max.X, other.Max.X), Math.Max(Max.Y, other.Max.Y)));

    /// <summary>The box grown by <paramref name="margin"/> mm on all four sides.</summary>
    public Box Grown(double margin) => new(Min - new Vec2(margin, margin), Max + new Vec2(margin, margin));

    /// <summary>Whether <paramref name="p"/> lies in the box or on its edge.</summary>
    public bool Holds(Point2 p) => p.X >= Min.X && p.X <= Max.X && p.Y >= Min.Y && p.Y <= Max.Y;

    /// <summary>The rectangle as a closed loop, counter-clockwise.</summary>
    public Outline Outline() => Geometry.Outline.Polygon([Min, new(Max.X, Min.Y), Max, new(Min.X, Max.Y)]);
}
