using System.Runtime.CompilerServices;

namespace Jackwork.Motion;

/// <summary>What solving one relation at one crank angle gave.</summary>
/// <param name="State">The member's state; where the relation can't close, the nearest it can come, at rest.</param>
/// <param name="Miss">By how much the relation fails to close, mm; zero where it closes.</param>
/// <param name="Branch">The branch that was followed, +1 or -1.</param>
internal readonly record struct Solution(MemberState State, double Miss, int Branch);

/// <summary>What a relation knows of the step before, so that it can follow its branch.</summary>
/// <param name="Branch">Branch at the step before, +1 or -1.</param>
/// <param name="Before">The member's coordinate at the step before.</param>
/// <param name="Advance">Crank angle since then, rad.</param>
internal readonly record struct History(int Branch, Jet Before, double Advance)
{
    /// <summary>Where the coordinate would be by its speed and acceleration at the step before.</summary>
    public double Expected => Before.Value + Advance * (Before.First + 0.5 * Advance * Before.Second);
}

/// <summary>The two equations that every relation between two coordinates comes down to.</summary>
/// <remarks>
/// <para>Pivot: A cos q + B sin q = C. With R^2 = A^2 + B^2 and h = sqrt(R^2 - C^2), cos q = (A C - e B h)/R^2,
/// sin q = (B C + e A h)/R^2, e the branch (+1 or -1); then G = B cos q - A sin q = -e h... with e chosen so that G = e h:
/// cos q = (A C + e B h)/R^2, sin q = (B C - e A h)/R^2. It closes while |C| &lt;= R; h = 0 is a dead centre.
/// Differentiating twice with respect to the crank: G q' = C' - A' cos q - B' sin q,
/// G q'' = C'' - A'' cos q - B'' sin q - 2 q' (B' cos q - A' sin q) + q'^2 C.
/// (J. M. McCarthy and G. S. Soh, Geometric Design of Linkages, 2nd ed., appendix A, eq. A.1 to A.5, for the position.)</para>
/// <para>Slide on a rod: q^2 - 2 b q + c = 0, q = b + e h, h = sqrt(b^2 - c).</para>
/// </remarks>
internal static class Equations
{
    /// <summary>Shortfall still taken as touching, mm: rounding at an exact dead centre, a hundred times below what closure is held to.</summary>
    private const double Touching = 1e-11;

    /// <summary>Share of R below which h counts as a dead centre, so that the branch is chosen by where the motion was heading; 0.06 degrees of transmission angle.</summary>
    private const double NearDeadCentre = 1e-3;

    /// <summary>Solves A cos q + B sin q = C on the branch followed so far; the value returned besides is C beyond R (signed), zero if it closes.</summary>
    public static MemberState Pivot(Jet a, Jet b, Jet c, in History history, out int branch, out double beyond)
    {
        var r2 = a.Value * a.Value + b.Value * b.Value;
        var d = r2 - c.Value * c.Value;
        branch = history.Branch;
        beyond = 0;
        if (d <= 0)
        {
            // Out of reach, or a dead centre to within rounding: the nearest pose.
            var r = Math.Sqrt(r2);
            if (Math.Abs(c.Value) > r + Touching)
            {
                beyond = c.Value - Math.CopySign(r, c.Value);
                return At(Unwrap(Math.Atan2(b.Value * c.Value, a.Value * c.Value), history.Before.Value), 0, 0);
            }

            d = 0;
        }

        var h = Math.Sqrt(d);
        if (h * h < NearDeadCentre * NearDeadCentre * r2 && history.Advance != 0)
        {
            branch = Nearer(a.Value, b.Value, c.Value, h, r2, history);
        }

        var g = branch * h;
        var inv = 1 / r2;
        var cos = (a.Value * c.Value + g * b.Value) * inv;
        var sin = (b.Value * c.Value - g * a.Value) * inv;
        var q = Unwrap(Math.Atan2(sin, cos), history.Before.Value);
        if (d == 0)
        {
            return At(q, history.Before.First, 0);
        }

        var q1 = (c.First - a.First * cos - b.First * sin) / g;
        var q2 = (c.Second - a.Second * cos - b.Second * sin - 2 * q1 * (b.First * cos - a.First * sin) + q1 * q1 * c.Value) / g;
        return new(new(q, q1, q2), new(sin, cos * q1, cos * q2 - sin * q1 * q1), new(cos, -sin * q1, -sin * q2 - cos * q1 * q1));
    }

    /// <summary>Solves q^2 - 2 b q + c = 0 on the branch followed so far; besides, the shortfall c - b^2 (mm^2), zero if it closes.</summary>
    public static MemberState Slide(Jet b, Jet c, in History history, out int branch, out double shortfall)
    {
        var d = Jet.Square(b) - c;
        branch = history.Branch;
        shortfall = 0;
        if (d.Value <= 0)
        {
            shortfall = d.Value < -Touching ? -d.Value : 0;
            return new(new(b.Value, shortfall > 0 ? 0 : history.Before.First, 0), default, default);
        }

        var h = Jet.Sqrt(d);
        if (h.Value < NearDeadCentre * Math.Sqrt(Math.Abs(c.Value) + b.Value * b.Value) && history.Advance != 0)
        {
            branch = Math.Abs(b.Value + h.Value - history.Expected) <= Math.Abs(b.Value - h.Value - history.Expected) ? 1 : -1;
        }

        return new(b + branch * h, default, default);
    }

    private static int Nearer(double a, double b, double c, double h, double r2, in History history)
    {
        var best = history.Branch;
        var least = double.PositiveInfinity;
        foreach (var e in (ReadOnlySpan<int>)[history.Branch, -history.Branch])
        {
            var q = Unwrap(Math.Atan2((b * c - e * a * h) / r2, (a * c + e * b * h) / r2), history.Expected);
            if (Math.Abs(q - history.Expected) < least)
            {
                (best, least) = (e, Math.Abs(q - history.Expected));
            }
        }

        return best;
    }

    private static MemberState At(double q, double first, double second) => MemberState.Of(JointKind.Pivot, new(q, first, second));

    /// <summary>The angle that equals <paramref name="q"/> up to whole turns and lies nearest to <paramref name="near"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Unwrap(double q, double near)
    {
        var off = near - q;
        return Math.Abs(off) <= Math.PI ? q : q + 2 * Math.PI * Math.Round(off / (2 * Math.PI));
    }
}
