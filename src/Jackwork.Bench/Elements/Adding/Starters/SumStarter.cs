using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that a summing lever moves by half of what its driver and another member do.</summary>
internal sealed class SumStarter : Starter
{
    private const double Arm = 20, Own = 50, Apart = 10;

    /// <inheritdoc/>
    public override string Key => "sum";

    /// <inheritdoc/>
    public override string Words => "a summing lever";

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        site.IsShaft || site.Joint.Kind != JointKind.Pivot ? $"'{site.Name}' does not swing to and fro about an axis; let a rod lead on from it"
        : Second(site) is null ? $"no second member swings in the plane of '{site.Name}' to add to it"
        : null;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // The bar lies along the line from axis to axis, both arms along it outwards; the member's pin stands in the middle.
        var (machine, with) = (site.Work.Machine, Second(site)!.Value);
        var other = machine.Members[with].Joint;
        var along = (other.Through - site.Joint.Through).Across(site.Along).Unit();
        var foot = other.Through + (site.Joint.Through - other.Through).Dot(site.Along) * site.Along;
        var (p, q) = (site.Joint.Through + -Arm * along, foot + Arm * along);
        var r = p + 0.5 * (q - p);
        var across = site.Along.Cross((q - p).Unit());
        var joint = slides ? $"slide: {{along: {V(across)}}}" : $"pivot: {{through: {P(r + Own * (q - p).Unit())}, along: {V(site.Along)}}}";
        return $"{{{site.On}{joint}, sum: {{from: {site.Name}, with: {machine.NameOf(with)}, pins: [{P(p)}, {P(q)}, {P(r)}]}}}}";
    }

    // The nearest other member that swings about another parallel axis on the same carrier.
    private static int? Second(StartSite site)
    {
        var members = site.Work.Machine.Members;
        return Enumerable.Range(0, members.Count)
            .Where(m => m != site.Driver && members[m].Carrier == members[site.Driver].Carrier && members[m].Joint.Kind == JointKind.Pivot && site.Work.Machine.Turns[m] is null)
            .Where(m => members[m].Joint.Along.Cross(site.Along).Length < 1e-6 && (members[m].Joint.Through - site.Joint.Through).Across(site.Along).Length > Apart)
            .OrderBy(m => (members[m].Joint.Through - site.Joint.Through).Across(site.Along).Length)
            .Cast<int?>()
            .FirstOrDefault();
    }
}
