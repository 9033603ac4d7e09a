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
        // A rod up from a pin on the driver: from a shaft as crank and rocker, else as a parallelogram whose arms are square to the rod in mid-move.
        var arm = site.IsShaft ? Crank * site.Up : site.Joint.Kind switch
        {
            JointKind.Slide => 0 * site.Up,
            JointKind.Pivot => Arm * MidMove(site),
            _ => Arm * site.Side,
        };
        var from = site.Joint.Through + 8 * site.Along + arm;
        if (slides)
        {
            return $"{{slide: {{along: {V(site.Up)}}}, rod: {{from: {site.Name}, pins: [{P(from)}, {P(from + Rise * site.Up)}]}}}}";
        }

        var (to, rocker) = site.IsShaft || site.Joint.Kind != JointKind.Pivot ? (site.Joint.Through + 8 * site.Along + Rise * site.Up, Arm * site.Side) : (from + Rise * site.Up, arm);
        return $"{{pivot: {{through: {P(to + -1.0 * rocker)}, along: {V(site.Along)}}}, rod: {{from: {site.Name}, pins: [{P(from)}, {P(to)}]}}}}";
    }

    // The direction that stands sideways when the driver is halfway through what it does.
    private static Vec3 MidMove(StartSite site)
    {
        var (least, most) = (double.MaxValue, double.MinValue);
        foreach (var q in site.Work.Proof.Motion.Of(site.Driver))
        {
            (least, most) = (Math.Min(least, q.Value), Math.Max(most, q.Value));
        }

        var (sin, cos) = Math.SinCos(-(least + most) / 2);
        return cos * site.Side + sin * site.Along.Cross(site.Side);
    }
}
