using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>The locus of a point fixed on a member, as seen from the case: for a point of a coupler, its coupler curve.</summary>
public static class Locus
{
    /// <summary>Where the point stands at each step of the performance, mm, with exact derivatives per rad of crank.</summary>
    /// <param name="motion">The solved performance.</param>
    /// <param name="member">Index of the member.</param>
    /// <param name="drawn">The point as drawn, mm.</param>
    public static IReadOnlyList<Jet3> Of(Motion motion, int member, Point3 drawn)
    {
        var members = motion.Machine.Members;
        var path = Path.Between(members, member, Member.Case);
        var states = new MemberState[members.Count];
        var points = new Jet3[motion.Steps];
        for (var i = 0; i < points.Length; i++)
        {
            Residuals.Fill(motion, i, states);
            points[i] = path.Point(Jet3.Constant(drawn), states);
        }

        return points;
    }
}
