using Jackwork.Gears;

namespace Jackwork.Bevels;

/// <summary>A pair of straight-toothed bevel wheels, by the pitch cones that roll on each other.</summary>
/// <remarks>
/// <para>Shafts at the angle S, m the module at the large end. The cones touch along one line of the length R:
/// tan d1 = sin S/(z2/z1 + cos S),  d2 = S - d1,  R = m z1/(2 sin d1) = m z2/(2 sin d2).</para>
/// <para>Tredgold: near the large end the teeth are those of spur wheels of radius r/cos d, with z/cos d teeth, rolled on the back cones. With tip radius ra, base radius rb of
/// these, the contact ratio is the length of contact, sum of sqrt(ra^2 - rb^2) - r sin(alpha), each no longer than the mate's flank, over pi m cos(alpha).</para>
/// <para>"Elements of Metric Gear Technology", section 8, straight bevel gears; R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, section 13-9, virtual number of teeth;
/// ISO 23509 (all from memory).</para>
/// </remarks>
public sealed record BevelPair
{
    /// <summary>A pair by its figures.</summary>
    /// <param name="module">Module at the large end m, mm.</param>
    /// <param name="teeth1">Teeth of the first wheel.</param>
    /// <param name="teeth2">Teeth of the second.</param>
    /// <param name="shaftAngle">Angle between the shafts S, rad, between the directions from the meeting to the wheels.</param>
    /// <param name="face">Length of the teeth along the cones, mm; null for the usual.</param>
    /// <param name="shift">Profile shift of the first wheel, modules; the second has the opposite.</param>
    /// <param name="rack">Basic rack.</param>
    /// <param name="thinning">How much each tooth is thinned at the large end, mm.</param>
    public BevelPair(double module, int teeth1, int teeth2, double shaftAngle, double? face = null, double shift = 0, BasicRack? rack = null, double thinning = 0)
    {
        (Module, ShaftAngle, Rack) = (module, shaftAngle, rack ?? BasicRack.A);
        var cone1 = Math.Atan2(Math.Sin(shaftAngle), (double)teeth2 / teeth1 + Math.Cos(shaftAngle));
        ConeDistance = module * teeth1 / (2 * Math.Sin(cone1));
        Face = face ?? Math.Floor(10 * LongestFace) / 10;
        First = new(module, teeth1, cone1, ConeDistance, Face, shift, Rack, thinning);
        Second = new(module, teeth2, shaftAngle - cone1, ConeDistance, Face, -shift, Rack, thinning);
    }

    /// <summary>Module at the large end m, mm.</summary>
    public double Module { get; }

    /// <summary>Angle between the shafts S, rad.</summary>
    public double ShaftAngle { get; }

    /// <summary>Basic rack.</summary>
    public BasicRack Rack { get; }

    /// <summary>Length of the line along which the cones touch R, mm.</summary>
    public double ConeDistance { get; }

    /// <summary>Length of the teeth b, mm.</summary>
    public double Face { get; }

    /// <summary>The longest teeth that handbooks advise, mm: a third of the cone distance, or ten modules.</summary>
    public double LongestFace => Math.Min(ConeDistance / 3, 10 * Module);

    /// <summary>The first wheel.</summary>
    public BevelWheel First { get; }

    /// <summary>The second wheel.</summary>
    public BevelWheel Second { get; }

    /// <summary>Contact ratio of the virtual wheels.</summary>
    public double ContactRatio => (Recess(First.Virtual, Second.Virtual) + Recess(Second.Virtual, First.Virtual)) / (Math.PI * Module * Math.Cos(Rack.PressureAngle));

    // From the pitch point to where the tip of one lets go, no farther than the other's flank goes down.
    private double Recess(VirtualWheel tip, VirtualWheel flank)
    {
        var sin = Math.Sin(Rack.PressureAngle);
        return Math.Min(Math.Sqrt(tip.TipRadius * tip.TipRadius - tip.BaseRadius * tip.BaseRadius) - tip.Radius * sin, flank.Radius * sin - flank.BaseRadius * flank.FormRoll);
    }
}
