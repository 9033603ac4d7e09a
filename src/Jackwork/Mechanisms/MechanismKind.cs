using Jackwork.Barrels;
using Jackwork.Belts;
using Jackwork.Bevels;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Cords;
using Jackwork.Differentials;
using Jackwork.Drops;
using Jackwork.Eccentrics;
using Jackwork.Geneva;
using Jackwork.Guides;
using Jackwork.Lanterns;
using Jackwork.Linkages;
using Jackwork.Motion;
using Jackwork.PartialGears;
using Jackwork.Pins;
using Jackwork.Racks;
using Jackwork.Ratchets;
using Jackwork.Slots;
using Jackwork.Sums;
using Jackwork.Universals;
using Jackwork.Worms;

namespace Jackwork.Mechanisms;

/// <summary>A kind of mechanism.</summary>
/// <param name="List">Key of its list in the result.</param>
/// <param name="In">Those of a machine, in the order of its members. Most follow from the drives and joints alone; a rack and a slot take their length and a coupler its path from the motion, a groove its walls from the cams, which are then worked out.</param>
internal sealed record MechanismKind(string List, Func<Proof, IEnumerable<Mechanism>> In)
{
    /// <summary>All kinds, in the order of the result.</summary>
    public static readonly IReadOnlyList<MechanismKind> All =
    [
        new("couplers", proof => proof.Machine.Drives.OfType<CouplerDrive>().Select(d => new CouplerWork(proof.Motion, d))),
        new("slots", proof => proof.Machine.Drives.OfType<SlotDrive>().Select(d => new SlotWork(proof.Motion, d))),
        Driven<EccentricDrive>("eccentrics", (m, d) => new EccentricWork(m, d)),
        Driven<GenevaDrive>("genevas", (m, d) => new GenevaWork(m, d)),
        Driven<SumDrive>("sums", (m, d) => new SumWork(m, d)),
        Driven<DifferentialDrive>("differentials", (m, d) => new DifferentialWork(m, d)),
        Driven<RatchetDrive>("ratchets", (m, d) => new RatchetWork(m, d)),
        Driven<LanternDrive>("lanterns", (m, d) => new LanternWork(m, d)),
        new("racks", proof => proof.Machine.Drives.OfType<RackDrive>().Select(d => new RackWork(proof.Motion, d))),
        Driven<IntermittentDrive>("intermittents", (m, d) => new IntermittentWork(m, d)),
        Driven<PartialGearDrive>("partialGears", (m, d) => new PartialGearWork(m, d)),
        new("guides", proof => Enumerable.Range(0, proof.Machine.Members.Count).Where(m => proof.Machine.Members[m].Joint.Kind == JointKind.Guide).Select(m => new GuideWork(proof.Machine, m))),
        new("positiveCams", PositiveCamWork.Of),
        new("drops", DropWork.Of),
        new("barrels", BarrelWork.Of),
        Driven<PinWheelDrive>("pinWheels", (m, d) => new PinWheelWork(m, d)),
        new("cords", proof => proof.Machine.Drives.OfType<CordDrive>().Select(d => new CordWork(proof, d))),
        Driven<UniversalDrive>("universals", (m, d) => new UniversalWork(m, d)),
        Driven<BevelDrive>("bevels", (m, d) => new BevelWork(m, d)),
        new("belts", proof => proof.Machine.Drives.OfType<BeltDrive>().Where(d => d.Spec.IsMade).Select(d => new BeltWork(proof.Machine, d))),
        Driven<WormDrive>("worms", (m, d) => new WormWork(m, d)),
    ];

    private static MechanismKind Driven<T>(string list, Func<Machine, T, Mechanism> make)
        where T : Drive =>
        new(list, proof => proof.Machine.Drives.OfType<T>().Select(d => make(proof.Machine, d)));
}
