using Jackwork.Design;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that runs in the groove of a barrel: along the shaft, over it; or on a lever that turns about an upright axis behind it.</summary>
internal sealed class BarrelStarter : Starter
{
    private const double Radius = 24, Depth = 4, Length = 30, Lever = 40, Rod = 18;

    /// <inheritdoc/>
    public override string Key => "barrel";

    /// <inheritdoc/>
    public override string Words => "a barrel cam";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool NeedsEvenShaft => true;

    /// <inheritdoc/>
    public override string DriverWord => "on";

    /// <inheritdoc/>
    public override TextEdit Finish(TextEdit added, string name, StartSite site, bool slides) => NewMember.Chart(added.Text, name, site.Name, slides);

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        var (from, to) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var middle = (from + to) / 2;
        var stations = Enumerable.Range(0, Math.Max(1, (int)(to - from) - 40)).Select(i => Math.Round(from + 20 + i)).OrderBy(s => Math.Abs(s - middle));
        var station = site.Room.Best(stations, s => Room.Disc(site.Joint.Through + s * site.Along, site.Along, Radius + Rod, Length / 2, Length / 2 + 8));
        var at = site.Joint.Through + station * site.Along + (Radius - Depth) * site.Up;
        var barrel = Invariant($"barrel: {{on: {site.Name}, roller: 6, at: {P(at)}, radius: {Radius}, length: {Length}}}");
        return slides
            ? $"{{slide: {{along: {V(site.Along)}, through: {P(at + (Depth + Rod) * site.Up)}}}, {barrel}}}"
            : $"{{pivot: {{through: {P(at + -Lever * site.Side)}, along: {V(site.Up)}}}, {barrel}}}";
    }
}
