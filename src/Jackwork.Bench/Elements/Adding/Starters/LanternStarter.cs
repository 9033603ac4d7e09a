using Jackwork.Lanterns;
using static System.FormattableString;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft with a lantern that a wheel on the driver turns twice as fast.</summary>
internal sealed class LanternStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "lantern";

    /// <inheritdoc/>
    public override string Words => "a lantern";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // On the side where its discs are least in the way, in the middle of the driver's shaft; pins no thinner than the cutter, which passes the gaps between their teeth.
        var (teeth, pins, pin) = (20, 10, Math.Max(4, Math.Ceiling(site.Work.Proof.Cutter)));
        var sizes = new LanternSizes(teeth, pins, Math.Ceiling(1.25 * pin * (teeth + pins)) / 2, pin);
        var middle = site.Room.Reach(site.Driver, site.Joint.Through, site.Along) is var (from, to) ? Math.Round((from + to) / 2) : 0;
        var through = site.Room.Best(
            site.Around(sizes.CentreDistance).Select(p => p + middle * site.Along),
            p => Room.Disc(p, site.Along, sizes.UsualDisc, 10, 18));
        return Invariant($"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, lantern: {{with: {site.Name}, teeth: {teeth}, pins: {pins}, pin: {pin}}}}}");
    }
}
