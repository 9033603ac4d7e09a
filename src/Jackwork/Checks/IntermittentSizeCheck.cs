using Jackwork.Pins;

namespace Jackwork.Checks;

/// <summary>Intermittent pin wheels whose plates and shafts are in each other's way, or whose walls are thin.</summary>
internal sealed class IntermittentSizeCheck : ICheck
{
    public string Name => "intermittent-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<IntermittentWork>())
        {
            var (wheel, s, least) = (w.Name, w.Sizes, proof.Limits.Rim);
            if (w.Impossible is { } why)
            {
                yield return new(
                    Level.Fault, Name, wheel, null, null, s.DrivenCircle, 0, "mm",
                    FormattableString.Invariant($"the intermittent pin wheel '{wheel}' with {s.Law.DrivenPins} pins on a circle of {s.DrivenCircle:0.##} mm radius can't be made: {why}"),
                    s.IsCrossed ? "Take a larger 'circle', thinner pins or smaller bores" : "Set the axes farther apart, or take thinner pins or smaller bores");
                continue;
            }

            var between = 2 * s.DrivenCircle * Math.Sin(Math.PI / s.Law.DrivenPins) - s.Pin;
            (double Wall, string Where)[] walls =
            [
                (s.Lock.Core - w.Bores.Driven / 2, "between what locks it and its bore"),
                (s.Lock.CutAway - w.Bores.Driver / 2, "between the bore of its driver and where that is cut away"),
                (s.DrivenCircle - s.Pin / 2 - w.Bores.Driven / 2, "between its pins and its bore"),
                (between, "between two of its pins"),
            ];
            foreach (var (wall, where) in walls.Where(x => x.Wall < least))
            {
                yield return new(
                    Level.Fault, Name, wheel, null, null, wall, least, "mm",
                    FormattableString.Invariant($"of the intermittent pin wheel '{wheel}' only {wall:0.##} mm are left {where}, limit {least:0.##} mm"),
                    "Take thinner or fewer pins, smaller bores, or a larger wheel");
            }
        }
    }
}
