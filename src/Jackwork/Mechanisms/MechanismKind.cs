using Jackwork.Geneva;
using Jackwork.Guides;
using Jackwork.Lanterns;
using Jackwork.Motion;
using Jackwork.Racks;

namespace Jackwork.Mechanisms;

/// <summary>A kind of mechanism.</summary>
/// <param name="List">Key of its list in the result.</param>
/// <param name="Of">The mechanism of this kind that a member's drive or joint is made of; null where it is of another.</param>
internal sealed record MechanismKind(string List, Func<Motion.Motion, int, Mechanism?> Of)
{
    private MechanismKind(string list, Func<Machine, int, Mechanism?> of)
        : this(list, (Motion.Motion motion, int member) => of(motion.Machine, member))
    {
    }

    /// <summary>All kinds, in the order of the result.</summary>
    public static readonly IReadOnlyList<MechanismKind> All =
    [
        Driven<GenevaDrive>("genevas", (m, d) => new GenevaWork(m, d)),
        Driven<LanternDrive>("lanterns", (m, d) => new LanternWork(m, d)),
        new("racks", (motion, m) => motion.Machine.Drives[m] is RackDrive drive ? new RackWork(motion, drive) : null),
        new("guides", (machine, m) => machine.Members[m].Joint.Kind == JointKind.Guide ? new GuideWork(machine, m) : null),
    ];

    /// <summary>All mechanisms of a machine, each with the key of its list.</summary>
    /// <param name="motion">Its performance, of which some take their sizes: a rack is as long as its travel.</param>
    public static IReadOnlyList<(string List, Mechanism Work)> In(Motion.Motion motion) =>
    [
        .. from kind in All
           from member in Enumerable.Range(0, motion.Machine.Members.Count)
           let work = kind.Of(motion, member)
           where work is not null
           select (kind.List, work),
    ];

    private static MechanismKind Driven<T>(string list, Func<Machine, T, Mechanism> make)
        where T : Drive =>
        new(list, (machine, m) => machine.Drives[m] is T drive ? make(machine, drive) : null);
}
