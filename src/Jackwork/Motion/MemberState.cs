using System.Runtime.CompilerServices;

namespace Jackwork.Motion;

/// <summary>Where a member stands at one crank angle.</summary>
/// <param name="Q">Coordinate, rad or mm.</param>
/// <param name="Sin">Sine of the angle it has turned by; for a member that can't turn without meaning.</param>
/// <param name="Cos">Cosine of that angle; likewise.</param>
/// <param name="Lift">How far it stands along its axis from where it is drawn, mm.</param>
public readonly record struct MemberState(Jet Q, Jet Sin, Jet Cos, Jet Lift)
{
    /// <summary>The state of a member on a pivot that has turned by <paramref name="q"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static MemberState Turned(Jet q)
    {
        var (s, c) = Jet.SinCos(q);
        return new(q, s, c, default);
    }

    /// <summary>The state of a member on a slide that has gone by <paramref name="q"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static MemberState Slid(Jet q) => new(q, default, default, q);
}
