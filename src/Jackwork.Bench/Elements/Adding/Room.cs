using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Bench.Elements.Adding;

/// <summary>Where there is room for something new among the parts as drawn: told by their boxes, so near enough to begin with; the checks say the rest.</summary>
/// <param name="parts">The parts.</param>
internal sealed class Room(IReadOnlyList<Part> parts)
{
    /// <summary>Room kept on every side, mm.</summary>
    private const double Spare = 1;

    // Shafts and axles run through whatever sits on them; boards get their holes.
    private readonly Part[] inTheWay = [.. parts.Where(p => p.Kind is not (PartKind.Shaft or PartKind.Axle or PartKind.Board or PartKind.Bush))];

    /// <summary>The inside of the case: what its boards stand round; null where there is none.</summary>
    public Bounds? Inside { get; } = parts.Where(p => p.Kind == PartKind.Board).Select(p => (Bounds?)p.Box).Aggregate((Bounds?)null, (all, box) => all is { } a && box is { } b ? a.Around(b) : box);

    /// <summary>How many parts are in the way of a box; one outside the case has a hundred more.</summary>
    public int Crowd(Bounds box)
    {
        Bounds wide = new(box.Least + new Vec3(-Spare, -Spare, -Spare), box.Most + new Vec3(Spare, Spare, Spare));
        var outside = Inside is { } i && !(i.Meets(new(box.Least, box.Least)) && i.Meets(new(box.Most, box.Most))) ? 100 : 0;
        return outside + inTheWay.Count(p => p.Box.Meets(wide));
    }

    /// <summary>The first of the least crowded choices.</summary>
    public T Best<T>(IEnumerable<T> choices, Func<T, Bounds> box) => choices.MinBy(c => Crowd(box(c)))!;

    /// <summary>How far the shaft of a member reaches along a direction from a point, mm; 40 to both sides where it has none.</summary>
    public (double From, double To) Reach(int member, Point3 through, Vec3 along) =>
        parts.FirstOrDefault(p => p.Kind is PartKind.Shaft or PartKind.Axle && (p.Bears ?? p.Body.Member) == member) is { } shaft
            ? ((shaft.Box.Least - through).Dot(along), (shaft.Box.Most - through).Dot(along)) is var (a, b) && a < b ? (a, b) : (b, a)
            : (-40, 40);

    /// <summary>The box round a disc.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="axis">Its axis, unit.</param>
    /// <param name="radius">Its radius, mm.</param>
    /// <param name="behind">How far it reaches against the axis, mm.</param>
    /// <param name="ahead">How far along it, mm.</param>
    public static Bounds Disc(Point3 middle, Vec3 axis, double radius, double behind, double ahead)
    {
        Vec3 across = new(radius * Sine(axis.X), radius * Sine(axis.Y), radius * Sine(axis.Z));
        var (a, b) = (middle + -behind * axis, middle + ahead * axis);
        return new Bounds(a + -across, a + across).Around(new(b + -across, b + across));
    }

    /// <summary>The box round points, with room beside them.</summary>
    public static Bounds Points(double beside, params ReadOnlySpan<Point3> points)
    {
        Vec3 room = new(beside, beside, beside);
        var box = new Bounds(points[0] + -room, points[0] + room);
        foreach (var p in points[1..])
        {
            box = box.Around(new(p + -room, p + room));
        }

        return box;
    }

    private static double Sine(double cosine) => Math.Sqrt(Math.Max(0, 1 - cosine * cosine));
}
