using Jackwork.Gears;
using Jackwork.Geometry;

namespace Jackwork.Bevels;

/// <summary>The spur wheel whose teeth those of a bevel wheel are, rolled out from its back cone; its number of teeth need not be whole.</summary>
/// <remarks>The equations are those of <see cref="SpurGear"/>, with z_v = z/cos(d) teeth. T. Tredgold's approximation: R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, section 13-9 (from memory).</remarks>
public sealed record VirtualWheel
{
    /// <summary>Samples on a flank and on a fillet.</summary>
    private const int Samples = 48;

    private readonly RackCut cut;
    private readonly double baseAngle;

    /// <summary>A virtual wheel.</summary>
    /// <param name="module">Module m, mm.</param>
    /// <param name="teeth">Virtual teeth z_v, 5 or more.</param>
    /// <param name="shift">Profile shift x, modules.</param>
    /// <param name="rack">Basic rack.</param>
    /// <param name="thinning">How much each tooth is thinned, mm along the pitch circle.</param>
    public VirtualWheel(double module, double teeth, double shift, BasicRack rack, double thinning)
    {
        var alpha = rack.PressureAngle;
        (Teeth, Radius) = (teeth, module * teeth / 2);
        BaseRadius = Radius * Math.Cos(alpha);
        baseAngle = (module * (Math.PI / 2 + 2 * shift * Math.Tan(alpha)) - thinning) / (2 * Radius) + Involute.Inv(alpha);
        PointedRadius = BaseRadius / Math.Cos(Involute.Inverse(baseAngle));
        TipRadius = Math.Min(Radius + (rack.Addendum + shift) * module, PointedRadius);
        RootRadius = Radius - (rack.Dedendum - shift) * module;
        cut = new(module, teeth, shift, thinning, rack, baseAngle);
        LeastTeeth = ToothLimits.LeastTeeth(rack, shift);
        UndercutShift = rack.StraightDepth - teeth * Math.Sin(alpha) * Math.Sin(alpha) / 2;
    }

    /// <summary>Virtual teeth z_v.</summary>
    public double Teeth { get; }

    /// <summary>Pitch radius, mm: the slant length of the back cone.</summary>
    public double Radius { get; }

    /// <summary>Base radius, mm.</summary>
    public double BaseRadius { get; }

    /// <summary>Tip radius, mm, at most <see cref="PointedRadius"/>.</summary>
    public double TipRadius { get; }

    /// <summary>Root radius, mm.</summary>
    public double RootRadius { get; }

    /// <summary>Where the two flanks of a tooth would meet, mm.</summary>
    public double PointedRadius { get; }

    /// <summary>Angle from tooth to tooth, rad.</summary>
    public double Pitch => 2 * Math.PI / Teeth;

    /// <summary>Whether a generating cutter would undercut the flanks.</summary>
    public bool IsUndercut => cut.IsUndercut;

    /// <summary>Virtual teeth from which there is no undercut.</summary>
    public double LeastTeeth { get; }

    /// <summary>Profile shift from which there is no undercut, modules.</summary>
    public double UndercutShift { get; }

    /// <summary>Roll angle down to which the flank is an involute, rad.</summary>
    public double FormRoll => cut.RollMeet;

    /// <summary>Thickness of a tooth at its tip, mm.</summary>
    public double TipThickness => 2 * TipRadius * Math.Max(0, baseAngle - Involute.InvOfRoll(Involute.RollAt(TipRadius, BaseRadius)));

    /// <summary>The counter-clockwise side of a tooth centred on the x axis, from root to tip, mm.</summary>
    /// <param name="tolerance">Greatest distance from the true curve, mm.</param>
    public IReadOnlyList<Segment> Side(double tolerance)
    {
        var side = new List<Segment>();
        var (from, to) = (FormRoll, Involute.RollAt(TipRadius, BaseRadius));
        ArcFit.Fit([.. Run(from < to ? cut.PsiMeet : cut.PsiAt(TipRadius), cut.At)], tolerance, side);
        if (from < to)
        {
            ArcFit.Fit([.. Run(1, t => Involute.Flank(BaseRadius, baseAngle, from + (to - from) * t))], tolerance, side);
        }

        return side;
    }

    private static IEnumerable<OutlinePoint> Run(double to, Func<double, OutlinePoint> at) => Enumerable.Range(0, Samples + 1).Select(i => at(to * i / Samples));
}
