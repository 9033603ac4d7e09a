using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that an intermittent pin wheel turns once in half a turn of the driver.</summary>
internal sealed class IntermittentStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "intermittent";

    /// <inheritdoc/>
    public override string Words => "an intermittent pin wheel";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Parallel to the driver, on the side where the wheel is least in the way.
        var through = site.Room.Best(site.Around(54), p => Room.Disc(p, site.Along, 24, 24, 12));
        return $"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, intermittent: {{from: {site.Name}, pins: 10}}}}";
    }
}
