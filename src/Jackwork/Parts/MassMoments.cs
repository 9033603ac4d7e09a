using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Mass, centre and second moments of a body, in the coordinates that it is drawn in.</summary>
/// <remarks>
/// S = integral of (x - c)(x - c)^T dm about the centre c. A tetrahedron with a corner at the origin and the others at a, b, c has the
/// signed volume v = a . (b x c)/6, and over it
///   integral x dV = v (a + b + c)/4,   integral x x^T dV = v/20 (s s^T + a a^T + b b^T + c c^T),   s = a + b + c
/// (F. Tonon, Explicit exact formulas for the 3-D tetrahedron inertia tensor in terms of its vertex coordinates, J. Math. Stat. 1 (2005) 8,
/// from memory); a closed surface is their sum over its triangles. A part counts as evenly filled.
/// <para>With S = L L^T (Cholesky) and l_i the columns of L, the six points c + l_i sqrt(3/m) and c - l_i sqrt(3/m) with a sixth of the mass each have the same mass, centre
/// and moments, so they stand for the body wherever it goes (equimomental bodies: E. J. Routh, Dynamics of a System of Rigid Bodies, chapter 1, from memory).</para>
/// </remarks>
/// <param name="Mass">Mass, g.</param>
/// <param name="Centre">Centre of mass, mm.</param>
/// <param name="Second">Second moments about the centre, g mm^2.</param>
internal readonly record struct MassMoments(double Mass, Point3 Centre, Dyad Second)
{
    /// <summary>How far a round face may depart from the polygon that it is taken as, mm: less than a thousandth of a moment for what is 10 mm thick.</summary>
    private const double Sagitta = 0.002;

    /// <summary>Share of a body's greatest moment below which one is rounding.</summary>
    private const double Thin = 1e-12;

    /// <summary>Six points of equal mass that stand for the body, with the mass of each, g.</summary>
    public IEnumerable<(Point3 At, double Grams)> Points()
    {
        var (centre, grams, reach) = (Centre, Mass / 6, Math.Sqrt(3 / Mass));
        return Mass > 0 ? Columns().SelectMany(l => ((Point3, double)[])[(centre + reach * l, grams), (centre + -reach * l, grams)]) : [];
    }

    // The columns of L; those of a body without breadth that way are nothing.
    private Vec3[] Columns()
    {
        var s = Second;
        var least = Thin * (s.XX + s.YY + s.ZZ);
        var first = Column(s.XX, new(s.XX, s.XY, s.XZ), least);
        s += -1 * Dyad.Of(first);
        var second = Column(s.YY, new(0, s.YY, s.YZ), least);
        s += -1 * Dyad.Of(second);
        return [first, second, Column(s.ZZ, new(0, 0, s.ZZ), least)];
    }

    private static Vec3 Column(double pivot, Vec3 row, double least) => pivot > least ? 1 / Math.Sqrt(pivot) * row : default;

    /// <summary>The moments of a part.</summary>
    public static MassMoments Of(Part part)
    {
        var origin = part.Box.Middle;
        var (volume, first, second) = (0.0, default(Vec3), default(Dyad));
        foreach (var (a, b, c) in Triangles(part).Select(t => (t.A - origin, t.B - origin, t.C - origin)))
        {
            var v = a.Dot(b.Cross(c)) / 6;
            var s = a + b + c;
            volume += v;
            first += v / 4 * s;
            second += v / 20 * (Dyad.Of(s) + Dyad.Of(a) + Dyad.Of(b) + Dyad.Of(c));
        }

        if (!(volume > 0))
        {
            return new(part.Mass, origin, default);
        }

        var centre = 1 / volume * first;
        return new(part.Mass, origin + centre, part.Mass * (1 / volume * second + -1 * Dyad.Of(centre)));
    }

    /// <summary>Two bodies as one.</summary>
    public static MassMoments operator +(MassMoments a, MassMoments b)
    {
        var mass = a.Mass + b.Mass;
        if (mass == 0)
        {
            return a;
        }

        var apart = b.Centre - a.Centre;
        return new(mass, a.Centre + b.Mass / mass * apart, a.Second + b.Second + a.Mass * b.Mass / mass * Dyad.Of(apart));
    }

    private static IEnumerable<(Point3 A, Point3 B, Point3 C)> Triangles(Part part) => (part.Mesh ?? part.Surface) is { } mesh
        ? mesh.Triangles.Select(mesh.Corners)
        : Tessellation.Of(part.Pieces, Sagitta).SelectMany(f => Enumerable.Range(1, f.Length - 2).Select(i => (f[0], f[i], f[i + 1])));
}
