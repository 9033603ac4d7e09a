using Jackwork.Geometry;

namespace Jackwork.Bevels;

/// <summary>The teeth of a bevel wheel rolled out flat from a back cone: a fan that, bent round, lies on the end of the blank.</summary>
/// <remarks>A back cone stands square to the pitch cone, has the slant length m z/(2 cos d) and rolls out to a sector of 2 pi cos(d); z teeth of the virtual wheel fill it.</remarks>
public static class BackCone
{
    /// <summary>Greatest distance between the fan's outline and the true curve, mm.</summary>
    private const double Tolerance = 0.005;

    /// <summary>Length below which an arc is left out, mm.</summary>
    private const double NoLength = 1e-9;

    /// <summary>The fan of the large end, middle of the cone at the origin, mm. What faces the mate as drawn lies on the x axis; the two straight edges meet in a gap of the teeth.</summary>
    /// <param name="wheel">The wheel.</param>
    /// <param name="below">How far the fan goes on below the roots, mm.</param>
    /// <param name="toothFaces">Whether a tooth faces the mate, else a gap.</param>
    /// <param name="scale">Size for that of the large end: <see cref="BevelWheel.Taper"/> for the small end.</param>
    public static Outline Fan(BevelWheel wheel, double below, bool toothFaces, double scale = 1)
    {
        var v = wheel.Virtual;
        var side = v.Side(Tolerance);
        var first = (toothFaces ? 0 : v.Pitch / 2) - wheel.Teeth / 2 * v.Pitch;
        var inner = Math.Max(v.RootRadius - below / scale, v.RootRadius / 2);
        var loop = new List<Segment>();
        void Add(Segment s)
        {
            // Each begins where the one before it ends, to the last bit.
            loop.Add(loop.Count == 0 ? s : s with { Start = loop[^1].End });
        }

        void Arc(double radius, double from, double to)
        {
            if (radius * Math.Abs(to - from) > NoLength)
            {
                Add(Segment.Arc(Point2.Origin, radius, from, to - from));
            }
        }

        for (var i = 0; i < wheel.Teeth; i++)
        {
            var at = first + i * v.Pitch;
            var (foot, tip) = (side[0].Start.FromOrigin.Angle, side[^1].End.FromOrigin.Angle);
            Arc(v.RootRadius, at - v.Pitch / 2, at - foot);
            foreach (var s in side)
            {
                Add(new Segment(new(s.Start.X, -s.Start.Y), new(s.End.X, -s.End.Y), -s.Bulge).Turned(at));
            }

            Arc(v.TipRadius, at - tip, at + tip);
            foreach (var s in side.Reverse())
            {
                Add(s.Reversed().Turned(at));
            }

            Arc(v.RootRadius, at + foot, at + v.Pitch / 2);
        }

        var (from, to) = (first - v.Pitch / 2, first + (wheel.Teeth - 0.5) * v.Pitch);
        Add(new(default, Point2.Origin + inner * Vec2.FromAngle(to), 0));

        // Halves, so that no arc is a whole turn.
        Arc(inner, to, (from + to) / 2);
        Arc(inner, (from + to) / 2, from);
        Add(new(default, loop[0].Start, 0));
        return new([.. loop.Select(s => new Segment(Scaled(s.Start), Scaled(s.End), s.Bulge))]);

        Point2 Scaled(Point2 p) => new(scale * p.X, scale * p.Y);
    }
}
