using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member with a slot that a pin on its driver moves in.</summary>
internal sealed class SlotStarter : Starter
{
    private const double Crank = 8, Lever = 40, Arm = 25;

    /// <inheritdoc/>
    public override string Key => "slot";

    /// <inheritdoc/>
    public override string Words => "a pin in a slot";

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) => site.Joint.Kind != JointKind.Pivot ? $"'{site.Name}' {(site.Joint.Turns ? "runs in a guide" : "slides")}; let a rod lead on from it" : null;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // A pin on the driver, beside whose axis the driven one's stands, in a slot that runs out from there.
        var pin = site.Joint.Through + (site.IsShaft ? Crank + 2 : Arm) * site.Up + 8 * site.Along;
        var pivot = site.Joint.Through + 8 * site.Along + -Lever * site.Side;
        return slides
            ? $"{{slide: {{along: {V(site.Up)}}}, slot: {{from: {site.Name}, pin: {P(pin)}, along: {V(site.Side)}}}}}"
            : $"{{pivot: {{through: {P(pivot)}, along: {V(site.Along)}}}, slot: {{from: {site.Name}, pin: {P(pin)}, along: {V((pin - pivot).Unit())}}}}}";
    }
}
