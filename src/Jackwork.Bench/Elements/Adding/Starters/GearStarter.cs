using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that a pair of wheels turns half as fast.</summary>
internal sealed class GearStarter : Starter
{
    // Of a module, the widest cutter that passes the gaps of the wheels below.
    private const double Passed = 1.1;

    /// <inheritdoc/>
    public override string Key => "gear";

    /// <inheritdoc/>
    public override string Words => "wheels";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Half as fast, on the side where its wheel is least in the way.
        var module = site.Work.Machine.Design.Members.Select(m => m.Value.Gear?.Module).FirstOrDefault(m => m is not null) ?? Math.Max(2, Math.Ceiling(2 * site.Work.Proof.Cutter / Passed) / 2);
        var (pinion, wheel) = (16, 32);
        var middle = site.Room.Reach(site.Driver, site.Joint.Through, site.Along) is var (from, to) ? Math.Round((from + to) / 2) : 0;
        var distance = module * (pinion + wheel) / 2;
        var through = site.Room.Best(
            site.Around(distance).Select(p => p + middle * site.Along),
            p => Room.Disc(p, site.Along, module * (wheel + 2) / 2, 4, 12));
        return Invariant($"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, gear: {{with: {site.Name}, teeth: [{pinion}, {wheel}], module: {module}}}}}");
    }
}
