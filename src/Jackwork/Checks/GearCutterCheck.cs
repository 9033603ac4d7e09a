using Jackwork.Gears;

namespace Jackwork.Checks;

/// <summary>Whether the cutter passes the gaps between a wheel's teeth deep enough for its mate.</summary>
internal sealed class GearCutterCheck : ICheck
{
    public string Name => "gear-cutter";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.Gears.Where(w => w.Pair is not null))
        {
            foreach (var gear in (SpurGear[])[work.DriverGear!, work.DrivenGear!])
            {
                var cut = work.Cut(gear);
                if (cut.RunsFreely)
                {
                    continue;
                }

                var largest = Largest(work, gear);
                yield return new(
                    Level.Fault, Name, work.Carrier(proof, gear), null, null, work.Cutter, largest, "mm",
                    FormattableString.Invariant($"a cutter of {work.Cutter:0.##} mm does not pass the gaps of the wheel of {gear.Teeth} teeth on '{work.Carrier(proof, gear)}': its flanks come out true only {(gear.Inside ? "up to" : "from")} radius {cut.FormRadius:0.##} mm, the mate needs them {(gear.Inside ? "up to" : "from")} {cut.Required:0.##} mm"),
                    largest > 0 ? FormattableString.Invariant($"Use a cutter of {largest:0.#} mm or less, or a larger module") : "Use a larger module");
            }
        }
    }

    // The largest cutter, to a tenth of a mm, that leaves the flank true as far as the mate needs it.
    private static double Largest(GearWork work, SpurGear gear)
    {
        for (var tenths = (int)Math.Floor(work.Cutter * 10); tenths > 0; tenths--)
        {
            if ((work with { Cutter = tenths / 10.0 }).Cut(gear).RunsFreely)
            {
                return tenths / 10.0;
            }
        }

        return 0;
    }
}
