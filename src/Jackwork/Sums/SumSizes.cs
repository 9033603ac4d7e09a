namespace Jackwork.Sums;

/// <summary>Where the driven's pin stands on a summing lever so that it moves as wanted.</summary>
/// <remarks>
/// For small moves, all three in the same direction across the bar: r_R q_R = (1 - s) r_P q_P + s r_Q q_Q, r the arms (1 for a slide), s = PR/PQ.
/// Wanted q_R = a q_P + b q_Q: s = b r_P/(b r_P + a r_Q), r_R = (1 - s) r_P/a. Where a and b differ in sign R stands beyond P or Q, and s is not between 0 and 1.
/// </remarks>
/// <param name="Share">s: how far along from the driver's pin to the second driver's; below 0 or above 1 beyond them.</param>
/// <param name="Arm">r_R: arm of the driven, mm; negative where it must point the other way. For a slide it must come out as 1.</param>
public readonly record struct SumSizes(double Share, double Arm)
{
    /// <summary>The place for wanted weights.</summary>
    /// <param name="a">Wanted move of the driven for that of the driver, rad per rad (a slide's in mm).</param>
    /// <param name="b">Wanted move of the driven for that of the second driver.</param>
    /// <param name="driverArm">Arm of the driver's pin, mm; 1 for a slide.</param>
    /// <param name="withArm">Arm of the second driver's pin, mm; 1 for a slide.</param>
    /// <exception cref="ArgumentOutOfRangeException">The driver has no weight, or the weights cancel so that the pin would have to stand at infinity.</exception>
    public static SumSizes For(double a, double b, double driverArm, double withArm)
    {
        var whole = b * driverArm + a * withArm;
        if (a == 0 || whole == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(a), a, "The driver's weight must not be 0, nor may the weights cancel.");
        }

        var share = b * driverArm / whole;
        return new(share, (1 - share) * driverArm / a);
    }
}
