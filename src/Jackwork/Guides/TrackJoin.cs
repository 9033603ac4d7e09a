namespace Jackwork.Guides;

/// <summary>A join between two legs of a guide's track.</summary>
/// <param name="Leg">Index of the leg that begins there.</param>
/// <param name="At">Travel of the corner from the beginning of the track, mm.</param>
/// <param name="Turn">e: how far the direction turns, rad, positive to the left on the developed cylinder.</param>
/// <param name="Rounding">r: least radius of the middle line, mm; 0 for a sharp corner.</param>
public readonly record struct TrackJoin(int Leg, double At, double Turn, double Rounding)
{
    /// <summary>Angle below which two legs run on straight, rad: rounding.</summary>
    private const double Straight = 1e-9;

    /// <summary>b: how far the join reaches along either leg, mm.</summary>
    public double Half => Math.Abs(Turn) < Straight ? 0 : HalfOf(Rounding, Math.Abs(Turn));

    /// <summary>Whether it is a corner, where turn or lift change their speed at once.</summary>
    public bool IsCorner => Half == 0 && Math.Abs(Turn) >= Straight;

    /// <summary>The greatest radius for which the join reaches no farther than <paramref name="half"/> mm along either leg, mm.</summary>
    public double RadiusFor(double half) => half / HalfOf(1, Math.Abs(Turn));

    private static double HalfOf(double radius, double turn)
    {
        var (sin, cos) = Math.SinCos(turn / 2);
        return 1.5 * radius * sin / (cos * cos);
    }
}
