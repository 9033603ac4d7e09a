namespace Jackwork.Stacks;

/// <summary>How wide a gap may come out.</summary>
/// <remarks>
/// A gap g = L - sum(a_i t_i) left by things of thickness t_i between faces L apart, each t_i within [t_i - m_i, t_i + p_i]:
///   worst case: g - sum(a_i p_i) .. g + sum(a_i m_i);
///   statistical: middle g - sum(a_i (p_i - m_i)/2), half width sqrt(sum (a_i (p_i + m_i)/2)^2), the square root of the sum of squares,
/// which about 3 in 1000 gaps exceed where each thickness is normal, its middle half way and its limits at three standard deviations
/// (R. Budynas, K. Nisbett, Shigley's Mechanical Engineering Design, section on tolerances of stacks, from memory).
/// </remarks>
/// <param name="Nominal">As drawn, mm; below zero where two things overlap.</param>
/// <param name="Least">Worst case, narrowest, mm.</param>
/// <param name="Most">Worst case, widest, mm.</param>
/// <param name="LikelyLeast">Statistically narrowest, mm.</param>
/// <param name="LikelyMost">Statistically widest, mm.</param>
public readonly record struct GapRange(double Nominal, double Least, double Most, double LikelyLeast, double LikelyMost)
{
    /// <summary>The range of a gap that these thicknesses take away from; each tolerance already multiplied by its share a_i.</summary>
    public static GapRange Of(double nominal, IEnumerable<Tolerance> thicknesses)
    {
        var (plus, minus, squares) = (0.0, 0.0, 0.0);
        foreach (var t in thicknesses)
        {
            plus += t.Plus;
            minus += t.Minus;
            squares += (t.Plus + t.Minus) * (t.Plus + t.Minus) / 4;
        }

        var (middle, half) = (nominal - (plus - minus) / 2, Math.Sqrt(squares));
        return new(nominal, nominal - plus, nominal + minus, middle - half, middle + half);
    }
}
