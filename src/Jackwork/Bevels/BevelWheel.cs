using Jackwork.Gears;

namespace Jackwork.Bevels;

/// <summary>One wheel of a straight-toothed bevel pair.</summary>
/// <remarks>
/// <para>Pitch cone d, cone distance R, face b; teeth h_a = (h_a* + x) m high and h_f = (h_f* - x) m deep at the large end, tapering to where the axes meet:
/// tip angle d + atan(h_a/R), root angle d - atan(h_f/R). The ends of the teeth are square to the pitch cone (back cones).</para>
/// <para>From the meeting along the axis and out from it, a point a along the pitch line and n inwards square to that lies at (a cos d + n sin d, a sin d - n cos d): the crown of the
/// large end at a = R, n = -h_a, that of the small end the same (R - b)/R as far.</para>
/// <para>"Elements of Metric Gear Technology", section 8, calculations of a standard straight bevel gear (from memory).</para>
/// </remarks>
/// <param name="Module">Module at the large end m, mm.</param>
/// <param name="Teeth">Teeth z.</param>
/// <param name="PitchAngle">Angle of the pitch cone from the axis d, rad.</param>
/// <param name="ConeDistance">Cone distance R, mm.</param>
/// <param name="Face">Length of the teeth b, mm.</param>
/// <param name="Shift">Profile shift x, modules.</param>
/// <param name="Rack">Basic rack.</param>
/// <param name="Thinning">How much each tooth is thinned at the large end, mm.</param>
public sealed record BevelWheel(double Module, int Teeth, double PitchAngle, double ConeDistance, double Face, double Shift, BasicRack Rack, double Thinning)
{
    private VirtualWheel? large;

    /// <summary>Tooth above the pitch cone at the large end h_a, mm.</summary>
    public double Addendum => (Rack.Addendum + Shift) * Module;

    /// <summary>Gap below the pitch cone at the large end h_f, mm.</summary>
    public double Dedendum => (Rack.Dedendum - Shift) * Module;

    /// <summary>Angle of the tips from the axis, rad.</summary>
    public double TipAngle => PitchAngle + Math.Atan(Addendum / ConeDistance);

    /// <summary>Angle of the roots from the axis, rad.</summary>
    public double RootAngle => PitchAngle - Math.Atan(Dedendum / ConeDistance);

    /// <summary>Diameter of the pitch cone at the large end, mm.</summary>
    public double PitchDiameter => Module * Teeth;

    /// <summary>Diameter over the large end, mm.</summary>
    public double OutsideDiameter => 2 * At(ConeDistance, -Addendum).Out;

    /// <summary>Diameter over the small end, mm.</summary>
    public double SmallDiameter => 2 * Taper * At(ConeDistance, -Addendum).Out;

    /// <summary>Along the axis from where the axes meet to the crown of the large end, mm.</summary>
    public double MeetingToCrown => At(ConeDistance, -Addendum).Along;

    /// <summary>Along the axis from the crown of the small end to that of the large end, mm.</summary>
    public double CrownToCrown => (1 - Taper) * MeetingToCrown;

    /// <summary>Size of the small end for that of the large end.</summary>
    public double Taper => 1 - Face / ConeDistance;

    /// <summary>The virtual wheel at the large end.</summary>
    public VirtualWheel Virtual => large ??= new(Module, Teeth / Math.Cos(PitchAngle), Shift, Rack, Thinning);

    /// <summary>A point of the section: along the axis from where the axes meet, and out from the axis, mm.</summary>
    /// <param name="along">Along the pitch line, mm.</param>
    /// <param name="inwards">Square to it, towards the axis, mm.</param>
    public (double Along, double Out) At(double along, double inwards)
    {
        var (sin, cos) = Math.SinCos(PitchAngle);
        return (along * cos + inwards * sin, along * sin - inwards * cos);
    }
}
