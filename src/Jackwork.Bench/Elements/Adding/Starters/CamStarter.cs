using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that follows a cam: on a lever like those that are there, or of its own behind the shaft, or straight up.</summary>
/// <param name="key">Key of the starter.</param>
/// <param name="words">What moves the member, with its article.</param>
/// <param name="more">Further keys of the cam, after a comma.</param>
/// <param name="outside">How far the cam's plates reach beyond its outline, mm.</param>
/// <param name="law">Law of the move that brings the member back; null for the usual one.</param>
internal sealed class CamStarter(string key, string words, string more, double outside, string? law = null) : Starter
{
    /// <summary>A cam that weight or a spring keeps its follower on.</summary>
    public CamStarter()
        : this("cam", "a cam", "", 0)
    {
    }

    private const double Base = 24, Roller = 8, Lever = 40;

    /// <inheritdoc/>
    public override string Key => key;

    /// <inheritdoc/>
    public override string Words => words;

    /// <inheritdoc/>
    public override bool NeedsShaft => true;

    /// <inheritdoc/>
    public override bool NeedsEvenShaft => true;

    /// <inheritdoc/>
    public override string DriverWord => "on";

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        ShaftTurn.IsEven(site.Work.Machine.Drives, site.Driver) ? null : $"'{site.Name}' does not turn evenly; a cam needs a driver that turns evenly";

    /// <inheritdoc/>
    public override TextEdit Finish(TextEdit added, string name, StartSite site, bool slides) => NewMember.Chart(added.Text, name, site.Name, slides, law);

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // A cam on the shaft, its follower above it: on a lever like those that are there, or of its own behind the shaft; or straight up.
        var like = slides ? null : site.Work.Machine.Drives.OfType<CamDrive>()
            .FirstOrDefault(c => c.Driver == site.Driver && site.Work.Machine.Members[c.Driven].Joint.Kind == JointKind.Pivot && c.Spec.Follower.Roller is not null);
        var (at, pivot) = like is null
            ? (site.Joint.Through + (Base + Roller / 2) * site.Up, site.Joint.Through + (Base + Roller / 2) * site.Up + -Lever * site.Side)
            : (like.Spec.Follower.At, site.Work.Machine.Members[like.Driven].Joint.Through);
        var outward = (at - site.Joint.Through).Across(site.Along).Unit();
        var radius = (like is null ? Base + 12 : (at - site.Joint.Through).Across(site.Along).Length + 6) + outside;
        var (from, to) = site.Room.Reach(site.Driver, site.Joint.Through, site.Along);
        Point3 On(Point3 p, double station) => site.Joint.Foot(p) is var foot ? p + ((site.Joint.Through - foot).Dot(site.Along) + station) * site.Along : p;
        var middle = (from + to) / 2;
        var stations = Enumerable.Range(0, Math.Max(1, (int)(to - from) - 24)).Select(i => Math.Round(from + 12 + i)).OrderBy(s => Math.Abs(s - middle));
        var station = site.Room.Best(stations, s => slides
            ? Room.Disc(site.Joint.Through + s * site.Along, site.Along, radius, 4, 12)
            : Room.Disc(site.Joint.Through + s * site.Along, site.Along, radius, 4, 12).Around(Room.Points(5, On(at, s), On(pivot, s))));
        (at, pivot) = (On(at, station), On(pivot, station));
        var spec = like?.Spec;
        var cam = Invariant($"cam: {{on: {site.Name}, follower: {{roller: {spec?.Follower.Roller ?? Roller}, at: {P(at)}}}, base: {(spec?.Base is { Word: null, Number: var b } ? b : Base)}, hub: {spec?.Hub ?? 14}, bore: {spec?.Bore ?? 6}{(spec?.HubSide is { } hub ? $", hub-side: {hub}" : "")}{more}}}");
        if (slides)
        {
            return $"{{slide: {{along: {V(outward)}}}, {cam}}}";
        }

        // The lever turns so that a positive angle lifts the follower off the cam.
        var lifts = site.Along.Cross(at - pivot).Dot(outward) > 0 ? site.Along : -site.Along;
        var shared = like is not null && site.Room.Reach(like.Driven, site.Joint.Through, site.Along) is var (low, high) && low < station && station < high ? ", body: {axle: 0}" : "";
        return $"{{pivot: {{through: {P(pivot)}, along: {V(lifts)}}}, {cam}{shared}}}";
    }
}
