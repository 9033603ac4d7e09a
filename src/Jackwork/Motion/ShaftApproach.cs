using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>Where two axes that are not parallel come nearest to each other.</summary>
/// <remarks>With axes P + s a, Q + t b and n = a x b: s = ((Q - P) x b) . n/n^2, t = ((Q - P) x a) . n/n^2.</remarks>
/// <param name="OnDriver">The driver's point, mm.</param>
/// <param name="OnDriven">The driven's point, mm.</param>
public readonly record struct ShaftApproach(Point3 OnDriver, Point3 OnDriven)
{
    /// <summary>By how much the axes miss each other, mm.</summary>
    public double Distance => OnDriver.DistanceTo(OnDriven);

    /// <summary>The nearest points of two axes.</summary>
    /// <param name="driver">One joint, of unit direction.</param>
    /// <param name="driven">The other, not parallel to it.</param>
    public static ShaftApproach Of(Joint driver, Joint driven)
    {
        var (n, w) = (driver.Along.Cross(driven.Along), driven.Through - driver.Through);
        var square = n.Dot(n);
        return new(
            driver.Through + (w.Cross(driven.Along).Dot(n) / square) * driver.Along,
            driven.Through + (w.Cross(driver.Along).Dot(n) / square) * driven.Along);
    }
}
