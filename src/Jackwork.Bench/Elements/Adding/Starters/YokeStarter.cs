using Jackwork.Design;
using Jackwork.Geometry;
using static System.FormattableString;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A slide with a yoke round a disc of constant breadth: out in half a turn, back in the other.</summary>
internal sealed class YokeStarter : Starter
{
    private const double Base = 24, Lift = 8, Face = 50;

    /// <inheritdoc/>
    public override string Key => "yoke";

    /// <inheritdoc/>
    public override string Words => "a yoke round a cam";

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool NeedsEvenShaft => true;

    /// <inheritdoc/>
    public override bool OnlySlides => true;

    /// <inheritdoc/>
    public override string DriverWord => "on";

    /// <inheritdoc/>
    public override TextEdit Finish(TextEdit added, string name, StartSite site, bool slides) => DesignText.Add(
        added.Text, "timing", name, $"{{over: {site.Name}, moves: [{{from: 0, to: 180, reach: {Lift}}}, {{from: 180, to: 360, reach: rest}}]}}");

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // Along the shaft where the frame has room all round the disc.
        var (from, to) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        var stations = Enumerable.Range(0, Math.Max(1, (int)(to - from) - 24)).Select(i => Math.Round(from + 12 + i)).OrderBy(s => Math.Abs(s - (from + to) / 2));
        var station = site.Room.Best(stations, s => Room.Disc(site.Joint.Through + s * site.Along, site.Along, Base + 2 * Lift + 12, 4, 12));
        var at = site.Joint.Through + station * site.Along + Base * site.Up;
        return Invariant($"{{{site.On}slide: {{along: {V(site.Up)}}}, cam: {{on: {site.Name}, follower: {{flat: {Face}, at: {P(at)}, facing: {V(-site.Up)}}}, base: {Base}, hub: 14, yoke: {{}}}}}}");
    }
}
