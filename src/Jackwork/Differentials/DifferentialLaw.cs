using Jackwork.Motion;

namespace Jackwork.Differentials;

/// <summary>How the planets of a differential lie between its two wheels.</summary>
public enum DifferentialForm
{
    /// <summary>Two wheels with outside teeth, and pairs of planets in mesh with each other.</summary>
    Spur,

    /// <summary>A wheel with outside teeth within a ring, and planets between the two.</summary>
    Ring,

    /// <summary>Two bevel wheels of the same size face to face, and bevel planets between them.</summary>
    Bevel,
}

/// <summary>How the arm of a differential turns under its two wheels.</summary>
/// <remarks>
/// <para>Seen from the arm the second wheel turns against the first: (w2 - w)/(w1 - w) = -z1/z2, in all three forms. So w = k1 w1 + k2 w2 with
/// k1 = z1/(z1 + z2), k2 = z2/(z1 + z2); k1 + k2 = 1, and like wheels give the mean. With the second wheel held it is a reduction by 1 + z2/z1.</para>
/// <para>R. Willis, Principles of Mechanism, 1841; R. L. Norton, Design of Machinery, section 9.9, the formula method; Machinery's Handbook, "Epicyclic Gearing" (all from memory).</para>
/// </remarks>
/// <param name="Form">How the planets lie.</param>
/// <param name="First">Teeth of the first wheel, z1.</param>
/// <param name="Second">Teeth of the second wheel, z2.</param>
public sealed record DifferentialLaw(DifferentialForm Form, int First, int Second)
{
    /// <summary>k1: turns of the arm for a turn of the first wheel, the second held.</summary>
    public Rational FirstShare => new(First, First + Second);

    /// <summary>k2: turns of the arm for a turn of the second wheel, the first held.</summary>
    public Rational SecondShare => new(Second, First + Second);
}
