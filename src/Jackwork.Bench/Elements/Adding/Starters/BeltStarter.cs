using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that a chain turns half as fast.</summary>
internal sealed class BeltStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "belt";

    /// <inheritdoc/>
    public override string Words => "a belt";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides) => $"{{pivot: {{through: {P(site.Room.Best(site.Around(80), p => Room.Disc(p, site.Along, 20, 4, 12)))}, along: {V(site.Along)}}}, belt: {{with: {site.Name}, teeth: [12, 24]}}}}";
}
