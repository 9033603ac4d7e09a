using Jackwork.Geneva;

namespace Jackwork.Checks;

/// <summary>Geneva wheels whose slots, hollows and reliefs leave no plate.</summary>
internal sealed class GenevaSizeCheck : ICheck
{
    public string Name => "geneva-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var g in proof.MechanismsOf<GenevaWork>())
        {
            if (g.Impossible is not { } why)
            {
                continue;
            }

            var (driver, wheel, s) = (proof.Machine.NameOf(g.Drive.Driver), proof.Machine.NameOf(g.Drive.Driven), g.Sizes);
            yield return new(
                Level.Fault, Name, wheel, null, null, s.CentreDistance, 0, "mm",
                FormattableString.Invariant($"the Geneva wheel '{wheel}' with {s.Law.Slots} slots, {s.CentreDistance:0.##} mm from '{driver}', can't be made: {why}"),
                $"Set '{wheel}' farther from '{driver}', take a thinner pin or smaller bores, or fewer slots, or leave 'locking' out");
        }
    }
}
