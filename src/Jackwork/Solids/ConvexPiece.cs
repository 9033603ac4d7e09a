using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>A convex solid in the coordinates of the part it belongs to.</summary>
/// <remarks>
/// Every shape that parts are cut into is one formula: the hull of discs (centre c_i, radius r_i) that share one axis a,
/// swept along a vector s, then grown all round by a margin m. Its support point in the direction d, the point
/// that lies farthest along d, is
///   p(d) = c_i + r_i e + [s if d . s > 0] + m d/|d|,   with i the largest d . c_i + r_i |d_perp|,
///   d_perp = d - (d . a) a,  e = d_perp/|d_perp|.
/// Radii of zero give a polytope, one disc swept along its axis a cylinder, two discs a frustum or a round-ended bar.
/// Distances are measured on the core (m = 0) and m is taken off afterwards, which is exact
/// (G. van den Bergen, Collision Detection in Interactive 3D Environments, 2003, section 4.3.5, from memory).
/// Immutable; no query allocates.
/// </remarks>
public sealed class ConvexPiece
{
    /// <summary>Directions nearer than this to a disc's axis, rad, have their part across it made square twice, so that a rim point stays in its plane to 1e-13.</summary>
    private const double Steep = 1e-3;

    private readonly Vec3[] centres;
    private readonly double[] radii;
    private readonly Vec3 axis;
    private readonly Vec3 sweep;

    private ConvexPiece(Vec3[] centres, double[] radii, Vec3 axis, Vec3 sweep, double margin)
    {
        (this.centres, this.radii, this.axis, this.sweep, Margin) = (centres, radii, axis, sweep, margin);
        foreach (var c in centres)
        {
            Require(c.Length + sweep.Length, double.IsFinite(c.Length + sweep.Length), "a coordinate", "finite");
        }

        Ball = BallAround();
    }

    /// <summary>Radius, mm, by which the core is grown all round; 0 for shapes with sharp edges.</summary>
    public double Margin { get; }

    /// <summary>Centres of the discs, mm from the part's origin; corners where there are no discs.</summary>
    public ReadOnlySpan<Vec3> Centres => centres;

    /// <summary>Radii of the discs, mm; empty when the core has no curved face.</summary>
    public ReadOnlySpan<double> Radii => radii;

    /// <summary>Unit vector along the axis that all discs share; zero where there are no discs.</summary>
    public Vec3 DiscAxis => axis;

    /// <summary>What discs or corners are swept along, mm; zero for none.</summary>
    public Vec3 Sweep => sweep;

    /// <summary>A ball that holds the piece, in the part's frame; not always the smallest.</summary>
    public Ball Ball { get; }

    /// <summary>True when the core has no curved face, so that distances to it are exact but for rounding.</summary>
    public bool IsPolytope => radii.Length == 0;

    /// <summary>Whether another is the same solid, to the last digit.</summary>
    public bool IsLike(ConvexPiece other) =>
        centres.AsSpan().SequenceEqual(other.centres) && radii.AsSpan().SequenceEqual(other.radii)
        && axis == other.axis && sweep == other.sweep && Margin == other.Margin;

    /// <summary>A ball.</summary>
    /// <param name="centre">Centre, mm.</param>
    /// <param name="radius">Radius, mm, 0 or more.</param>
    public static ConvexPiece Round(Point3 centre, double radius) => Hull([centre], radius);

    /// <summary>A rod with round ends.</summary>
    /// <param name="from">Centre of one end's ball, mm.</param>
    /// <param name="to">Centre of the other, mm; may be the same point.</param>
    /// <param name="radius">Radius, mm, 0 or more.</param>
    public static ConvexPiece Capsule(Point3 from, Point3 to, double radius) => Hull([from, to], radius);

    /// <summary>A cylinder with flat ends.</summary>
    /// <param name="from">Centre of one end, mm.</param>
    /// <param name="to">Centre of the other end, mm, another point.</param>
    /// <param name="radius">Radius, mm, above 0.</param>
    public static ConvexPiece Cylinder(Point3 from, Point3 to, double radius)
    {
        var axis = Axis(from, to);
        return new([From(from)], [Positive(radius, "radius")], axis, to - from, 0);
    }

