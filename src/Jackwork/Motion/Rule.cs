namespace Jackwork.Motion;

/// <summary>A condition on a member's coordinate, rad or mm: the margin by which it holds.</summary>
/// <param name="Member">Index of the member.</param>
/// <param name="Low">Lower bound, or minus infinity.</param>
/// <param name="High">Upper bound, or plus infinity.</param>
/// <param name="Around">For a shaft that goes round, and whose coordinate is taken within one turn: +1 or -1, the sense in which it runs; else 0.</param>
public readonly record struct Condition(int Member, double Low, double High, int Around)
{
    /// <summary>By how much the condition holds at coordinate <paramref name="q"/>; negative where it does not.</summary>
    /// <remarks>Around a turn, the distance to the nearer end of the band from Low onward to High.</remarks>
    public double Margin(double q)
    {
        if (Around == 0)
        {
            return Math.Min(q - Low, High - q);
        }

        var half = (High - Low) / 2;
        var off = Math.IEEERemainder(Around * q - (Low + half), 2 * Math.PI);
        return half - Math.Abs(off);
    }

    /// <summary>The condition with each bound moved outward by <paramref name="by"/>, rad or mm (inward if negative).</summary>
    public Condition Widened(double by) => this with { Low = Low - by, High = High + by };

    /// <summary>The bounds that a member passes which goes one way from <paramref name="from"/> to <paramref name="to"/>; around a turn, each as often as it is passed, as coordinates.</summary>
    internal IEnumerable<double> BoundsBetween(double from, double to)
    {
        foreach (var bound in (double[])[Low, High])
        {
            if (Around == 0)
            {
                if (from < bound != to < bound)
                {
                    yield return bound;
                }

                continue;
            }

            var turn = 2 * Math.PI;
            var first = Around * bound;
            for (var n = Math.Ceiling((Math.Min(from, to) - first) / turn); first + n * turn <= Math.Max(from, to); n++)
            {
                if (from < first + n * turn != to < first + n * turn)
                {
                    yield return first + n * turn;
                }
            }
        }
    }
}

/// <summary>While one condition holds, another must.</summary>
/// <param name="While">When the rule applies.</param>
/// <param name="Keep">What must then hold.</param>
/// <param name="Note">What it is for, in the maker's words; may be null.</param>
/// <param name="Text">The rule as a sentence.</param>
public sealed record Rule(Condition While, Condition Keep, string? Note, string Text);
