using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that a Geneva wheel turns a step at a time.</summary>
internal sealed class GenevaStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "geneva";

    /// <inheritdoc/>
    public override string Words => "a Geneva wheel";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Six slots on the side where the wheel is least in the way, standing locked.
        var through = site.Room.Best(site.Around(50), p => Room.Disc(p, site.Along, 44, 4, 12));
        return $"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, geneva: {{from: {site.Name}, slots: 6, pin-towards: {V((site.Joint.Through - through).Unit())}}}}}";
    }
}
