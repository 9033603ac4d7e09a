namespace Jackwork.Gears;

/// <summary>Numbers of teeth and shifts at which generation or mesh begins to spoil the flank.</summary>
/// <remarks>
/// Rack of straight depth h (modules) and pinion: the corner reaches the base tangent point when h - x = z sin(alpha)^2/2.
/// Pinion and wheel of ratio G >= 1, tips ha: the wheel's tip reaches it when
///   z1 = 2 ha (G + sqrt(G^2 + (1 + 2 G) s)) / ((1 + 2 G) s),  s = sin(alpha)^2,
/// and the largest wheel for a pinion of z1 teeth is z2 = (z1^2 s - 4 ha^2) / (4 ha - 2 z1 s).
/// Source: Shigley's Mechanical Engineering Design, section "Interference", equations 13-11 and 13-12 (from memory).
/// </remarks>
public static class ToothLimits
{
    /// <summary>Least profile shift for <paramref name="teeth"/> teeth without undercut by the rack, modules.</summary>
    public static double LeastShift(int teeth, BasicRack rack)
    {
        var s = Math.Sin(rack.PressureAngle);
        return rack.StraightDepth - 0.5 * teeth * s * s;
    }

    /// <summary>Least number of teeth without undercut by the rack at the profile shift <paramref name="shift"/>; round up.</summary>
    public static double LeastTeeth(BasicRack rack, double shift = 0)
    {
        var s = Math.Sin(rack.PressureAngle);
        return 2 * (rack.StraightDepth - shift) / (s * s);
    }

    /// <summary>Least pinion teeth that mesh without interference with a wheel of <paramref name="ratio"/> times as many; no shift;
    /// round up.</summary>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    /// <param name="ratio">Wheel teeth over pinion teeth, at least 1; infinity for a rack.</param>
    /// <param name="addendum">Addendum of both, modules.</param>
    public static double LeastPinionTeeth(double pressureAngle, double ratio, double addendum = 1)
    {
        if (!(ratio >= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "The ratio must be at least 1.");
        }

        var s = Math.Pow(Math.Sin(pressureAngle), 2);
        return double.IsInfinity(ratio)
            ? 2 * addendum / s
            : 2 * addendum * (ratio + Math.Sqrt(ratio * ratio + (1 + 2 * ratio) * s)) / ((1 + 2 * ratio) * s);
    }

    /// <summary>Largest wheel, in teeth, that meshes with a pinion of <paramref name="teeth"/> without interference; no shift; round
    /// down; infinite if a rack does.</summary>
    /// <param name="pressureAngle">Pressure angle, rad.</param>
    /// <param name="teeth">Teeth of the pinion.</param>
    /// <param name="addendum">Addendum of both, modules.</param>
    public static double LargestWheel(double pressureAngle, int teeth, double addendum = 1)
    {
        var s = Math.Pow(Math.Sin(pressureAngle), 2);
        var below = 4 * addendum - 2 * teeth * s;
        return below <= 0 ? double.PositiveInfinity : Math.Max(0, (teeth * (double)teeth * s - 4 * addendum * addendum) / below);
    }
}
