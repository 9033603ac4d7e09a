using System.Runtime.CompilerServices;

namespace Jackwork.Motion;

/// <summary>Where a member stands at one crank angle.</summary>
/// <param name="Q">Coordinate, rad or mm.</param>
/// <param name="Sin">Sine of the coordinate, for a pivot.</param>
/// <param name="Cos">Cosine of the coordinate, for a pivot.</param>
public readonly record struct MemberState(Jet Q, Jet Sin, Jet Cos)
{
    /// <summary>The state of a member whose coordinate is <paramref name="q"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static MemberState Of(JointKind kind, Jet q)
    {
        if (kind == JointKind.Slide)
        {
            return new(q, default, default);
        }

        var (s, c) = Jet.SinCos(q);
        return new(q, s, c);
    }
}
