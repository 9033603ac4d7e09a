using Jackwork.Design;
using Jackwork.Motion;

namespace Jackwork.Universals;

/// <summary>Sizes of a universal joint: two forks, each a disc with two cheeks, and a round cross block with its pins. Common practice, no source, but for the reach.</summary>
/// <remarks>
/// Arms of the cross lie along u1, u2; cheeks stand from R to R + t along them, w wide and round about the pins; the block is round about u1, of radius and half length e = R - s.
/// What reaches farthest towards a fork's disc, that of the other fork or of the block, comes to (R + t) sin b + max(w/2, e) cos b; the disc stands one room beyond.
/// A cheek reaches R along the other's arm only behind (R cos b - w/2)/sin b from the middle: so the cheeks pass each other where R cos b &gt; w/2.
/// </remarks>
public readonly record struct UniversalSizes
{
    /// <summary>Room between what moves past each other, mm.</summary>
    public const double Apart = 1;

    /// <summary>Room for a washer or a shoulder between block and cheek, mm.</summary>
    public const double Beside = 0.5;

    /// <summary>The sizes of a joint.</summary>
    /// <param name="spec">The joint as designed.</param>
    /// <param name="angle">Angle between the shafts b, rad.</param>
    public UniversalSizes(UniversalSpec spec, double angle)
    {
        Angle = angle;
        Pin = spec.Pin ?? 4;
        Width = spec.Width ?? 2.5 * Pin;
        Thickness = spec.Thickness ?? Pin;
        Outer = (spec.Diameter ?? 7 * Pin) / 2;
        Inner = Outer - Thickness;
    }

    /// <summary>Angle between the shafts b, rad.</summary>
    public double Angle { get; }

    /// <summary>Diameter of the pins, mm.</summary>
    public double Pin { get; }

    /// <summary>Width of the cheeks w, mm.</summary>
    public double Width { get; }

    /// <summary>Thickness of cheeks and discs t, mm.</summary>
    public double Thickness { get; }

    /// <summary>Distance of a cheek's outer face from the middle, R + t, mm.</summary>
    public double Outer { get; }

    /// <summary>Distance of a cheek's inner face from the middle R, mm.</summary>
    public double Inner { get; }

    /// <summary>Radius and half length of the cross block e, mm.</summary>
    public double Block => Inner - Beside;

    /// <summary>Radius of a fork's disc, which covers the cheeks' feet, mm.</summary>
    public double Disc => Math.Sqrt(Outer * Outer + Width * Width / 4);

    /// <summary>Distance of the discs' near faces from the middle, mm.</summary>
    public double Reach => Outer * Math.Sin(Angle) + Math.Max(Width / 2, Block) * Math.Cos(Angle) + Apart;

    /// <summary>How far the cheeks of the two forks keep apart at the steepest place of the turn, R cos b - w/2, mm; below nothing they scrape.</summary>
    public double CheekRoom => Inner * Math.Cos(Angle) - Width / 2;

    /// <summary>Metal beside a pin's hole in a cheek, mm.</summary>
    public double CheekWall => (Width - Pin) / 2;

    /// <summary>Metal round the pins' holes in the block, mm.</summary>
    public double BlockWall => Block - Pin / 2;
}
