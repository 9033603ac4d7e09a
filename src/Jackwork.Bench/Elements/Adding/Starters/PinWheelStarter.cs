using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that a pair of pin wheels turns, half as fast as its driver.</summary>
internal sealed class PinWheelStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "pin-wheel";

    /// <inheritdoc/>
    public override string Words => "a pin wheel";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Parallel to the driver, on the side where the wheel is least in the way.
        var through = site.Room.Best(site.Around(48), p => Room.Disc(p, site.Along, 36, 12, 20));
        return $"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, pin-wheel: {{from: {site.Name}, pins: [9, 18]}}}}";
    }
}
