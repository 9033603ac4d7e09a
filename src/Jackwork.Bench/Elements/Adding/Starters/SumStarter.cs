using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A member that a summing lever moves by half of what its driver and another member do.</summary>
internal sealed class SumStarter : Starter
{
    private const double Arm = 30, Crank = 8, Beyond = 50;

    /// <inheritdoc/>
    public override string Key => "sum";

    /// <inheritdoc/>
    public override string Words => "a summing lever";

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        site.Joint.Kind == JointKind.Slide ? $"'{site.Name}' slides; let a rod lead on from it"
        : Second(site) is null ? $"no second member turns in the plane of '{site.Name}' to add to it"
        : null;

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // The bar lies from axis to axis and beyond: on levers out by an arm, on shafts by a crank square to it; the member's pin stands beyond the second driver's.
        var (machine, with) = (site.Work.Machine, Second(site)!.Value);
        var other = machine.Members[with].Joint;
        var along = (other.Through - site.Joint.Through).Across(site.Along).Unit();
        var (p, q) = (Pin(site, site.Driver, along, site.Joint.Through, -1), Pin(site, with, along, other.Through, 1));
        var r = q + Beyond * (q - p).Unit();
        var across = site.Along.Cross((q - p).Unit());
        var joint = slides ? $"slide: {{along: {V(across)}}}" : $"pivot: {{through: {P(r + Arm * (q - p).Unit())}, along: {V(site.Along)}}}";
        return $"{{{joint}, sum: {{from: {site.Name}, with: {machine.NameOf(with)}, pins: [{P(p)}, {P(q)}, {P(r)}]}}}}";
    }

    // In the plane of the driver's axis point, square to the axes.
    private static Point3 Pin(StartSite site, int member, Vec3 along, Point3 through, int side)
    {
        var foot = through + (site.Joint.Through - through).Dot(site.Along) * site.Along;
        return site.Work.Machine.Turns[member] is not null ? foot + side * Crank * along : foot + side * Arm * along;
    }

    // The nearest other member that turns about another parallel axis on the same carrier, and does not hang on the same axis.
    private static int? Second(StartSite site)
    {
        var members = site.Work.Machine.Members;
        return Enumerable.Range(0, members.Count)
            .Where(m => m != site.Driver && members[m].Carrier == members[site.Driver].Carrier && members[m].Joint.Kind == JointKind.Pivot)
            .Where(m => members[m].Joint.Along.Cross(site.Along).Length < 1e-6 && (members[m].Joint.Through - site.Joint.Through).Across(site.Along).Length > 2 * Crank)
            .OrderBy(m => (members[m].Joint.Through - site.Joint.Through).Across(site.Along).Length)
            .Cast<int?>()
            .FirstOrDefault();
    }
}
