using Jackwork.Geometry;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft across the driver's that a worm on it turns once for thirty turns.</summary>
internal sealed class WormStarter : Starter
{
    private const int Teeth = 30;

    private const double Thickness = 5;

    /// <inheritdoc/>
    public override string Key => "worm";

    /// <inheritdoc/>
    public override string Words => "a worm";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // As fine as the cutter passes, on a worm of twelve modules.
        var module = Math.Max(1.5, Math.Ceiling(2 * site.Work.Proof.Cutter / 1.1) / 2);
        var (low, high) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var (distance, radius) = (module * (12 + Teeth) / 2, module * (Teeth + 2) / 2);
        var choices = from share in (double[])[0.5, 0.3, 0.7]
                      from towards in (Vec3[])[site.Up, site.Side, -site.Side, -site.Up]
                      select (At: site.Joint.Through + (Math.Round(low + share * (high - low)) * site.Along + distance * towards), Towards: towards);
        var best = site.Room.Best(choices, c => Room.Disc(c.At, site.Along.Cross(c.Towards), radius, Thickness, Thickness + 8));
        return Invariant($"{{{site.On}pivot: {{through: {P(best.At)}, along: {V(site.Along.Cross(best.Towards))}}}, gear: {{with: {site.Name}, teeth: [1, {Teeth}], module: {module}, thickness: {Thickness}, worm: {{diameter: {12 * module}}}}}}}");
    }
}
