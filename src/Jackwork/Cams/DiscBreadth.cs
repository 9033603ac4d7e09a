namespace Jackwork.Cams;

/// <summary>The breadth of a disc between two parallel faces, over its turn.</summary>
/// <remarks>
/// With h(w) the distance from the shaft of the face whose normal stands at w in the disc (the support function),
/// breadth b(w) = h(w) + h(w + pi). On a stem square to its face h = h0 + s, so b = 2 h0 + s(a) + s(a + pi): the yoke fits
/// all round only where lifts half a turn apart add up to the same. Between samples h is read by cubic Hermite, since
/// dh/dw = X . Left(m) is known at each.
/// F. Reuleaux, The Kinematics of Machinery, 1876, section on figures of constant breadth; H. A. Rothbart (ed.), Cam Design
/// Handbook, chapter 1 (both from memory).
/// </remarks>
/// <param name="Least">Smallest breadth, mm.</param>
/// <param name="LeastStep">Step of the smallest breadth.</param>
/// <param name="Most">Largest breadth, mm.</param>
/// <param name="MostStep">Step of the largest breadth.</param>
public readonly record struct DiscBreadth(double Least, int LeastStep, double Most, int MostStep)
{
    /// <summary>How far the breadth is from constant, mm.</summary>
    public double Change => Most - Least;

    /// <summary>The breadth of the disc that a flat face's samples go round.</summary>
    internal static DiscBreadth Of(ReadOnlySpan<CamSample> samples)
    {
        var support = new Support(samples);
        var found = new DiscBreadth(double.PositiveInfinity, 0, double.NegativeInfinity, 0);
        for (var i = 0; i < samples.Length; i++)
        {
            var breadth = Height(samples[i]) + support.At(samples[i].Normal.Angle + Math.PI);
            if (breadth < found.Least)
            {
                found = found with { Least = breadth, LeastStep = i };
            }

            if (breadth > found.Most)
            {
                found = found with { Most = breadth, MostStep = i };
            }
        }

        return found;
    }

    private static double Height(in CamSample s) => s.Point.FromOrigin.Dot(s.Normal);

    private sealed class Support
    {
        private readonly (double Angle, double Height, double Slope)[] knots;

        public Support(ReadOnlySpan<CamSample> samples)
        {
            knots = new (double, double, double)[samples.Length];
            for (var i = 0; i < samples.Length; i++)
            {
                knots[i] = (Within(samples[i].Normal.Angle), Height(samples[i]), samples[i].Point.FromOrigin.Dot(samples[i].Tangent));
            }

            Array.Sort(knots, (a, b) => a.Angle.CompareTo(b.Angle));
        }

        public double At(double angle)
        {
            var w = Within(angle);
            var next = Array.FindIndex(knots, k => k.Angle > w);
            var b = knots[next < 0 ? 0 : next];
            var a = knots[next > 0 ? next - 1 : ^1];
            var d = Within(b.Angle - a.Angle);
            var u = d > 0 ? Within(w - a.Angle) / d : 0;
            return (1 + 2 * u) * (1 - u) * (1 - u) * a.Height + u * (1 - u) * (1 - u) * d * a.Slope
                + u * u * (3 - 2 * u) * b.Height - u * u * (1 - u) * d * b.Slope;
        }

        private static double Within(double angle) => angle - 2 * Math.PI * Math.Floor(angle / (2 * Math.PI));
    }
}