    /// <summary>A cone frustum with flat ends: a slice of a turned part.</summary>
    /// <param name="from">Centre of one end, mm.</param>
    /// <param name="fromRadius">Radius there, mm, 0 or more.</param>
    /// <param name="to">Centre of the other end, mm, another point.</param>
    /// <param name="toRadius">Radius there, mm, 0 or more; 0 gives a cone's point.</param>
    public static ConvexPiece Frustum(Point3 from, double fromRadius, Point3 to, double toRadius)
    {
        var axis = Axis(from, to);
        return new([From(from), From(to)], [NotNegative(fromRadius, "radius"), NotNegative(toRadius, "radius")], axis, default, 0);
    }

    /// <summary>A flat bar with round ends around two pins, such as a lever: the hull of two discs, as thick as <paramref name="thickness"/>.</summary>
    /// <param name="from">Centre of one round end on the lower face, mm.</param>
    /// <param name="fromRadius">Radius of that end, mm, above 0.</param>
    /// <param name="to">Centre of the other round end on the lower face, mm.</param>
    /// <param name="toRadius">Radius of that end, mm, above 0.</param>
    /// <param name="thickness">Vector from the lower to the upper face, mm, at right angles to both.</param>
    public static ConvexPiece Bar(Point3 from, double fromRadius, Point3 to, double toRadius, Vec3 thickness)
    {
        Positive(thickness.Length, "thickness");
        return new([From(from), From(to)], [Positive(fromRadius, "radius"), Positive(toRadius, "radius")], thickness.Unit(), thickness, 0);
    }

    /// <summary>A prism on the hull of a polygon.</summary>
    /// <param name="frame">The plane of the polygon is the frame's x-y plane.</param>
    /// <param name="polygon">At least three points, mm, either way round; a point within the others' hull is no harm.</param>
    /// <param name="bottom">Lower face, mm along the frame's z.</param>
    /// <param name="top">Upper face, mm along the frame's z, not below <paramref name="bottom"/>.</param>
    public static ConvexPiece Prism(in Frame frame, ReadOnlySpan<Point2> polygon, double bottom, double top)
    {
        Require(polygon.Length, polygon.Length >= 3, "the number of points", "3 or more");
        NotNegative(top - bottom, "thickness");
        var base0 = new Vec3[polygon.Length];
        for (var i = 0; i < base0.Length; i++)
        {
            base0[i] = From(frame.Apply(new Point3(polygon[i].X, polygon[i].Y, bottom)));
        }

        return new(base0, [], default, (top - bottom) * frame.Z, 0);
    }

    /// <summary>A box.</summary>
    /// <param name="frame">Its middle is the frame's origin, its edges run along the frame's axes.</param>
    /// <param name="size">Edge lengths along the frame's axes, mm, 0 or more.</param>
    public static ConvexPiece Box(in Frame frame, Vec3 size)
    {
        var (x, y, z) = (NotNegative(size.X, "edge") / 2, NotNegative(size.Y, "edge") / 2, NotNegative(size.Z, "edge") / 2);
        return Prism(frame, [new(-x, -y), new(x, -y), new(x, y), new(-x, y)], -z, z);
    }

    /// <summary>The hull of points, grown all round.</summary>
    /// <param name="points">At least one point, mm.</param>
    /// <param name="margin">Growth, mm, 0 or more.</param>
    public static ConvexPiece Hull(ReadOnlySpan<Point3> points, double margin = 0)
    {
        Require(points.Length, points.Length >= 1, "the number of points", "1 or more");
        var at = new Vec3[points.Length];
        for (var i = 0; i < at.Length; i++)
        {
            at[i] = From(points[i]);
        }

        return new(at, [], default, default, NotNegative(margin, "margin"));
    }

