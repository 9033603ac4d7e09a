using Jackwork.Motion;

namespace Jackwork.Ratchets;

/// <summary>How a pawl on a swinging arm feeds a ratchet wheel, step by step.</summary>
/// <remarks>
/// <para>Arm and wheel turn about one axis; a is the arm's angle and w the wheel's, both positive in the sense of feeding. Pitch p = 2 pi/n. The faces of the
/// teeth stand at g + w + j p from the pawl's nose as drawn (j whole), so the pawl meets face j where a = g + w + j p. It drops behind a face once it is
/// past it by the play d.</para>
/// <para>J is the face next before the pawl. Going back: J = min(J, ceil((a + d - g - w)/p)). Going forward: w = max(w, a - g - J p), the wheel moving with the arm
/// while the pawl is on its face. Otherwise the hold pawl keeps w.</para>
/// <para>Steadily a stroke S between the arm's ends feeds k = floor((S - d)/p) teeth; the pawl runs idle for S - k p before it meets its face. A tooth is missed
/// where S &lt; k p + d, a second one taken where S &gt;= (k + 1) p + d.</para>
/// <para>The arm's greatest angle mostly lies between two steps: a step that finds it going back takes a - a'^2/(2 a'') for it, the top of the parabola.</para>
/// <para>J. H. Bickford, Mechanisms for Intermittent Motion, chapter on ratchets; Machinery's Handbook, "Ratchet Gearing" (both from memory).</para>
/// </remarks>
/// <param name="Teeth">n, 6 or more.</param>
/// <param name="Play">d: how far past a face the pawl must come to drop behind it, rad, not negative, below the pitch.</param>
public readonly record struct RatchetLaw(int Teeth, double Play)
{
    /// <summary>Fewest teeth: fewer leave the pawl no even seat (common practice, no source).</summary>
    public const int Fewest = 6;

    /// <summary>Most teeth that are worked out.</summary>
    public const int Most = 120;

    /// <summary>Angles of the wheel within this of each other are one, rad: what is left of the solver's steps at the arm's greatest angle.</summary>
    public const double Rounding = 1e-5;

    /// <summary>p: angle from tooth to tooth, rad.</summary>
    public double Pitch => Math.Tau / Teeth;

    /// <summary>Whole teeth that a stroke feeds.</summary>
    /// <param name="stroke">S, rad, from the arm's one end to the other.</param>
    public int Fed(double stroke) => Math.Max(0, (int)Math.Floor((stroke - Play) / Pitch));

    /// <summary>Middle of the strokes that feed <paramref name="teeth"/> teeth, rad: as far from missing one as from taking another.</summary>
    public double StrokeFor(int teeth) => (teeth + 0.5) * Pitch + Play;

    /// <summary>The wheel's angle and J after a step.</summary>
    /// <param name="arm">a.</param>
    /// <param name="wheel">w before the step.</param>
    /// <param name="face">J before the step.</param>
    /// <param name="first">g.</param>
    /// <param name="advance">Crank angle of the step, rad, 0 for none.</param>
    public (Jet Wheel, int Face) Step(Jet arm, double wheel, int face, double first, double advance)
    {
        var behind = (int)Math.Ceiling((arm.Value + Play - first - wheel) / Pitch);
        face = Math.Min(face, behind);
        if (arm.First >= 0 || advance == 0)
        {
            var pushed = arm - (first + face * Pitch);
            return pushed.Value >= wheel ? (pushed, face) : (Jet.Constant(wheel), face);
        }

        // Just past the top the wheel stays where the arm's greatest angle brought it.
        var sinceTop = arm.First / arm.Second;
        var top = arm.Second < 0 && sinceTop <= Math.Abs(advance) ? arm.Value - arm.First * sinceTop / 2 : arm.Value;
        return (Jet.Constant(Math.Max(wheel, top - first - face * Pitch)), face);
    }
}
