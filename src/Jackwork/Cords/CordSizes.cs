using Jackwork.Design;

namespace Jackwork.Cords;

/// <summary>Sizes of a cord and of what leads it, all lengths mm.</summary>
/// <remarks>
/// <para>The groove of a pulley for a cord of diameter d has a round bottom of radius 0.55 d, flanks at 22.5 degrees to its middle and the depth 1.5 d, as the grooves of sheaves for wire ropes have
/// (DIN 15061 part 1: bottom about 0.53 d, opening 45 degrees, depth at least 1.4 d; from memory). With b the half opening and p the bottom's radius its half width at the rim is
/// p cos b + (h - p (1 - sin b)) tan b, h the depth.</para>
/// <para>Turns on a drum lie side by side in one layer, a tenth of a diameter apart. An end that is only held by friction keeps two turns (common practice, no source).</para>
/// </remarks>
public static class CordSizes
{
    /// <summary>Turns on a drum as drawn unless given, and those that must stay on it to hold the end.</summary>
    public const double UsualTurns = 3, GripTurns = 1.5;

    /// <summary>Pin of a pulley unless given, mm.</summary>
    public const double UsualPin = 3;

    /// <summary>Friction unless given: braid in smooth brass or hardwood eyes, brass on steel pins without oil (common practice, no source).</summary>
    public const double UsualFriction = 0.25;

    /// <summary>Least tension that must be left, N (common practice, no source): what still draws a thin cord straight.</summary>
    public const double UsualLeast = 0.05;

    /// <summary>Breaking strength for each square of the diameter, N/mm^2 (common practice, no source): well below what braided polyester is sold with.</summary>
    public const double UsualStrength = 100;

    /// <summary>Share of its strength that a cord may be loaded with: half for the knots, and the rest for wear and jerks (common practice, no source).</summary>
    public const double Load = 0.2;

    /// <summary>Wood or brass left beside a groove, and thickness of a drum's cheeks, mm (common practice, no source).</summary>
    public const double Rim = 0.8, Cheek = 2;

    /// <summary>How far a pulley's pin stands out before it, and goes on behind it into what holds it, mm (common practice, no source).</summary>
    public const double PinBeyond = 1, PinInto = 7;

    /// <summary>Least diameter of a pulley for that of its cord (common practice, no source): a tighter bend wears a braid out.</summary>
    public const double LeastBend = 6;

    /// <summary>Distance of turns on a drum, in diameters.</summary>
    public const double Pitch = 1.1;

    private const double UsualDiameter = 1, Bottom = 0.55, DepthShare = 1.5, HalfOpening = Math.PI / 8, CheekShare = 3, KnotShare = 25, KnotPull = 30, EyeShare = 1.5;

    /// <summary>Diameter of the cord.</summary>
    public static double Diameter(CordSpec c) => c.Diameter ?? UsualDiameter;

    /// <summary>Radius of the bottom of a groove.</summary>
    public static double GrooveRadius(double cord) => Bottom * cord;

    /// <summary>Depth of a groove.</summary>
    public static double GrooveDepth(double cord) => DepthShare * cord;

    /// <summary>Width of a groove at the rim.</summary>
    public static double GrooveWidth(double cord)
    {
        var p = GrooveRadius(cord);
        return 2 * (p * Math.Cos(HalfOpening) + (GrooveDepth(cord) - p * (1 - Math.Sin(HalfOpening))) * Math.Tan(HalfOpening));
    }

    /// <summary>Thickness of a pulley.</summary>
    public static double PulleyThickness(CordLeadSpec lead, double cord) => lead.Thickness ?? Math.Ceiling(2 * (GrooveWidth(cord) + 2 * Rim)) / 2;

    /// <summary>Outer radius of a pulley.</summary>
    public static double PulleyRim(CordLeadSpec lead, double cord) => lead.Pulley!.Value / 2 + GrooveDepth(cord);

    /// <summary>Outer radius of a drum's cheeks.</summary>
    public static double CheekRim(CordLeadSpec lead, double cord) => lead.Drum!.Value / 2 + CheekShare * cord;

    /// <summary>Length between its cheeks that a drum needs for some turns, the one that is being wound included.</summary>
    public static double DrumLength(double turns, double cord) => (Math.Ceiling(turns) + 1) * Pitch * cord;

    /// <summary>Diameter of the hole of an eye.</summary>
    public static double EyeHole(double cord) => EyeShare * cord;

    /// <summary>Cord for the knot at one end.</summary>
    public static double Knot(CordSpec c) => c.Knot ?? KnotShare * Diameter(c) + KnotPull;
}
