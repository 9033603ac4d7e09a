using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Drops;

/// <summary>Mass, centre and second moments of a body, in the coordinates that it is drawn in.</summary>
/// <remarks>
/// S = integral of (x - c)(x - c)^T dm about the centre c. A tetrahedron with a corner at the origin and the others at a, b, c has the
/// signed volume v = a . (b x c)/6, and over it
///   integral x dV = v (a + b + c)/4,   integral x x^T dV = v/20 (s s^T + a a^T + b b^T + c c^T),   s = a + b + c
/// (F. Tonon, Explicit exact formulas for the 3-D tetrahedron inertia tensor in terms of its vertex coordinates, J. Math. Stat. 1 (2005) 8,
/// from memory); a closed surface is their sum over its triangles. A part counts as evenly filled.
/// </remarks>
/// <param name="Mass">Mass, g.</param>
/// <param name="Centre">Centre of mass, mm.</param>
/// <param name="Second">Second moments about the centre, g mm^2.</param>
internal readonly record struct MassMoments(double Mass, Point3 Centre, Dyad Second)
{
    /// <summary>How far a round face may depart from the polygon that it is taken as, mm: less than a thousandth of a moment for what is 10 mm thick.</summary>
    private const double Sagitta = 0.002;

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

    private static IEnumerable<(Point3 A, Point3 B, Point3 C)> Triangles(Part part) => part.Mesh is { } mesh
        ? mesh.Triangles.Select(mesh.Corners)
        : Tessellation.Of(part.Pieces, Sagitta).SelectMany(f => Enumerable.Range(1, f.Length - 2).Select(i => (f[0], f[i], f[i + 1])));
}
