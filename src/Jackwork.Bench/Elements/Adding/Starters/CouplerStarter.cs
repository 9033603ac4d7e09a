using Jackwork.Motion;
using static Jackwork.Bench.Elements.Adding.StartSite;

namespace Jackwork.Bench.Elements.Adding.Starters;

/// <summary>A coupler in the place of the rod that drives a member.</summary>
internal sealed class CouplerStarter : Starter
{
    /// <inheritdoc/>
    public override string Key => "coupler";

    /// <inheritdoc/>
    public override string Words => "a coupler";

    /// <inheritdoc/>
    public override string DriverWord => "of";

    /// <inheritdoc/>
    public override bool OnlyTurns => true;

    /// <inheritdoc/>
    public override string? Refusal(StartSite site, bool slides) =>
        Rod(site) is not { } rod ? $"'{site.Name}' is driven by no rod that a coupler could be"
        : site.Work.Machine.Drives.OfType<CouplerDrive>().Any(c => c.Of == site.Driver) ? $"the rod of '{site.Name}' is a coupler already"
        : site.Work.Machine.Design.Members[site.Name].Rod is { Bends: not null } or { Ends: not null } or { Diameter: not null } ? $"the rod of '{site.Name}' is described as a wire; take bends, ends and diameter out first"
        : IsPlane(site, rod) ? null
        : $"the rod of '{site.Name}' does not move in one plane";

    /// <inheritdoc/>
    public override string Text(StartSite site, bool slides)
    {
        // On the member that turns, of the two; its point halfway between the pins.
        var rod = Rod(site)!;
        var (on, pin) = IsPivot(site, rod.Driver) ? (rod.Driver, rod.DriverPin) : (rod.Driven, rod.DrivenPin);
        var along = site.Work.Machine.Members[on].Joint.Along;
        return $"{{on: {site.Work.Machine.NameOf(on)}, pivot: {{through: {P(pin)}, along: {V(along)}}}, coupler: {{of: {site.Name}}}}}";
    }

    private static RodDrive? Rod(StartSite site) => site.Work.Machine.Drives[site.Driver] as RodDrive;

    private static bool IsPivot(StartSite site, int member) => site.Work.Machine.Members[member].Joint.Kind == JointKind.Pivot;

    private static bool IsPlane(StartSite site, RodDrive rod)
    {
        var (a, b) = (site.Work.Machine.Members[rod.Driver].Joint, site.Work.Machine.Members[rod.Driven].Joint);
        return (a.Kind, b.Kind) switch
        {
            (JointKind.Pivot, JointKind.Pivot) => a.Along.Cross(b.Along).Length < Same,
            (JointKind.Slide, JointKind.Slide) => false,
            _ => Math.Abs(a.Along.Dot(b.Along)) < Same,
        };
    }

    /// <summary>Sine of the angle between directions that count as one.</summary>
    private const double Same = 1e-6;
}
