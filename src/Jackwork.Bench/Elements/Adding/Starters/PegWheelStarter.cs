using Jackwork.Geometry;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft at right angles to its driver's, turned as fast by a pair of wheels with pegs in their rims.</summary>
internal sealed class PegWheelStarter : Starter
{
    /// <summary>Distance of either axis from where the pegs cross, and radius and half thickness of what turns there, mm.</summary>
    private const double Circle = 30, Outside = 34, Half = 6;

    /// <inheritdoc/>
    public override string Key => "peg-wheel";

    /// <inheritdoc/>
    public override string Words => "a pair of peg wheels";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // The axes meet on the driver's shaft; its wheel stands to either side of there, the other wheel where it is least in the way.
        var (low, high) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var choices = from step in Enumerable.Range(0, 9)
                      let station = Math.Round(low + (high - low) * (0.5 + (step % 2 == 0 ? 0.5 : -0.5) * step / 8))
                      from side in (double[])[-Circle, Circle]
                      from axis in (Vec3[])[site.Up, site.Side, -site.Side, -site.Up]
                      let meet = site.Joint.Through + station * site.Along
                      select (Meet: meet, At: meet + side * site.Along + Circle * axis, Axis: axis, Wheel: meet + side * site.Along);
        var best = site.Room.Best(choices, c => Room.Disc(c.Wheel, site.Along, Outside, Half, Half).Around(Room.Disc(c.Meet + Circle * c.Axis, c.Axis, Outside, Half, 4 * Half)));
        return FormattableString.Invariant($"{{{site.On}pivot: {{through: {P(best.Meet + Circle * best.Axis)}, along: {V(best.Axis)}}}, pin-wheel: {{from: {site.Name}, pins: [12, 12], pegs: both, circle: {Circle}, at: {P(best.At)}}}}}");
    }
}
