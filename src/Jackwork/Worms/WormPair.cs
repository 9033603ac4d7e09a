using Jackwork.Gears;

namespace Jackwork.Worms;

/// <summary>A cylindrical worm and its wheel, shafts square.</summary>
/// <remarks>
/// <para>Axial module m, z1 starts, reference diameter d1, wheel of z2 teeth: lead L = pi m z1, lead angle tan g = m z1/d1, wheel d2 = m z2, centre distance a = (d1 + d2)/2.
/// The thread is a rack along the worm, flanks at alpha in the axial section; across the thread tan(alpha_n) = tan(alpha) cos(g).</para>
/// <para>With friction f the worm drives with the efficiency (cos(alpha_n) - f tan g)/(cos(alpha_n) + f/tan g); the wheel drives the worm with
/// (cos(alpha_n) - f/tan g)/(cos(alpha_n) + f tan g), and not at all, the pair being self-locking, where f is at least cos(alpha_n) tan g.</para>
/// <para>R. L. Mott, Machine Elements in Mechanical Design, 4th ed., section 8-10; R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, section 13-17, worm gearing (from memory).</para>
/// <para>A plate of the thickness t with gaps cut straight through it: at the height z from its middle plane and the depth y from the worm's axis a thread stands (L/2pi) atan(z/y) farther on than in
/// the middle plane, and is thinner by (sqrt(y^2 + z^2) - y) tan(alpha) on either side. With z = y tan(b) it stands out of the middle plane's thread by at most
/// E = (L/2pi) b - y (1/cos b - 1) tan(alpha),  largest at the wheel's tip, y = d1/2 - ha m, and at sin b = (sqrt(1 + 4 c^2) - 1)/2c, c = L/(2 pi y tan(alpha)), or at the plate's face.
/// Gaps that are 2E wider clear it at every height. (Ours.)</para>
/// <para>A flat plate does not bend round the worm: at its faces the worm's tip, of radius ra1, is ra1 - sqrt(ra1^2 - t^2/4) less deep in the gap.</para>
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
    public double Widening(double thickness)
    {
        var (y, tan) = (Diameter / 2 - Rack.Addendum * Module, Math.Tan(Rack.PressureAngle));
        var c = Lead / (2 * Math.PI * y * tan);
        var b = Math.Min(Math.Asin((Math.Sqrt(1 + 4 * c * c) - 1) / (2 * c)), Math.Atan(thickness / 2 / y));
        return 2 * (Lead / (2 * Math.PI) * b - y * (1 / Math.Cos(b) - 1) * tan);
    }

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
