using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Ratchets;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A ratchet wheel fed by a member that swings, with as many teeth as suit its strokes.</summary>
internal sealed class RatchetStarter : Starter
{
    private const double Least = 26, Outside = 10, Beside = 10, Play = 0.3;

    private const int Most = 48;

    /// <inheritdoc/>
    public override string Key => "ratchet";

    /// <inheritdoc/>
    public override string Words => "a ratchet";

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        site.IsShaft || site.Joint.Kind != JointKind.Pivot ? $"'{site.Name}' does not swing to and fro about an axis, as the arm of a ratchet does"
        : Teeth(site) is null ? $"no wheel of {RatchetLaw.Fewest} to {Most} teeth suits the strokes of '{site.Name}'"
        : null;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        var teeth = Teeth(site)!.Value;

        // About the driver's axis, beside the plane of its arm; the pawl on the side where it is least in the way, the holding pawl across.
        var first = site.Work.Machine.Drives.SelectMany(d => d.Pins).Where(p => p.Member == site.Driver).Select(p => p.At).FirstOrDefault(site.Joint.Through);
        var arm = site.Joint.Through + (first - site.Joint.Through).Dot(site.Along) * site.Along;
        var off = site.Joint.Through - arm;
        var pawl = site.Room.Best(site.Around(Radius(site, teeth) + Outside).Select(p => p + -1.0 * off), p => Room.Points(6, p, p + Beside * site.Along));
        var radius = Radius(site, teeth);
        Vec3 across = arm - pawl;
        return FormattableString.Invariant($"{{{site.On}pivot: {{through: {site.OwnAxis}, along: {V(site.Along)}}}, ratchet: {{from: {site.Name}, teeth: {teeth}, radius: {radius:0.#}, pawl: {P(pawl)}, at: {P(arm + Beside * site.Along)}, hold-towards: {V(across.Unit())}}}, body: {{bare: true}}}}");
    }

    // As large as leaves the cutter room between the teeth.
    private static double Radius(StartSite site, int teeth) => Math.Max(Least, Math.Ceiling(teeth * (0.4 * site.Work.Proof.Cutter + 0.1)));

    // The wheel whose strokes are farthest from missing a tooth or taking one too many.
    private static int? Teeth(StartSite site)
    {
        var arm = site.Work.Proof.Motion.Of(site.Driver);
        var turns = site.Work.Machine.Performance.CrankTurns;
        int? best = null;
        var most = 0.0;
        for (var n = RatchetLaw.Fewest; n <= Most; n++)
        {
            var law = new RatchetLaw(n, Play / Radius(site, n));
            var feed = RatchetFeed.Of(law, arm, turns);
            var margin = feed.Strokes.Select(s => (s.Size - law.Play) / law.Pitch).Select(x => x < 1 ? 0 : 0.5 - Math.Abs(x - Math.Floor(x) - 0.5)).DefaultIfEmpty(0).Min();
            if (margin > most + 0.05)
            {
                (best, most) = (n, margin);
            }
        }

        return most > 0.15 ? best : null;
    }
}
