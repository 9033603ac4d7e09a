using Jackwork.Geometry;
using Jackwork.Motion;
using static System.FormattableString;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A slide with a rack that a pinion on the driver moves.</summary>
internal sealed class RackStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "rack";

    /// <inheritdoc/>
    public override string Words => "a rack";

    /// <inheritdoc/>
    public override bool OnlySlides => true;

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        site.IsShaft ? $"'{site.Name}' goes round; a rack needs a driver that swings to and fro"
        : site.Joint.Kind != JointKind.Pivot ? $"'{site.Name}' does not turn on a pivot; a rack needs a pinion on a driver that does"
        : null;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Up and down, on the side where there is more room, wide enough for the cutter.
        var (teeth, module) = (20, Math.Max(2, Math.Ceiling(2 * site.Work.Proof.Cutter / 1.1) / 2));
        var distance = module * (teeth / 2.0 + 3);
        Vec3[] sides = [site.Side, -1 * site.Side];
        var side = site.Room.Best(sides, s => Room.Points(4, site.Joint.Through + distance * s + 30 * site.Up, site.Joint.Through + distance * s + -30 * site.Up));
        var carrier = site.Work.Machine.Members[site.Driver].Carrier;
        var on = carrier == Member.Case ? "" : $"on: {site.Work.Machine.NameOf(carrier)}, ";
        return Invariant($"{{{on}slide: {{along: {V(site.Up)}, through: {P(site.Joint.Through + distance * side)}}}, rack: {{with: {site.Name}, teeth: {teeth}, module: {module}, towards: {V(side)}}}}}");
    }
}
