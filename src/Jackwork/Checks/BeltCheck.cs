using Jackwork.Belts;

namespace Jackwork.Checks;

/// <summary>Belts whose pulleys overlap, that lie on too little of a pulley, or run round one too small for them.</summary>
internal sealed class BeltCheck : ICheck
{
    /// <summary>Least arc of contact, deg, of smooth belts and chains (common practice, no source), and fewest teeth of a toothed belt in mesh (ISO 5295 counts from six, from memory).</summary>
    private const double Arc = 120, InMesh = 6;

    /// <summary>Least diameter of a pulley for the thickness of a smooth belt (common practice, no source), and fewest teeth of a chain wheel (ISO 606, from memory).</summary>
    private const double Bend = 6, FewestTeeth = 9;

    public string Name => "belt";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<BeltWork>())
        {
            var what = $"the {w.Word} from '{proof.Machine.NameOf(w.Drive.Driver)}' to '{w.Name}'";
            Finding Said(Level level, double measured, double limit, string unit, string message, string advice) => new(level, Name, w.Name, null, null, measured, limit, unit, message, advice);
            if (w.Impossible is { } why)
            {
                yield return Said(Level.Fault, w.Run.Distance, w.Run.First + w.Run.Second, "mm", $"{what} can't be made: {why}", "Set the shafts farther apart, or take smaller pulleys or bores");
                continue;
            }

            if (w.Kind.IsChain && proof.Cutter > w.Drive.Spec.Roller!.Value)
            {
                yield return Said(Level.Fault, proof.Cutter, w.Drive.Spec.Roller.Value, "mm", FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not go into the seats for rollers of {w.Drive.Spec.Roller:0.##} mm"), FormattableString.Invariant($"Use a cutter of {w.Drive.Spec.Roller:0.##} mm or less"));
            }

            for (var k = 0; k < 2; k++)
            {
                var (on, deg, d) = (proof.Machine.NameOf(k == 0 ? w.Drive.Driver : w.Drive.Driven), Proof.Deg(w.Arc(k)), 2 * w.Radius(k));
                if (w.Kind is { IsToothed: true, IsChain: false } && w.Drive.Spec.Teeth![k] * w.Arc(k) / (2 * Math.PI) is var mesh && mesh < InMesh)
                {
                    yield return Said(Level.Caution, mesh, InMesh, "", FormattableString.Invariant($"{what} has {mesh:0.#} teeth in mesh on '{on}'; with fewer than {InMesh:0} it may jump"), "Take more teeth or set the shafts farther apart");
                }
                else if (deg < Arc)
                {
                    yield return Said(Level.Caution, deg, Arc, "deg", FormattableString.Invariant($"{what} lies on {deg:0.#}° of the {(w.Kind.IsToothed ? "wheel" : "pulley")} on '{on}', limit {Arc:0}°: it {(w.Kind.IsToothed ? "may jump" : "slips early")}"), "Set the shafts farther apart, make the pulleys more alike, or cross a smooth belt");
                }

                if (!w.Kind.IsToothed && d < Bend * w.Kind.Thickness)
                {
                    yield return Said(Level.Caution, d, Bend * w.Kind.Thickness, "mm", FormattableString.Invariant($"{what} is bent round {d:0.##} mm on '{on}'; {w.Kind.Thickness:0.##} mm of belt wants {Bend * w.Kind.Thickness:0.##} mm"), "Take larger pulleys or a thinner belt");
                }

                if (w.Kind.IsChain && w.Drive.Spec.Teeth![k] < FewestTeeth)
                {
                    yield return Said(Level.Caution, w.Drive.Spec.Teeth[k], FewestTeeth, "", FormattableString.Invariant($"the chain wheel on '{on}' has {w.Drive.Spec.Teeth[k]} teeth, round which the chain runs unevenly by {100 * (1 - Math.Cos(Math.PI / w.Drive.Spec.Teeth[k])):0.#} %"), FormattableString.Invariant($"Take {FewestTeeth:0} teeth or more"));
                }
            }
        }
    }
}
