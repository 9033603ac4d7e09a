using Jackwork.Gears;

namespace Jackwork.Checks;

/// <summary>Teeth undercut at the root, and the other ways in which a pair's teeth get in each other's way.</summary>
/// <remarks>Least shift without undercut: ISO 21771:2007; x = 1 - z sin^2(20 deg)/2 for full depth.</remarks>
internal sealed class GearUndercutCheck : ICheck
{
    public string Name => "gear-undercut";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.Gears.Where(w => w.Pair is not null))
        {
            foreach (var gear in (SpurGear[])[work.DriverGear!, work.DrivenGear!])
            {
                if (gear.IsUndercut)
                {
                    yield return new(
                        Level.Caution, Name, work.Carrier(proof, gear), null, null, gear.Shift, gear.UndercutShift, "",
                        FormattableString.Invariant($"the wheel of {gear.Teeth} teeth on '{work.Carrier(proof, gear)}' is undercut: its teeth are weakened at the root"),
                        FormattableString.Invariant($"Give it a profile shift of {Math.Ceiling(100 * gear.UndercutShift) / 100:0.##} (and its mate the opposite, to keep the distance), or 17 teeth and more"));
                }
            }

            foreach (var f in work.Pair!.Findings.Where(f => f.Fault is not (MeshFault.ContactRatioBelowOne or MeshFault.NoBacklash or MeshFault.UndercutShortensContact)))
            {
                yield return Interference(proof, work, f);
            }
        }
    }

    private static Finding Interference(Proof proof, GearWork work, MeshFinding f)
    {
        var (what, advice, level) = f.Fault switch
        {
            MeshFault.NoTipClearance => ("the tip of one wheel reaches the root of the other", "Set the shafts farther apart, or shorten the tips", Level.Fault),
            MeshFault.TipMeetsFillet => ("the tip of one wheel runs into the rounding at the root of the other", "Give the smaller wheel some profile shift, or set the shafts a little farther apart", Level.Caution),
            MeshFault.TipBeyondBase => ("the tip of one wheel digs into the root of the other, below its base circle", "Give the smaller wheel profile shift, or more teeth", Level.Caution),
            MeshFault.PointedTip => ("the teeth of a wheel come to a point", "Give it less profile shift", Level.Caution),
            MeshFault.TipsCollide => ("the pinion's teeth strike the ring's on the way out of mesh", "Give the ring at least 8 teeth more than the pinion", Level.Fault),
            _ => ("the pinion can only be put into the ring endways", "Mind the order of assembly", Level.Note),
        };
        return new(level, "gear-interference", work.Subject(proof), null, null, f.Measured, f.Limit, "mm", FormattableString.Invariant($"{work.Pair(proof)}: {what} ({f.Measured:0.###} against {f.Limit:0.###} mm)"), advice);
    }
}
