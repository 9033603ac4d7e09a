using Jackwork.Gears;
using Jackwork.Geometry;

namespace Jackwork.Tests.Solids;

/// <summary>Plates such as a maker cuts: cams, wheels, case boards.</summary>
internal static class Plates
{
    /// <summary>A disc cam of <paramref name="arcs"/> arcs, bulging and hollow, through points of an uneven rise and fall.</summary>
    public static Outline Cam(int arcs, int seed)
    {
        var random = new RandomSolids(seed);
        var (a, b) = (random.Between(0, 6), random.Between(0, 3));
        var points = Enumerable.Range(0, arcs).Select(k =>
        {
            var t = 2 * Math.PI * k / arcs;
            return Point2.Origin + (28 + a * Math.Sin(t) + b * Math.Cos(3 * t)) * Vec2.FromAngle(t);
        }).ToArray();
        return new([.. points.Select((p, k) => new Segment(p, points[(k + 1) % arcs], random.Between(-0.05, 0.1)))]);
    }

    /// <summary>A wheel of involute teeth, module 2.</summary>
    public static Outline Wheel(int teeth) => GearOutline.Of(new SpurGear(2, teeth));

    /// <summary>A star: every other corner hollow.</summary>
    public static Outline Star(int points, double outer, double inner) => Outline.Polygon(
    [
        .. Enumerable.Range(0, 2 * points).Select(k => Point2.Origin + (k % 2 == 0 ? outer : inner) * Vec2.FromAngle(Math.PI * k / points)),
    ]);

    public static Outline Rectangle(double x, double y, double width, double height) =>
        Outline.Polygon([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)]);

    public static IEnumerable<(string Name, Outline Outside, Outline[] Holes)> All()
    {
        for (var seed = 0; seed < 12; seed++)
        {
            yield return ($"cam {seed}", Cam(60, seed), [Outline.Circle(new(1, -2), 4)]);
        }

        foreach (var teeth in (int[])[9, 17, 36, 72])
        {
            yield return ($"wheel {teeth}", Wheel(teeth), [Outline.Circle(default, 3)]);
        }

        yield return ("wheel with six openings", Wheel(36),
        [
            Outline.Circle(default, 4),
            .. Enumerable.Range(0, 6).Select(k => Outline.Circle(Point2.Origin + 20 * Vec2.FromAngle(k * Math.PI / 3), 6)),
        ]);
        yield return ("star", Star(9, 30, 12), [Outline.Circle(default, 5)]);
        yield return ("board", Rectangle(0, 0, 200, 120),
        [
            Rectangle(20, 20, 30, 30), Rectangle(20, 70, 30, 30), Rectangle(100, 20, 30, 80).Reversed(), Outline.Circle(new(75, 60), 8),
            Outline.Circle(new(160, 60), 0.4), Rectangle(150, 100, 30, 15),
        ]);
        yield return ("square", Rectangle(-1, -1, 2, 2), []);
        yield return ("comb", Comb(20), []);
        yield return ("disc", Outline.Circle(default, 25).Reversed(), [Outline.Circle(new(0, 0), 24.8)]);
    }

    private static Outline Comb(int teeth) => Outline.Polygon(
    [
        new(0, 0), new(4 * teeth, 0),
        .. Enumerable.Range(0, teeth).Reverse().SelectMany(k => (Point2[])[new(4 * k + 4, 20), new(4 * k + 2, 20), new(4 * k + 2, 5), new(4 * k, 5)]),
    ]);
}
