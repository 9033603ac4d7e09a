using Jackwork.Gears;
using Jackwork.Geometry;

namespace Jackwork.Belts;

/// <summary>A chain wheel for roller chain.</summary>
/// <remarks>
/// <para>Pitch p, rollers d1, z teeth: pitch diameter d = p/sin(180 deg/z). Rollers seat on arcs of ri = 0.505 d1 that span 140 deg - 90 deg/z; the flanks go on as arcs of
/// re = 0.12 d1 (z + 2) about centres within the tooth, tangent to the seats; tip diameter between d + p (1 - 1.6/z) - d1 and d + 1.25 p - d1, here their middle, or where the
/// flanks meet. ISO 606, sprocket tooth gap forms, smallest form (from memory).</para>
/// </remarks>
/// <param name="Pitch">Pitch of the chain p, mm.</param>
/// <param name="Roller">Diameter of its rollers d1, mm.</param>
/// <param name="Teeth">Teeth z.</param>
public readonly record struct Sprocket(double Pitch, double Roller, int Teeth)
{
    /// <summary>Radius of the circle of the rollers' middles, mm.</summary>
    public double PitchRadius => Pitch / (2 * Math.Sin(Math.PI / Teeth));

    /// <summary>Radius of a roller's seat, mm.</summary>
    public double SeatRadius => 0.505 * Roller;

    /// <summary>Angle that a seat spans, rad.</summary>
    public double SeatAngle => (140 - 90.0 / Teeth) * Math.PI / 180;

    /// <summary>Radius of the flanks, mm.</summary>
    public double FlankRadius => 0.12 * Roller * (Teeth + 2);

    /// <summary>Tip radius by the standard, mm, before the flanks meet.</summary>
    public double NominalTipRadius => PitchRadius + (Pitch * (2.25 - 1.6 / Teeth) / 2 - Roller) / 2;

    /// <summary>Tip radius, mm.</summary>
    public double TipRadius => Math.Min(NominalTipRadius, PointedRadius);

    /// <summary>Radius of the seats' bottoms, mm.</summary>
    public double RootRadius => PitchRadius - SeatRadius;

    // Middle of the flank's arc on the counter-clockwise side of the tooth on the x axis, and the seat's end there.
    private (Point2 Centre, Point2 End, Point2 Seat) Flank
    {
        get
        {
            var seat = new Point2(PitchRadius, 0).Turned(Math.PI / Teeth);
            var towards = Vec2.FromAngle(Math.PI / Teeth - (Math.PI - SeatAngle / 2));
            return (seat + (SeatRadius + FlankRadius) * towards, seat + SeatRadius * towards, seat);
        }
    }

    // Where the flank crosses the middle of its tooth.
    private double PointedRadius => Flank.Centre is var c && FlankRadius > Math.Abs(c.Y) ? c.X + Math.Sqrt(FlankRadius * FlankRadius - c.Y * c.Y) : double.PositiveInfinity;

    /// <summary>The outline, counter-clockwise, a tooth's middle on the x axis, mm.</summary>
    public Outline Outline()
    {
        var (centre, end, _) = Flank;
        var side = new List<Segment>();

        // The flank's arc from the seat out to the tip circle: about its centre, where the distance from the axis is the tip's.
        var (c, tip) = (centre.FromOrigin.Length, TipRadius);
        var at = centre.FromOrigin.Angle + Math.Acos(Math.Clamp((tip * tip - c * c - FlankRadius * FlankRadius) / (2 * c * FlankRadius), -1, 1));
        var from = (end - centre).Angle;
        side.Add(Segment.Arc(centre, FlankRadius, from, Math.IEEERemainder(at - from, 2 * Math.PI)) with { Start = end });
        return ToothedRim.Of(side, tip, -SeatRadius, Teeth);
    }
}
