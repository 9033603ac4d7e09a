using Jackwork.Geometry;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A shaft that goes on from the end of the driver's at 20 degrees.</summary>
internal sealed class UniversalStarter : Starter
{
    private const double Angle = 20 * Math.PI / 180;

    /// <inheritdoc/>
    public override string Key => "universal";

    /// <inheritdoc/>
    public override string Words => "a universal joint";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Beyond one end of the driver's shaft, up or to a side, where the forks and the new shaft are least in the way.
        var (low, high) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var choices = from ahead in (bool[])[true, false]
                      from aside in (Vec3[])[site.Up, site.Side, -site.Side, -site.Up]
                      let middle = site.Joint.Through + (ahead ? high + 24 : low - 24) * site.Along
                      select (Ahead: ahead, Middle: middle, Along: Math.Cos(Angle) * site.Along + (ahead ? 1 : -1) * Math.Sin(Angle) * aside);
        var best = site.Room.Best(choices, c => Room.Points(16, c.Middle + -20 * c.Along, c.Middle + 40 * c.Along));
        return $"{{pivot: {{through: [{Exact(best.Middle)}], along: [{Exact(default(Point3) + best.Along)}]}}, universal: {{from: {site.Name}{(best.Ahead ? "" : ", side: behind")}}}}}";
    }

    // The axes must meet within a millionth of a millimetre.
    private static string Exact(Point3 p) => string.Join(", ", new[] { p.X, p.Y, p.Z }.Select(v => Jackwork.Design.DesignText.Number(v, 9)));
}
