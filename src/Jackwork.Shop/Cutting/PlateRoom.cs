using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Shop.Cutting;

/// <summary>A rectangle on a plate where a block of lettering goes.</summary>
/// <param name="Centre">Its middle, mm.</param>
/// <param name="Width">Along the reading direction, mm.</param>
/// <param name="Height">Across it, mm.</param>
/// <param name="Turn">Reading direction, rad from x.</param>
internal readonly record struct Patch(Point2 Centre, double Width, double Height, double Turn)
{
    /// <summary>A segment as seen from the patch: its middle the origin, its reading direction x.</summary>
    public Segment Seen(Segment s) => s.Moved(Point2.Origin - Centre).Turned(-Turn);

    /// <summary>The four sides.</summary>
    public IEnumerable<Segment> Sides()
    {
        var (centre, turn) = (Centre, Turn);
        return Drawings.Box.About(Point2.Origin, Width, Height).Outline().Segments.Select(s => s.Turned(turn).Moved(centre.FromOrigin));
    }

    /// <summary>Whether <paramref name="p"/> lies in the patch.</summary>
    public bool Holds(Point2 p)
    {
        var seen = (p - Centre).Turned(-Turn);
        return Math.Abs(seen.X) <= Width / 2 && Math.Abs(seen.Y) <= Height / 2;
    }
}

/// <summary>Looks for free rectangles on a plate, between bore and rim, clear of holes, marks and what is already placed.</summary>
/// <param name="outline">The plate's rim, round the origin.</param>
/// <param name="bore">Radius of the bore, mm; 0 for none.</param>
/// <param name="holes">Bore and holes.</param>
/// <param name="openings">What else is cut out.</param>
/// <param name="marks">Engraved lines to keep clear of.</param>
internal sealed class PlateRoom(Outline outline, double bore, ImmutableArray<Hole> holes, ImmutableArray<Outline> openings, ImmutableArray<Segment> marks)
{
    /// <summary>Clear distance kept between lettering and any edge, mm: the rounding of an edge and the wander of a cutter.</summary>
    public const double Clear = 1;

    // Directions tried round the plate and distances tried along each: every 5 degrees, and 16 places from bore to rim.
    private const int Directions = 72;
    private const int Distances = 16;

    private readonly List<Patch> taken = [];

    /// <summary>A free patch of the given size, mm, best place first: level, near the top, half way from bore to rim; none when there is no room.</summary>
    public Patch? Find(double width, double height)
    {
        var places =
            from i in Enumerable.Range(0, Directions)
            let angle = 2 * Math.PI * i / Directions
            from turn in new[] { Upright(angle - Math.PI / 2), Upright(angle) }
            orderby Math.Round(Math.Abs(turn) * Directions), FromTop(angle)
            select (angle, turn);
        foreach (var (angle, turn) in places)
        {
            var rim = Crossing.AlongRay(outline, angle);
            foreach (var share in Enumerable.Range(0, Distances).Select(i => (i + 0.5) / Distances).OrderBy(s => Math.Abs(s - 0.5)))
            {
                // No point between the origin and the first crossing of the rim is outside the plate.
                var centre = Point2.Origin + (bore + share * (rim - bore)) * Vec2.FromAngle(angle);
                var patch = new Patch(centre, width, height, turn);
                if (IsFree(patch))
                {
                    return patch;
                }
            }
        }

        return null;
    }

    /// <summary>Marks a patch as used.</summary>
    public void Take(Patch patch) => taken.Add(patch);

    private bool IsFree(Patch patch)
    {
        var (halfWidth, halfHeight) = (patch.Width / 2 + Clear, patch.Height / 2 + Clear);
        foreach (var h in holes)
        {
            var seen = (h.Centre - patch.Centre).Turned(-patch.Turn);
            var gap = new Vec2(Math.Max(0, Math.Abs(seen.X) - halfWidth), Math.Max(0, Math.Abs(seen.Y) - halfHeight));
            if (gap.Length <= h.Diameter / 2)
            {
                return false;
            }
        }

        return !openings.Any(o => o.Segments.Any(Crossed) || o.DistanceTo(patch.Centre) is > 0 and var clear && Crossing.Winding(o, patch.Centre, clear) != 0)
            && !marks.Any(Crossed) && !outline.Segments.Any(Crossed)
            && !taken.Any(t => t.Holds(patch.Centre) || t.Sides().Any(Crossed));

        bool Crossed(Segment s) => Crossing.Meets(patch.Seen(s), halfWidth, halfHeight);
    }

    private static double FromTop(double angle) => Math.Abs(Math.IEEERemainder(angle - Math.PI / 2, 2 * Math.PI));

    // The same line of lettering, turned so that it does not stand on its head: within a quarter turn of x.
    private static double Upright(double turn) => Math.IEEERemainder(turn, Math.PI);
}
