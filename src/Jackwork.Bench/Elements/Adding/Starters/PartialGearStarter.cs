using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that a partial gear turns once in about half a turn of the driver.</summary>
internal sealed class PartialGearStarter : Starter
{
    // Of a module, the widest cutter that passes the gaps of the wheels below.
    private const double Passed = 1.1;

    private const int Driver = 42, Driven = 21;

    /// <inheritdoc/>
    public override string Key => "partial-gear";

    /// <inheritdoc/>
    public override string Words => "a partial gear";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Parallel to the driver, on the side where the wheel is least in the way.
        var module = Math.Max(2, Math.Ceiling(2 * site.Work.Proof.Cutter / Passed) / 2);
        var through = site.Room.Best(site.Around(module * (Driver + Driven) / 2), p => Room.Disc(p, site.Along, module * (Driven + 4) / 2, 12, 20));
        return Invariant($"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, partial-gear: {{from: {site.Name}, teeth: [{Driver}, {Driven}], module: {module}}}}}");
    }
}
