using Jackwork.Geometry;
using Jackwork.Motion;
using static System.FormattableString;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that a cord pulls: up from the driver, over a pulley and down again, with a spring that keeps it taut.</summary>
internal sealed class CordStarter : Starter
{
    private const double Crank = 8, Arm = 25, Rise = 75, Pulley = 20, Beside = (Pulley + 1) / 2, Hang = 55, Spring = 40;

    /// <summary>How much longer the member's arm and the piece that hangs down to it are than what the driver moves, so that it stays well off its dead centre.</summary>
    private const double Spare = 2;

    /// <inheritdoc/>
    public override string Key => "cord";

    /// <inheritdoc/>
    public override string Words => "a cord";

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // From an arm of a member that turns, up and across its axis; from one that slides or lifts, along that. What goes aside as well is led through eyes.
        var (kind, turns) = (site.Joint.Kind, site.Joint.Kind == JointKind.Pivot);
        var (up, along) = turns ? (site.Up, site.Along) : (site.Along, site.Up);
        var from = site.Joint.Through + (turns ? 8 * site.Along + (site.IsShaft ? Crank * up : Arm * MidMove(site)) : 0 * up);
        var swing = Math.Max(-site.Reach.Least, site.Reach.Most);
        var moves = site.IsShaft ? 2 * Crank : turns ? Arm * swing : swing;
        var (arm, hang) = (Math.Max(Arm, Spare * moves), Math.Max(Hang, Spare * moves));
        Vec3[] sides = [along.Cross(up), -1 * along.Cross(up)];
        Point3 Top(Vec3 s) => from + Rise * up + Beside * s;
        Point3 Tied(Vec3 s) => Top(s) + Beside * s + -hang * up;
        var side = site.Room.Best(sides, s => Room.Points(4, Top(s), Tied(s), Tied(s) + -Spring * up));
        var (top, tied) = (Top(side), Tied(side));
        var carrier = site.On.Length == 0 ? "" : $", {site.On.TrimEnd(' ', ',')}";
        var led = kind == JointKind.Guide ? "" : Invariant($", pulley: {Pulley}");
        var joint = slides ? $"slide: {{along: {V(up)}}}" : $"pivot: {{through: {P(tied + arm * side)}, along: {V(along)}}}";
        return Invariant($"{{{site.On}{joint}, cord: {{from: {site.Name}, across: {V(along)}, run: [{{at: {P(from)}, on: {site.Name}}}, {{at: {P(top)}{led}{carrier}}}, {{at: {P(tied)}, on: {site.Added}}}], spring: {{at: {P(tied)}, to: {P(tied + -Spring * up)}, pull: 1, rate: 0.02}}}}}}");
    }

    // The direction that stands sideways when the driver is halfway through what it does.
    private static Vec3 MidMove(StartSite site)
    {
        var (least, most) = site.Reach;
        var (sin, cos) = Math.SinCos(-(least + most) / 2);
        return cos * site.Side + sin * site.Along.Cross(site.Side);
    }
}
