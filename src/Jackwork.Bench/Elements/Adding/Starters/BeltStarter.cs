using Jackwork.Belts;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that a chain of whole links turns half as fast.</summary>
internal sealed class BeltStarter : Starter
{
    /// <summary>A chain 05B of ISO 606: pitch and rollers, mm (from memory).</summary>
    private const double Pitch = 8, Roller = 5;

    private const int Links = 40;

    /// <inheritdoc/>
    public override string Key => "belt";

    /// <inheritdoc/>
    public override string Words => "a belt";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        var (small, large) = (new Sprocket(Pitch, Roller, 12), new Sprocket(Pitch, Roller, 24));
        var distance = new BeltRun(small.PitchRadius, large.PitchRadius, 0, false).DistanceFor(Links * Pitch)!.Value;
        var through = site.Room.Best(site.Around(distance), p => Room.Disc(p, site.Along, large.TipRadius, 4, 12));
        return Invariant($"{{pivot: {{through: {P(through)}, along: {V(site.Along)}}}, belt: {{with: {site.Name}, teeth: [12, 24], pitch: {Pitch}, roller: {Roller}}}}}");
    }
}
