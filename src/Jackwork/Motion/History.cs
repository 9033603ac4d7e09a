using System.Runtime.CompilerServices;

namespace Jackwork.Motion;

/// <summary>What a relation knows of the step before, so that it can follow its branch.</summary>
/// <param name="Branch">Branch at the step before, +1 or -1.</param>
/// <param name="Before">The member's coordinate at the step before.</param>
/// <param name="Advance">Crank angle since then, rad.</param>
internal readonly record struct History(int Branch, Jet Before, double Advance)
{
    /// <summary>Whether a dead centre may lie within the step: by its slope, <paramref name="h2"/> (h^2, see <see cref="Equations"/>) has risen from zero.</summary>
    /// <param name="h2">h^2 now.</param>
    /// <param name="slope">Its derivative.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool MayHavePassed(double h2, double slope) => h2 <= Advance * slope;

    /// <summary>Where the coordinate would be by the mean of its speed before and <paramref name="speed"/> now.</summary>
    public double Expected(double speed) => Before.Value + Advance * (Before.First + speed) / 2;

    /// <summary>How badly a motion that is now at <paramref name="q"/> joins to the one before; nothing for one that is smooth.</summary>
    /// <remarks>
    /// The trapezoidal rule with its end correction, q - q0 = s (q' + q0')/2 - s^2 (q'' - q0'')/12, and the plain rule for the
    /// speeds, q' - q0' = s (q'' + q0'')/2, with errors of order s^5 and s^3; a kink shows in the second by its whole size.
    /// </remarks>
    public double Misfit(Jet q)
    {
        var place = q.Value - Before.Value - Advance / 2 * (q.First + Before.First) + Advance * Advance / 12 * (q.Second - Before.Second);
        var speed = q.First - Before.First - Advance / 2 * (q.Second + Before.Second);
        return Math.Abs(place) + Math.Abs(Advance * speed);
    }
}
