namespace Jackwork.Checks;

/// <summary>Shafts that stand too near or too far for their wheels.</summary>
internal sealed class CentreDistanceCheck : ICheck
{
    public string Name => "gear-centre-distance";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.Gears)
        {
            if (work.Pair is not { } pair)
            {
                yield return new(Level.Fault, Name, work.Subject(proof), null, null, work.CentreDistance, 0, "mm", FormattableString.Invariant($"{work.Pair(proof)} can't mesh with shafts {work.CentreDistance:0.###} mm apart: {work.Impossible}"), FormattableString.Invariant($"Without profile shift they want {Math.Abs(work.Drive.Spec.Module!.Value * (work.Drive.Spec.Teeth[0] + (work.Drive.Spec.Inside ? -1 : 1) * work.Drive.Spec.Teeth[1]) / 2):0.###} mm; move a shaft, or change module, teeth or shift"));
                continue;
            }

            var off = pair.CentreDistance - pair.NominalCentreDistance;
            if (pair.Second.Inside)
            {
                off = -off;
            }

            // Too near by more than the thinning gives room for, the teeth bind; too far, they run with slack.
            if (pair.NormalBacklash < -Binding || off > proof.Limits.CentreDistance)
            {
                yield return new(
                    Level.Fault, Name, work.Subject(proof), null, null, pair.CentreDistance, pair.NominalCentreDistance, "mm",
                    FormattableString.Invariant($"{work.Pair(proof)} want shafts {pair.NominalCentreDistance:0.###} mm apart, as drawn they stand {pair.CentreDistance:0.###} mm apart: {(off < 0 ? FormattableString.Invariant($"the teeth bind by {-pair.NormalBacklash:0.###} mm") : FormattableString.Invariant($"{pair.NormalBacklash:0.###} mm of slack between the teeth"))}"),
                    FormattableString.Invariant($"Set the shafts {pair.NominalCentreDistance:0.###} mm apart, or give profile shifts that sum to {Gears.SpurPair.ShiftSum(pair.First.Module, pair.Second.Teeth + (pair.Second.Inside ? -1 : 1) * pair.First.Teeth, pair.First.Rack.PressureAngle, pair.CentreDistance):0.###}"));
            }
        }
    }

    /// <summary>Overlap of the flanks taken for rounding, mm.</summary>
    private const double Binding = 0.001;
}
