using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A pinion that a sector on a swinging lever turns to and fro, farther than the lever swings.</summary>
internal sealed class SectorStarter : Starter
{
    // Of a module, the widest cutter that passes the gaps of the wheels below.
    private const double Passed = 1.1;

    // The swing of the pinion that is aimed at, rad, and the teeth of the pinion and of the whole wheel.
    private const double Swing = Math.PI / 2;
    private const int Pinion = 14, Fewest = 42, Most = 70;

    /// <inheritdoc/>
    public override string Key => "sector";

    /// <inheritdoc/>
    public override string Words => "a sector and pinion";

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        site.IsShaft ? $"'{site.Name}' goes round; a sector needs a driver that swings to and fro"
        : site.Joint.Kind != JointKind.Pivot ? $"'{site.Name}' does not turn on a pivot; a sector needs a driver that does"
        : null;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // As many teeth as bring the pinion near a quarter turn, on the side where the pinion is least in the way.
        var swing = Math.Max(1e-3, site.Reach.Most - site.Reach.Least);
        var teeth = Math.Clamp((int)Math.Round(Pinion * Swing / swing), Fewest, Most);
        var module = Math.Max(1.5, Math.Ceiling(2 * site.Work.Proof.Cutter / Passed) / 2);
        var middle = site.Room.Reach(site.Driver, site.Joint.Through, site.Along) is var (_, to) ? Math.Round(to + 6) : 0;
        var distance = module * (Pinion + teeth) / 2;
        var through = site.Room.Best(
            site.Around(distance).Select(p => p + middle * site.Along),
            p => Room.Disc(p, site.Along, module * (Pinion + 2) / 2, 4, 12));
        return Invariant($"{{{site.On}pivot: {{through: {P(through)}, along: {V(site.Along)}}}, gear: {{with: {site.Name}, teeth: [{teeth}, {Pinion}], module: {module}, shift: [-0.2, 0.2], thinning: 0.1, driver-sector: {{rim: {4 * module}}}}}}}");
    }
}
