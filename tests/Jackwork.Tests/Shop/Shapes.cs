using System.Globalization;
using Jackwork.Geometry;

namespace Jackwork.Tests.Shop;

/// <summary>Outlines whose area and length are known in closed form, and a culture that writes a comma for the decimal point.</summary>
internal static class Shapes
{
    /// <summary>The hull of a circle about the origin and a smaller one at (distance, 0): two arcs and two tangents, counter-clockwise.</summary>
    public static Outline Hull(double large, double small, double distance)
    {
        // Touching points lie at angle a from the line of centres, cos a = (R - r) / d.
        var a = Math.Acos((large - small) / distance);
        var far = new Point2(distance, 0);
        return new(
        [
            Segment.Arc(Point2.Origin, large, a, 2 * Math.PI - 2 * a),
            new(Point2.Origin + large * Vec2.FromAngle(-a), far + small * Vec2.FromAngle(-a), 0),
            Segment.Arc(far, small, -a, 2 * a),
            new(far + small * Vec2.FromAngle(a), Point2.Origin + large * Vec2.FromAngle(a), 0),
        ]);
    }

    /// <summary>Area of that hull: two sectors and two trapezia between the radii to the touching points.</summary>
    public static double HullArea(double large, double small, double distance)
    {
        var a = Math.Acos((large - small) / distance);
        return large * large * (Math.PI - a) + small * small * a + (large + small) * distance * Math.Sin(a);
    }

    /// <summary>Length once round that hull.</summary>
    public static double HullLength(double large, double small, double distance)
    {
        var a = Math.Acos((large - small) / distance);
        return 2 * (large * (Math.PI - a) + small * a + distance * Math.Sin(a));
    }

    /// <summary>Runs <paramref name="make"/> where the decimal point is a comma.</summary>
    public static T WithComma<T>(Func<T> make)
    {
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NegativeSign = "~";
        CultureInfo.CurrentCulture = comma;
        try
        {
            return make();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
