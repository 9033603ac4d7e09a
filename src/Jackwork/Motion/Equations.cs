using System.Runtime.CompilerServices;

namespace Jackwork.Motion;

/// <summary>The two equations that every relation between two coordinates comes down to.</summary>
/// <remarks>
/// <para>Pivot: A cos q + B sin q = C. With R^2 = A^2 + B^2, h = sqrt(R^2 - C^2) and the branch e (+1 or -1), let
/// G = B cos q - A sin q = e h; then cos q = (A C + G B)/R^2, sin q = (B C - G A)/R^2. It closes while |C| &lt;= R; h = 0
/// is a dead centre. Differentiating twice with respect to the crank: G q' = C' - A' cos q - B' sin q,
/// G q'' = C'' - A'' cos q - B'' sin q - 2 q' (B' cos q - A' sin q) + q'^2 C.
/// (J. M. McCarthy and G. S. Soh, Geometric Design of Linkages, 2nd ed., appendix A, eq. A.1 to A.5, for the position.)</para>
/// <para>Slide on a rod of length L: q^2 - 2 b q + c = 0, q = b + e h, h = sqrt(b^2 - c), h/L the sine of the transmission angle.</para>
/// <para>Through a dead centre (h^2 touches zero) the smooth motion changes e. The speed there is a root of the second
/// equation with G = 0: C q'^2 - 2 (B' cos q - A' sin q) q' + C'' - A'' cos q - B'' sin q = 0, or for a slide
/// q' = b' +- sqrt((h^2)''/2).</para>
/// </remarks>
internal static class Equations
{
    /// <summary>Share of R by which |C| may pass it and still count as touching (for a slide, of L^2): rounding at an exact dead centre, far below what closure is held to.</summary>
    private const double Touching = 1e-13;

    /// <summary>Share of R (for a slide, of L) below which h counts as zero: nearer to a dead centre rounding spoils q'' by more than it is worth.</summary>
    private const double AtDeadCentre = 3e-6;

    /// <summary>How much better the other branch must continue the motion so far before it is taken.</summary>
    private const double FarBetter = 0.01;

    /// <summary>Solves A cos q + B sin q = C on the branch followed so far; the value returned besides is C beyond R (signed), zero if it closes.</summary>
    public static MemberState Pivot(Jet a, Jet b, Jet c, in History history, out int branch, out double beyond)
    {
        var r2 = a.Value * a.Value + b.Value * b.Value;
        var h2 = r2 - c.Value * c.Value;
        branch = history.Branch;
        beyond = 0;
        if (h2 <= 0)
        {
            // Out of reach, or a dead centre to within rounding: the nearest pose.
            var r = Math.Sqrt(r2);
            if (Math.Abs(c.Value) > r * (1 + Touching))
            {
                beyond = c.Value - Math.CopySign(r, c.Value);
                return At(Unwrap(Math.Atan2(b.Value * c.Value, a.Value * c.Value), history.Before.Value), 0, 0);
            }

            h2 = 0;
        }

        var h = Math.Sqrt(h2);
        if (h2 <= AtDeadCentre * AtDeadCentre * r2)
        {
            return Dead(a, b, c, h / Math.Sqrt(r2), history);
        }

        var state = Turned(a, b, c, branch * h, r2, history.Before.Value);
        if (history.MayHavePassed(h2, 2 * (a.Value * a.First + b.Value * b.First - c.Value * c.First)))
        {
            var other = Turned(a, b, c, -branch * h, r2, history.Before.Value);
            if (history.Misfit(other.Q) < FarBetter * history.Misfit(state.Q))
            {
                branch = -branch;
                return other;
            }
        }

        return state;
    }

    /// <summary>Solves q^2 - 2 b q + c = 0 on the branch followed so far, for a rod of <paramref name="length"/> mm; besides, the shortfall c - b^2 (mm^2), zero if it closes.</summary>
    public static MemberState Slide(Jet b, Jet c, double length, in History history, out int branch, out double shortfall)
    {
        var h2 = Jet.Square(b) - c;
        var l2 = length * length;
        branch = history.Branch;
        shortfall = h2.Value < -Touching * l2 ? -h2.Value : 0;
        if (shortfall > 0)
        {
            return MemberState.Slid(Jet.Constant(b.Value));
        }

        if (h2.Value <= AtDeadCentre * AtDeadCentre * l2)
        {
            var turn = Math.Sqrt(Math.Max(0, h2.Second / 2));
            var speed = Nearer(b.First + turn, b.First - turn, history.Before.First);
            var off = Math.Sqrt(Math.Max(0, h2.Value));
            return MemberState.Slid(new(Nearer(b.Value + off, b.Value - off, history.Expected(speed)), speed, history.Before.Second));
        }

        var h = Jet.Sqrt(h2);
        var q = b + branch * h;
        if (history.MayHavePassed(h2.Value, h2.First))
        {
            var other = b - branch * h;
            if (history.Misfit(other) < FarBetter * history.Misfit(q))
            {
                branch = -branch;
                q = other;
            }
        }

        return MemberState.Slid(q);
    }

    private static MemberState Turned(in Jet a, in Jet b, in Jet c, double g, double r2, double near)
    {
        var inv = 1 / r2;
        var cos = (a.Value * c.Value + g * b.Value) * inv;
        var sin = (b.Value * c.Value - g * a.Value) * inv;
        var q = Unwrap(Math.Atan2(sin, cos), near);
        var q1 = (c.First - a.First * cos - b.First * sin) / g;
        var q2 = (c.Second - a.Second * cos - b.Second * sin - 2 * q1 * (b.First * cos - a.First * sin) + q1 * q1 * c.Value) / g;
        return new(new(q, q1, q2), new(sin, cos * q1, cos * q2 - sin * q1 * q1), new(cos, -sin * q1, -sin * q2 - cos * q1 * q1), default);
    }

    // The pose at a dead centre: of the two speeds there the one nearer to the speed so far; the acceleration is kept, as it would take third derivatives.
    private static MemberState Dead(in Jet a, in Jet b, in Jet c, double off, in History history)
    {
        var q = Unwrap(Math.Atan2(b.Value * c.Value, a.Value * c.Value), history.Before.Value);
        var (sin, cos) = Math.SinCos(q);
        var middle = b.First * cos - a.First * sin;
        var root = Math.Sqrt(Math.Max(0, middle * middle - c.Value * (c.Second - a.Second * cos - b.Second * sin)));
        var speed = Nearer((middle + root) / c.Value, (middle - root) / c.Value, history.Before.First);
        return At(Nearer(q + off, q - off, history.Expected(speed)), speed, history.Before.Second);
    }

    private static double Nearer(double x, double y, double to) => Math.Abs(x - to) <= Math.Abs(y - to) ? x : y;

    private static MemberState At(double q, double first, double second) => MemberState.Turned(new(q, first, second));

    /// <summary>The angle that equals <paramref name="q"/> up to whole turns and lies nearest to <paramref name="near"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Unwrap(double q, double near)
    {
        var off = near - q;
        return Math.Abs(off) <= Math.PI ? q : q + 2 * Math.PI * Math.Round(off / (2 * Math.PI));
    }
}