    /// <summary>The point of the piece that lies farthest along <paramref name="direction"/>, mm.</summary>
    /// <param name="direction">Not zero; its length does not matter.</param>
    public Point3 Support(in Vec3 direction) =>
        default(Point3) + CoreSupport(direction) + (Margin == 0 ? default : Margin * direction.Unit());

    /// <summary>The smallest box along the axes outside <paramref name="frame"/> that holds the piece carried by it.</summary>
    public Bounds BoundsIn(in Frame frame)
    {
        var f = frame;
        double Reach(Vec3 d) => (f.Apply(Support(f.Undo(d))) - default(Point3)).Dot(d);
        return new(
            new(-Reach(new(-1, 0, 0)), -Reach(new(0, -1, 0)), -Reach(new(0, 0, -1))),
            new(Reach(new(1, 0, 0)), Reach(new(0, 1, 0)), Reach(new(0, 0, 1))));
    }

    /// <summary>The support point of the core, from the part's origin.</summary>
    internal Vec3 CoreSupport(in Vec3 d)
    {
        var at = centres;
        var best = 0;
        Vec3 reach = default;
        if (radii.Length == 0)
        {
            var most = at[0].Dot(d);
            for (var i = 1; i < at.Length; i++)
            {
                var along = at[i].Dot(d);
                if (along > most)
                {
                    (most, best) = (along, i);
                }
            }
        }
        else
        {
            var across = d.Across(axis);
            var length = across.Length;
            var most = double.NegativeInfinity;
            for (var i = 0; i < at.Length; i++)
            {
                var along = at[i].Dot(d) + radii[i] * length;
                if (along > most)
                {
                    (most, best) = (along, i);
                }
            }

            reach = radii[best] * Outwards(across, length, d);
        }

        var p = at[best] + reach;
        return sweep.Dot(d) > 0 ? p + sweep : p;
    }

    // d_perp made a unit vector. Near the axis d_perp is mostly rounding, which may lie along the axis: it is made square once more.
    // Straight along the axis every point of a disc is as far, and its middle will do.
    private Vec3 Outwards(Vec3 across, double length, Vec3 d)
    {
        if (length > Steep * Math.Abs(d.Dot(axis)))
        {
            return (1 / length) * across;
        }

        var again = length > 0 ? ((1 / length) * across).Across(axis) : default;
        return again.Length > 0.5 ? again.Unit() : default;
    }

    private Ball BallAround()
    {
        // The middle of the box along the axes, with the farthest point of any disc of either end of the sweep.
        var f = Frame.Identity;
        var box = BoundsIn(f);
        var middle = From(box.Middle);
        var most = 0.0;
        for (var i = 0; i < centres.Length; i++)
        {
            foreach (var end in (ReadOnlySpan<Vec3>)[centres[i] - middle, centres[i] + sweep - middle])
            {
                if (IsPolytope)
                {
                    most = Math.Max(most, end.Length);
                    continue;
                }

                var across = end.Across(axis).Length + radii[i];
                var along = end.Dot(axis);
                most = Math.Max(most, Math.Sqrt(across * across + along * along));
            }
        }

        return new(box.Middle, most + Margin);
    }

    private static Vec3 From(Point3 p) => new(p.X, p.Y, p.Z);

    private static Vec3 Axis(Point3 from, Point3 to)
    {
        Positive(from.DistanceTo(to), "length");
        return (to - from).Unit();
    }

    private static double Positive(double mm, string what)
    {
        Require(mm, mm > 0 && double.IsFinite(mm), what, "above 0 mm");
        return mm;
    }

    private static double NotNegative(double mm, string what)
    {
        Require(mm, mm >= 0 && double.IsFinite(mm), what, "0 mm or more");
        return mm;
    }

    private static void Require(double value, bool held, string what, string allowed)
    {
        if (!held)
        {
            throw new ArgumentOutOfRangeException(what, value, FormattableString.Invariant($"{what} is {value}; allowed: {allowed}."));
        }
    }
}
