using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that an eccentric moves: straight up on a flat face, or a lever on a roller.</summary>
internal sealed class EccentricStarter : Starter
{
    private const double Throw = 6, Radius = 18, Roller = 8, Lever = 40, Face = 24;

    /// <inheritdoc/>
    public override string Key => "eccentric";

    /// <inheritdoc/>
    public override string Words => "an eccentric";

    /// <inheritdoc/>
    public override string DriverWord => "on";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Along the shaft where there is room; the disc's middle stands to the side, so that the follower is drawn in mid-move.
        var (from, to) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var stations = Enumerable.Range(0, Math.Max(1, (int)(to - from) - 24)).Select(i => Math.Round(from + 12 + i)).OrderBy(s => Math.Abs(s - (from + to) / 2));
        var station = site.Room.Best(stations, s => Room.Disc(site.Joint.Through + s * site.Along, site.Along, Throw + Radius, 4, 12));
        var axis = site.Joint.Through + station * site.Along;
        var centre = axis + Throw * site.Side;
        if (slides)
        {
            return Invariant($"{{slide: {{along: {V(site.Up)}}}, eccentric: {{on: {site.Name}, centre: {P(centre)}, at: {P(axis + Radius * site.Up)}, flat: {Face}}}}}");
        }

        var at = centre + (Radius + Roller / 2) * site.Up;
        return Invariant($"{{pivot: {{through: {P(at + -Lever * site.Side)}, along: {V(site.Along)}}}, eccentric: {{on: {site.Name}, centre: {P(centre)}, at: {P(at)}, roller: {Roller}}}}}");
    }
}
