namespace Jackwork.Geometry;

/// <summary>Two arcs that leave P0 along T0, meet with a common tangent at J, and reach P1 along T1.</summary>
/// <remarks>
/// With both pairs of tangent legs equal to d, J is halfway between P0 + d T0 and P1 - d T1, which lie 2d apart. With
/// v = P1 - P0 and t = T0 + T1 that gives  v.v - 2 d v.t - 2 d^2 (1 - T0.T1) = 0,  of which the positive root is
/// d = v.v / (v.t + sqrt((v.t)^2 + 2 (1 - T0.T1) v.v)).
/// An arc leaving P along T (left normal N) with curvature k has, for w = X - P and m = N - k w, the signed distance of
/// a point X to its left  (2 w.N - k w.w) / (1 + |m|),  good for k = 0 as well.
/// Sources: K. M. Bolton, "Biarc curves", Computer-Aided Design 7 (1975) 89-92; D. S. Meek and D. J. Walton,
/// "Approximating smooth planar curves by arc splines", J. Comput. Appl. Math. 59 (1995) 221-231. The distance form is ours.
/// </remarks>
internal readonly struct Biarc
{
    /// <summary>Greatest turn of one arc, as the least cosine between its end tangent and its chord: 90 degrees, with room for
    /// rounding.</summary>
    private const double LeastChordCosine = 0.70710678;

    /// <summary>Greatest rise above its chord of an arc that is drawn as a line, and greatest misfit of two arcs drawn as one,
    /// mm.</summary>
    private const double FlatMm = 1e-7;

    private readonly OutlinePoint start;
    private readonly OutlinePoint end;
    private readonly OutlinePoint joint;
    private readonly double bulge1;
    private readonly double bulge2;
    private readonly double curvature1;
    private readonly double curvature2;

    private Biarc(OutlinePoint start, OutlinePoint joint, OutlinePoint end)
    {
        this.start = start;
        this.joint = joint;
        this.end = end;
        var (c1, c2) = (joint.Point - start.Point, end.Point - joint.Point);
        var (x1, x2) = (start.Tangent.Cross(c1), c2.Cross(end.Tangent));
        curvature1 = 2 * x1 / c1.Dot(c1);
        curvature2 = 2 * x2 / c2.Dot(c2);
        bulge1 = x1 / (c1.Length + start.Tangent.Dot(c1));
        bulge2 = x2 / (c2.Length + c2.Dot(end.Tangent));
    }

    /// <summary>Builds the biarc; false where none exists whose two arcs each turn by at most 90 degrees.</summary>
    public static bool TryBetween(in OutlinePoint a, in OutlinePoint b, out Biarc biarc)
    {
        biarc = default;
        var v = b.Point - a.Point;
        var (vv, vt) = (v.Dot(v), v.Dot(a.Tangent + b.Tangent));
        var d = vv / (vt + Math.Sqrt(vt * vt + 2 * Math.Max(0, 1 - a.Tangent.Dot(b.Tangent)) * vv));
        if (!(d > 0) || !double.IsFinite(d))
        {
            return false;
        }

        var j = (a.Point + d * a.Tangent).Midpoint(b.Point - d * b.Tangent);
        var (c1, c2) = (j - a.Point, b.Point - j);
        if (a.Tangent.Dot(c1) < LeastChordCosine * c1.Length || b.Tangent.Dot(c2) < LeastChordCosine * c2.Length)
        {
            return false;
        }

        // Both arcs touch the line between the ends of the legs at J.
        var tangent = (b.Point - d * b.Tangent - (a.Point + d * a.Tangent)).Unit();
        biarc = new(a, new(j, tangent), b);
        return true;
    }

    /// <summary>Whether the biarc passes within <paramref name="tolerance"/> mm of the sample, running the same way.</summary>
    public bool Follows(in OutlinePoint s, double tolerance)
    {
        var second = (s.Point - joint.Point).Dot(joint.Tangent) > 0;
        var (from, k) = second ? (joint, curvature2) : (start, curvature1);
        var w = s.Point - from.Point;
        var n = from.Tangent.Left;
        var m = n - k * w;
        var distance = (2 * w.Dot(n) - k * w.Dot(w)) / (1 + m.Length);
        return Math.Abs(distance) <= tolerance && s.Tangent.Cross(m) > 0;
    }

    /// <summary>Whether the two arcs are one to within the drawing limit.</summary>
    public bool IsOneArc
    {
        get
        {
            var v = end.Point - start.Point;
            var apex = start.Point.Midpoint(end.Point) - 0.5 * WholeBulge * v.Left;
            return apex.DistanceTo(joint.Point) <= FlatMm && 0.25 * Math.Abs(bulge1 - bulge2) * v.Length <= FlatMm;
        }
    }

    /// <summary>Adds one or two segments from <paramref name="from"/> (the start, bit for bit) to the end.</summary>
    public void AddTo(List<Segment> into, Point2 from)
    {
        if (IsOneArc)
        {
            into.Add(Drawn(from, end.Point, WholeBulge));
            return;
        }

        into.Add(Drawn(from, joint.Point, bulge1));
        into.Add(Drawn(joint.Point, end.Point, bulge2));
    }

    // tan((s1 + s2)/4) from tan(s1/4) and tan(s2/4).
    private double WholeBulge => (bulge1 + bulge2) / (1 - bulge1 * bulge2);

    private static Segment Drawn(Point2 a, Point2 b, double bulge) =>
        new(a, b, 0.5 * Math.Abs(bulge) * a.DistanceTo(b) <= FlatMm ? 0 : bulge);
}
