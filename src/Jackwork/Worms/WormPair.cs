using Jackwork.Gears;

namespace Jackwork.Worms;

/// <summary>A cylindrical worm and its wheel, shafts square.</summary>
/// <remarks>
/// <para>Axial module m, z1 starts, reference diameter d1, wheel of z2 teeth: lead L = pi m z1, lead angle tan g = m z1/d1, wheel d2 = m z2, centre distance a = (d1 + d2)/2.
/// The thread is a rack along the worm, flanks at alpha in the axial section; across the thread tan(alpha_n) = tan(alpha) cos(g).</para>
/// <para>With friction f the worm drives with the efficiency (cos(alpha_n) - f tan g)/(cos(alpha_n) + f/tan g); the wheel drives the worm with
/// (cos(alpha_n) - f/tan g)/(cos(alpha_n) + f tan g), and not at all, the pair being self-locking, where f is at least cos(alpha_n) tan g.</para>
/// <para>R. L. Mott, Machine Elements in Mechanical Design, 4th ed., section 8-10; R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, section 13-17, worm gearing (from memory).</para>
/// <para>A wheel cut straight through a plate t thick meets threads that slant across it by t tan g: its gaps are cut wider by as much. A flat plate does not bend round the worm:
/// at its faces the worm's tip, of radius ra1, is e = ra1 - sqrt(ra1^2 - t^2/4) less deep in the gap.</para>
/// </remarks>
/// <param name="Module">Axial module m, mm.</param>
/// <param name="Starts">Starts of the worm z1.</param>
/// <param name="WheelTeeth">Teeth of the wheel z2.</param>
/// <param name="Diameter">Reference diameter of the worm d1, mm.</param>
/// <param name="Rack">Basic rack of the thread in the axial section.</param>
public sealed record WormPair(double Module, int Starts, int WheelTeeth, double Diameter, BasicRack Rack)
{
    /// <summary>Reference diameter of a worm unless given, modules (common practice, no source).</summary>
    public const double UsualDiameter = 10;

    /// <summary>From thread to thread along the worm, mm.</summary>
    public double Pitch => Math.PI * Module;

    /// <summary>How far a thread runs along in one turn, mm.</summary>
    public double Lead => Pitch * Starts;

    /// <summary>Lead angle g at the reference diameter, rad.</summary>
    public double LeadAngle => Math.Atan(Module * Starts / Diameter);

    /// <summary>Reference diameter of the wheel, mm.</summary>
    public double WheelDiameter => Module * WheelTeeth;

    /// <summary>Centre distance, mm.</summary>
    public double CentreDistance => (Diameter + WheelDiameter) / 2;

    /// <summary>Pressure angle across the thread alpha_n, rad.</summary>
    public double NormalPressureAngle => Math.Atan(Math.Tan(Rack.PressureAngle) * Math.Cos(LeadAngle));

    /// <summary>Tip radius of the worm, mm.</summary>
    public double TipRadius => Diameter / 2 + Rack.Addendum * Module;

    /// <summary>Root radius of the worm, mm.</summary>
    public double RootRadius => Diameter / 2 - Rack.Dedendum * Module;

    /// <summary>Depth of the thread, mm.</summary>
    public double Depth => (Rack.Addendum + Rack.Dedendum) * Module;

    /// <summary>Least friction with which the wheel can't drive the worm.</summary>
    public double LockingFriction => Math.Cos(NormalPressureAngle) * Math.Tan(LeadAngle);

    /// <summary>Efficiency where the worm drives, with a coefficient of friction.</summary>
    public double Efficiency(double friction)
    {
        var (cos, tan) = (Math.Cos(NormalPressureAngle), Math.Tan(LeadAngle));
        return (cos - friction * tan) / (cos + friction / tan);
    }

    /// <summary>Efficiency where the wheel drives; 0 or less where the pair is self-locking.</summary>
    public double BackEfficiency(double friction)
    {
        var (cos, tan) = (Math.Cos(NormalPressureAngle), Math.Tan(LeadAngle));
        return (cos - friction / tan) / (cos + friction * tan);
    }

    /// <summary>How much wider gaps cut straight through a plate must be, mm.</summary>
    /// <param name="thickness">Thickness of the plate, mm.</param>
    public double Slant(double thickness) => thickness * Math.Tan(LeadAngle);

    /// <summary>How much less deep the worm stands in the gaps at the faces of a flat plate, mm.</summary>
    /// <param name="thickness">Thickness of the plate, mm.</param>
    public double Shallow(double thickness) => TipRadius - Math.Sqrt(Math.Max(0, TipRadius * TipRadius - thickness * thickness / 4));

    /// <summary>Length of the worm along which the wheel's tip circle stands within the thread, mm.</summary>
    public double Reach
    {
        get
        {
            var (tip, out0) = (WheelDiameter / 2 + Rack.Addendum * Module, CentreDistance - TipRadius);
            return 2 * Math.Sqrt(Math.Max(0, tip * tip - out0 * out0));
        }
    }
}
