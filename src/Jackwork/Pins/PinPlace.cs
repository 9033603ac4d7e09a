using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Pins;

/// <summary>Where the pins of two wheels meet: shafts that are parallel, or at right angles with axes that meet.</summary>
/// <param name="IsCrossed">Whether the shafts are at right angles.</param>
/// <param name="DriverAxis">A point of the driver's axis: level with the middle of the pins, or where the axes meet.</param>
/// <param name="DrivenAxis">Likewise of the driven's axis.</param>
/// <param name="Driver">Unit direction of the driver's axis.</param>
/// <param name="Driven">Unit direction of the driven's axis.</param>
/// <param name="DriverTowards">Unit direction from the driver's axis to where the pins meet.</param>
/// <param name="DrivenTowards">Unit direction from the driven's axis to where the pins meet.</param>
public sealed record PinPlace(bool IsCrossed, Point3 DriverAxis, Point3 DrivenAxis, Vec3 Driver, Vec3 Driven, Vec3 DriverTowards, Vec3 DrivenTowards)
{
    /// <summary>Distance of the two points, mm; the centre distance of parallel shafts.</summary>
    public double Distance => DriverAxis.DistanceTo(DrivenAxis);

    /// <summary>+1 where the driven goes forward about its axis as the driver does, else -1: where they meet the pins go the same way.</summary>
    public int Sense => Math.Sign(Driver.Cross(DriverTowards).Dot(Driven.Cross(DrivenTowards)));

    /// <summary>Parallel shafts.</summary>
    /// <param name="driver">The driver's joint.</param>
    /// <param name="driven">The driven's joint.</param>
    /// <param name="at">A point level with the middle of the pins.</param>
    public static PinPlace Parallel(Joint driver, Joint driven, Point3 at)
    {
        var (a, b) = (driver.Foot(at), driven.Foot(at));
        var towards = (b - a).Unit();
        return new(false, a, b, driver.Along, driven.Along, towards, -towards);
    }

    /// <summary>Shafts at right angles.</summary>
    /// <param name="driver">The driver's joint.</param>
    /// <param name="driven">The driven's joint.</param>
    /// <param name="at">A point near which the pins shall meet: of the four places that there are the nearest is taken.</param>
    public static PinPlace Crossed(Joint driver, Joint driven, Point3 at)
    {
        var meet = driver.Through + driver.Along.Dot(driven.Through - driver.Through) * driver.Along;
        Vec3 Sign(Vec3 v) => (at - meet).Dot(v) < 0 ? -v : v;
        return new(true, meet, meet, driver.Along, driven.Along, Sign(driven.Along), Sign(driver.Along));
    }

    /// <summary>The frame of the driver's outlines: see <see cref="PinLock"/>; it goes counter-clockwise in it.</summary>
    /// <param name="way">+1 where the driver goes forward about its axis, -1 where it goes back.</param>
    public Frame DriverFrame(int way) => Of(DriverAxis, DriverTowards, way * Driver);

    /// <summary>The frame of the driven's outlines, in which it goes clockwise.</summary>
    public Frame DrivenFrame(int way) => Of(DrivenAxis, DrivenTowards, -way * Sense * Driven);

    private static Frame Of(Point3 origin, Vec3 x, Vec3 z) => new(x, z.Cross(x), z, origin);
}
