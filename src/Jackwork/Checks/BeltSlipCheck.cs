using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>A smooth belt between the crank and a shaft that must keep time.</summary>
internal sealed class BeltSlipCheck : ICheck
{
    public string Name => "belt-slip";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var machine = proof.Machine;
        var timed = machine.Acted.SelectMany(a => (int[])[a.Shaft, a.Cam.Driver]).ToHashSet();
        foreach (var belt in machine.Drives.OfType<BeltDrive>().Where(d => d.Spec.Diameters is not null && timed.Any(s => LeadsTo(machine, d.Driven, s))))
        {
            yield return new(
                Level.Caution, Name, machine.NameOf(belt.Driven), null, null, 0, 0, "",
                $"a smooth belt drives '{machine.NameOf(belt.Driven)}', and cams or charts after it keep time with other shafts; a smooth belt slips, so they will drift apart",
                "Use a chain, a toothed belt or gears, or keep all cams on one side of the belt");
        }
    }

    private static bool LeadsTo(Machine machine, int from, int shaft)
    {
        for (var m = shaft; m != Member.Case; m = machine.Drives[m].Driver)
        {
            if (m == from)
            {
                return true;
            }
        }

        return false;
    }
}
