using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;
using static System.FormattableString;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that follows a cam: on a lever like those that are there, or of its own behind the shaft, or straight up.</summary>
/// <remarks>
/// The second follower of conjugate discs goes in as the first goes out: on a stem straight across the shaft, on a lever where its arm is square to its way
/// from the shaft, as the first's is. With D the lever's pivot from the shaft that is R out at the angle acos(R/D) from the pivot, on the far side from the first.
/// </remarks>
internal sealed class CamStarter : Starter
{
    private const double Base = 24, Roller = 8, Lever = 40;

    /// <summary>How much farther out the second follower of a pair stands than the first, so that it can go in by the first's travel, and how far along the shaft, so that a lever lies between the discs, mm.</summary>
    private const double Farther = 6, Beside = 14;

    private readonly string key, words;

    private readonly Func<Place, string> more;

    private readonly double outside, behind, ahead;

    private readonly string stem;

    private readonly string? law;

    private CamStarter(string key, string words, Func<Place, string> more, double outside = 0, double behind = 4, double ahead = 12, string stem = "", string? law = null) =>
        (this.key, this.words, this.more, this.outside, this.behind, this.ahead, this.stem, this.law) = (key, words, more, outside, behind, ahead, stem, law);

    /// <summary>A cam that weight or a spring keeps its follower on.</summary>
    public static CamStarter Plate => new("cam", "a cam", _ => "");

    /// <summary>A groove that drives the follower both ways; a stem's guide stands beyond its rim.</summary>
    public static CamStarter Groove => new("groove", "a groove cam", _ => ", groove: {}", outside: 14, stem: ", body: {to: 38, guide: {at: 28}}");

    /// <summary>Two discs that drive it both ways.</summary>
    public static CamStarter Conjugate => new("second", "a pair of conjugate cams", Second, outside: Farther, ahead: 12 + Beside);

    /// <summary>One that lifts its follower and lets it fall.</summary>
    public static CamStarter Drop => new("drop", "a drop cam", _ => "", law: Timing.Laws.MotionLaws.Drop);

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
            ? Room.Disc(site.Joint.Through + s * site.Along, site.Along, radius, behind, ahead)
            : Room.Disc(site.Joint.Through + s * site.Along, site.Along, radius, behind, ahead).Around(Room.Points(5, On(at, s), On(pivot, s))));
        (at, pivot) = (On(at, station), On(pivot, station));
        var spec = like?.Spec;
        var axis = site.Joint.Through + station * site.Along;
        var place = new Place(axis, site.Along, at, slides ? null : pivot, spec?.Follower.Roller ?? Roller);
        var cam = Invariant($"cam: {{on: {site.Name}, follower: {{roller: {spec?.Follower.Roller ?? Roller}, at: {P(at)}}}, base: {(spec?.Base is { Word: null, Number: var b } ? b : Base)}, hub: {spec?.Hub ?? 14}, bore: {spec?.Bore ?? 6}{(spec?.HubSide is { } hub ? $", hub-side: {hub}" : "")}{more(place)}}}");
        if (slides)
        {
            return $"{{slide: {{along: {V(outward)}}}, {cam}{stem}}}";
        }

        // The lever turns so that a positive angle lifts the follower off the cam.
        var lifts = site.Along.Cross(at - pivot).Dot(outward) > 0 ? site.Along : -site.Along;
        var shared = like is not null && site.Room.Reach(like.Driven, site.Joint.Through, site.Along) is var (low, high) && low < station && station < high ? ", body: {axle: 0}" : "";
        return $"{{pivot: {{through: {P(pivot)}, along: {V(lifts)}}}, {cam}{shared}}}";
    }

    private static string Second(Place place)
    {
        var first = place.At - place.Axis;
        var far = first.Length + Farther;
        var aside = -first.Unit();
        if (place.Pivot is { } pivot)
        {
            var towards = (pivot - place.Axis).Across(place.Along);
            var cos = Math.Min(0.9, far / towards.Length);
            far = cos * towards.Length;
            var square = -first.Across(towards.Unit()).Unit();
            aside = cos * towards.Unit() + Math.Sqrt(1 - cos * cos) * square;
        }

        return Invariant($", second: {{follower: {{roller: {place.Roller}, at: {P(place.Axis + far * aside + Beside * place.Along)}}}}}");
    }

    // Where a cam is laid out: the shaft's axis in its plane, the follower's roller there and the lever's pivot, none on a stem.
    private readonly record struct Place(Point3 Axis, Vec3 Along, Point3 At, Point3? Pivot, double Roller);
}
