using Jackwork.Differentials;
using Jackwork.Geneva;
using Jackwork.Guides;
using Jackwork.Lanterns;
using Jackwork.Linkages;
using Jackwork.Motion;
using Jackwork.Ratchets;
using Jackwork.Sums;
using Jackwork.Pins;

namespace Jackwork.Mechanisms;

/// <summary>A kind of mechanism.</summary>
/// <param name="List">Key of its list in the result.</param>
/// <param name="Of">The mechanism of this kind that a member's drive or joint is made of; null where it is of another.</param>
internal sealed record MechanismKind(string List, Func<Machine, int, Mechanism?> Of)
{
    /// <summary>All kinds, in the order of the result.</summary>
    public static readonly IReadOnlyList<MechanismKind> All =
    [
        Driven<CouplerDrive>("couplers", (m, d) => new CouplerWork(m, d)),
        Driven<GenevaDrive>("genevas", (m, d) => new GenevaWork(m, d)),
        new("guides", (machine, m) => machine.Members[m].Joint.Kind == JointKind.Guide ? new GuideWork(machine, m) : null),
        Driven<SumDrive>("sums", (m, d) => new SumWork(m, d)),
        Driven<DifferentialDrive>("differentials", (m, d) => new DifferentialWork(m, d)),
        Driven<RatchetDrive>("ratchets", (m, d) => new RatchetWork(m, d)),
        Driven<LanternDrive>("lanterns", (m, d) => new LanternWork(m, d)),
        Driven<IntermittentDrive>("intermittents", (m, d) => new IntermittentWork(m, d)),
        Driven<PinWheelDrive>("pinWheels", (m, d) => new PinWheelWork(m, d)),
    ];

    /// <summary>All mechanisms of a machine, each with the key of its list.</summary>
    public static IReadOnlyList<(string List, Mechanism Work)> In(Machine machine) =>
    [
        .. from kind in All
           from member in Enumerable.Range(0, machine.Members.Count)
           let work = kind.Of(machine, member)
           where work is not null
           select (kind.List, work),
    ];

    private static MechanismKind Driven<T>(string list, Func<Machine, T, Mechanism> make)
        where T : Drive =>
        new(list, (machine, m) => machine.Drives[m] is T drive ? make(machine, drive) : null);
}
