using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that a rod moves.</summary>
internal sealed class RodStarter : Starter
{
    private const double Crank = 8, Arm = 25, Rise = 70;

    /// <inheritdoc/>
    public override string Key => "rod";

    /// <inheritdoc/>
    public override string Words => "a rod";

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        if (site.Joint.Kind == JointKind.Guide)
        {
            return Lifted(site, slides);
        }

        // A rod up from a pin on the driver: from a shaft as crank and rocker, else as a parallelogram whose arms are square to the rod in mid-move.
        var arm = site.IsShaft ? Crank * site.Up : site.Joint.Lifts ? 0 * site.Up : Arm * MidMove(site);
        var from = site.Joint.Through + 8 * site.Along + arm;
        if (slides)
        {
            return $"{{slide: {{along: {V(site.Up)}}}, rod: {{from: {site.Name}, pins: [{P(from)}, {P(from + Rise * site.Up)}]}}}}";
        }

        var (to, rocker) = site.IsShaft || site.Joint.Lifts ? (site.Joint.Through + 8 * site.Along + Rise * site.Up, Arm * site.Side) : (from + Rise * site.Up, arm);
        return $"{{pivot: {{through: {P(to + -1.0 * rocker)}, along: {V(site.Along)}}}, rod: {{from: {site.Name}, pins: [{P(from)}, {P(to)}]}}}}";
    }

    // A rod straight on from a pin near the axis of a guided driver, which its turn moves little; the arm is long enough for the whole lift.
    private static string Lifted(StartSite site, bool slides)
    {
        var from = site.Joint.Through + 8 * site.Along + Crank * site.Up;
        var to = from + Rise * site.Along;
        var arm = Math.Max(Arm, 1.5 * Math.Max(-site.Reach.Least, site.Reach.Most));
        var joint = slides ? $"slide: {{along: {V(site.Along)}}}" : $"pivot: {{through: {P(to + -arm * site.Up)}, along: {V(site.Side)}}}";
        return $"{{{joint}, rod: {{from: {site.Name}, pins: [{P(from)}, {P(to)}]}}}}";
    }

    // The direction that stands sideways when the driver is halfway through what it does.
    private static Vec3 MidMove(StartSite site)
    {
        var (least, most) = site.Reach;
        var (sin, cos) = Math.SinCos(-(least + most) / 2);
        return cos * site.Side + sin * site.Along.Cross(site.Side);
    }
}
