using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Guides;

/// <summary>The slot that is cut along a guide's track, on the developed outside of its sleeve: x round it, y along its axis, mm, from the pin's middle as drawn.</summary>
/// <remarks>
/// <para>What a round cutter of the slot's width w leaves whose middle follows the track: walls w/2 to either side, round ends,
/// round an outer corner an arc of w/2, at an inner one the two walls' crossing.</para>
/// <para>The width is that across the cutter. Developed, what lies at x across a cutter on the radius R is R asin(x/R) from its middle, so that a wall
/// along the axis lies R asin(w/2R) - w/2 farther out than drawn: (w/2R)^2 w/12, 0.009 mm for a slot of 3 mm in a sleeve of 16 mm.</para>
/// </remarks>
/// <param name="Track">The track of the pin's middle.</param>
/// <param name="Width">Width w of the slot, mm.</param>
public sealed record GuideSlot(GuideTrack Track, double Width)
{
    /// <summary>Tolerance of the arcs that draw the walls of a join, mm.</summary>
    public const double FitTolerance = 0.002;

    /// <summary>Samples along a join, to which arcs are fitted.</summary>
    private const int Samples = 128;

    /// <summary>Distance of the places along the middle line whose walls are held against each other, mm.</summary>
    private const double Sampling = 0.25;

    /// <summary>Half the width, mm.</summary>
    public double Half => Width / 2;

    /// <summary>Where to drill before the slot is cut, holes of the slot's width: its ends and its sharp corners.</summary>
    public ImmutableArray<Point2> Drills => [PlaceAt(0), .. Track.Joins.Where(j => j.IsCorner).Select(j => PlaceAt(j.At)), PlaceAt(Track.Length)];

    /// <summary>The first join whose inner wall no cutter of the slot's width can leave, since the middle line is rounder than half the width; null for none.</summary>
    public TrackJoin? Undercut => Track.Joins.Cast<TrackJoin?>().FirstOrDefault(j => j is { IsCorner: false, Half: > 0, Rounding: var r } && r < Half);

    /// <summary>From where to where the slot reaches along the axis, mm.</summary>
    public (double From, double To) Reach
    {
        get
        {
            var places = Places().Select(p => p.Place.Y).ToList();
            return (places.Min() - Half, places.Max() + Half);
        }
    }

    /// <summary>The edge of the slot, counter-clockwise. A slot with an <see cref="Undercut"/> has none.</summary>
    public Outline Outline()
    {
        var left = Wall(1);
        left.Reverse();
        var (start, end) = (Track.At(-Track.Drawn), Track.At(Track.Length - Track.Drawn));
        return new([
            .. Wall(-1),
            Segment.Arc(Point2.Origin + end.Place, Half, end.First.Angle - Math.PI / 2, Math.PI),
            .. left.Select(s => s.Reversed()),
            Segment.Arc(Point2.Origin + start.Place, Half, start.First.Angle + Math.PI / 2, Math.PI),
        ]);
    }

    /// <summary>
    /// The least of what stays of the sleeve between two parts of the slot, mm, negative where they run into each other, and the two places along the track, mm
    /// from its beginning. Parts count as two that are farther apart along the track than <paramref name="neighbours"/> mm, or pass each other round the sleeve. Null where there are none.
    /// </summary>
    public (double Wall, double At, double Other)? Nearest(double neighbours)
    {
        var places = Places().ToList();
        var round = Math.Tau * Track.Radius;
        (double Wall, double At, double Other)? nearest = null;
        for (var i = 0; i < places.Count; i++)
        {
            for (var j = i; j < places.Count; j++)
            {
                var d = places[j].Place - places[i].Place;
                var turns = Math.Round(d.X / round);
                if (turns == 0 && places[j].At - places[i].At <= neighbours)
                {
                    continue;
                }

                var wall = Math.Sqrt(Math.Pow(d.X - turns * round, 2) + d.Y * d.Y) - Width;
                if (nearest is not { } n || wall < n.Wall)
                {
                    nearest = (wall, places[i].At, places[j].At);
                }
            }
        }

        return nearest;
    }

    private Point2 PlaceAt(double t) => Point2.Origin + Track.At(t - Track.Drawn).Place;

    private IEnumerable<(double At, Vec2 Place)> Places()
    {
        var n = (int)Math.Ceiling(Track.Length / Sampling);
        return Enumerable.Range(0, n + 1).Select(i => i * Track.Length / n).Select(t => (t, Track.At(t - Track.Drawn).Place));
    }

    // The wall on the left (+1) or right (-1) of the middle line, from the beginning of the track to its end.
    private List<Segment> Wall(int side)
    {
        var wall = new List<Segment>();
        var at = Beside(0, side).Point;
        foreach (var join in Track.Joins.Where(j => j.Half > 0 || j.IsCorner))
        {
            if (join.Half > 0)
            {
                var samples = Enumerable.Range(0, Samples + 1).Select(i => Beside(join.At + (2.0 * i / Samples - 1) * join.Half, side)).ToArray();
                To(samples[0].Point);
                ArcFit.Fit(samples, FitTolerance, wall);
                at = samples[^1].Point;
                continue;
            }

            // Not the track's direction there: rounding may put the place on the leg before or on that after.
            var (corner, before) = (PlaceAt(join.At), Track.Direction(join.Leg - 1));
            if (side * join.Turn > 0)
            {
                To(corner + side * Half / Math.Cos(join.Turn / 2) * before.Turned(join.Turn / 2).Left);
                continue;
            }

            To(corner + side * Half * before.Left);
            wall.Add(Segment.Arc(corner, Half, (side * before.Left).Angle, join.Turn));
            at = wall[^1].End;
        }

        To(Beside(Track.Length, side).Point);
        return wall;

        void To(Point2 next)
        {
            if (next.DistanceTo(at) > 1e-9)
            {
                wall.Add(new(at, next, 0));
            }

            at = next;
        }
    }

    private OutlinePoint Beside(double t, int side)
    {
        var p = Track.At(t - Track.Drawn);
        var d = p.First.Unit();
        return new(Point2.Origin + p.Place + side * Half * d.Left, d);
    }
}
