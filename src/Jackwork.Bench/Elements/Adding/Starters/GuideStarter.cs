using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Guides;
using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that a rod pushes along a guide: straight up, then aside.</summary>
internal sealed class GuideStarter : Starter
{
    private const double Crank = 5, Stroke = 10, ShortArm = 6, LongArm = 25, Rod = 60, Arm = 14;

    /// <summary>Track kept free at its ends at the least, mm, and its least length; rounding of its join; its radius at the least; half the arm's thickness, and the room above it at its highest.</summary>
    private const double Spare = 4, Shortest = 16, Rounding = 3, Radius = 8, HalfArm = 3, Above = 2;

    /// <summary>The rod's share along the guide's axis, and across it.</summary>
    private const double Up = 0.66;

    private static readonly double Across = Math.Sqrt(1 - Up * Up);

    /// <inheritdoc/>
    public override string Key => "guide";

    /// <inheritdoc/>
    public override string Words => "a rod into a guide";

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // The rod leans by half a right angle, so that it can lift and swing alike; the corner of the track is met halfway through what the driver does.
        var along = site.Joint.Lifts ? site.Along : site.Up;
        var towards = Up * along + Across * site.Side;
        var (pin, back, on) = Pin(site, towards);
        var length = Math.Max(Shortest, 2 * Spare + (back + on) / Up);
        var before = (length + (back - on) / Up) / 2;
        var radius = Math.Round(Math.Max(Radius, length / 2 - Spare));
        var (lift, swing) = (Math.Round(length / 2, 1), Math.Round(length / 2 / radius * 180 / Math.PI));
        var end = pin + Rod * towards;

        // At half its swing the arm stands square to the rod.
        var turned = Math.Max(0, before - lift) / radius - (length / 2 - Spare) / radius / 2;
        var arm = Math.Cos(turned) * site.Side.Cross(along) + Math.Sin(turned) * site.Side;
        var risen = Math.Min(before, lift);
        var (low, top) = (-risen - radius, lift - risen + 2 * radius);
        var through = end + -Arm * arm + (lift - risen + HalfArm + Above - low) * along;

        // Beside a driver that is carried about it sits on the same carrier.
        var carrier = site.Work.Machine.Members[site.Driver].Carrier;
        var sits = carrier == Member.Case ? "" : $"on: {site.Work.Machine.NameOf(carrier)}, ";
        return $"{{{sits}guide: {{through: {P(through)}, along: {V(along)}, outside: {N(2 * radius)}, rounding: {N(Rounding)}, drawn: {N(before)}, track: [{{lift: {N(lift)}}}, {{swing: {N(swing)}}}], sleeve: [{N(low)}, {N(top)}]}}, rod: {{from: {site.Name}, pins: [{P(pin)}, {P(end)}]}}}}";
    }

    // A pin on the driver, and how far it goes back and on along the rod.
    private static (Point3 Pin, double Back, double On) Pin(StartSite site, Vec3 towards)
    {
        var from = site.Joint.Through + 8 * site.Along;
        var across = towards.Cross(site.Along);
        if (site.IsShaft)
        {
            return (from + Crank * across, Crank, Crank);
        }

        var (least, most) = (Math.Min(0, site.Reach.Least), Math.Max(0, site.Reach.Most));

        // Near its axis, where a driver that also turns moves it little aside.
        if (site.Joint.Lifts)
        {
            return (from + (site.Joint.Turns ? ShortArm : 0) * site.Side, -least, most);
        }

        // An arm that gives a handy stroke, square to the rod halfway.
        var radius = Math.Clamp(Stroke / Math.Max(most - least, 0.01), ShortArm, LongArm);
        var (sin, cos) = Math.SinCos((least + most) / 2);
        return (from + radius * (cos * across - sin * towards), -radius * least, radius * most);
    }

    private static string N(double v) => DesignText.Number(v, 3);
}
