using Jackwork.Geometry;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft square to the driver's that a pair of mitre wheels turns as fast.</summary>
internal sealed class BevelStarter : Starter
{
    private const int Teeth = 20;

    private const double Module = 2;

    /// <inheritdoc/>
    public override string Key => "bevel";

    /// <inheritdoc/>
    public override string Words => "a mitre pair";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Where the new shaft and both wheels are least in the way: along the driver's shaft, up or to a side, the driver's wheel before or behind.
        var (low, high) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var (pitch, out0) = (Module * Teeth / 2, Module * Teeth / 2 + 2 * Module);
        var choices = from share in (double[])[0.5, 0.3, 0.7]
                      from towards in (Vec3[])[site.Up, site.Side, -site.Side, -site.Up]
                      from ahead in (bool[])[false, true]
                      select (Meeting: site.Joint.Through + Math.Round(low + share * (high - low)) * site.Along, Towards: towards, Ahead: ahead);
        var best = site.Room.Best(choices, c => Room.Disc(c.Meeting + pitch * c.Towards, c.Towards, out0, pitch / 2, pitch)
            .Around(Room.Disc(c.Meeting + (c.Ahead ? pitch : -pitch) * site.Along, site.Along, out0, pitch / 2, pitch / 2)));
        return Invariant($"{{{site.On}pivot: {{through: {P(best.Meeting + 2 * pitch * best.Towards)}, along: {V(best.Towards)}}}, gear: {{with: {site.Name}, teeth: [{Teeth}, {Teeth}], module: {Module}, bevel: {{sides: [{(best.Ahead ? "ahead" : "behind")}, ahead]}}}}}}");
    }
}
