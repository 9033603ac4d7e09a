using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>The arm of a differential whose second wheel is fixed to begin with: it turns half as fast as its driver.</summary>
internal sealed class DifferentialStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "differential";

    /// <inheritdoc/>
    public override string Words => "a differential";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // About the driver's own axis, where the wheels are least in the way along it.
        var (from, to) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var at = site.Room.Best(Enumerable.Range(0, 9).Select(i => site.Joint.Through + (from + (to - from) * i / 8) * site.Along), p => Room.Disc(p, site.Along, 52, 14, 18));
        return $"{{pivot: {{through: {P(site.Joint.Through)}, along: {V(site.Along)}}}, differential: {{from: {site.Name}, teeth: [24, 24], module: 1.5, at: {P(at)}}}, body: {{bare: true}}}}";
    }
}
