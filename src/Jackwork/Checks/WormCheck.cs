using Jackwork.Worms;

namespace Jackwork.Checks;

/// <summary>Worm pairs at the wrong distance, that can't be made, or that are too weak, too short or too thick.</summary>
internal sealed class WormCheck : ICheck
{
    /// <summary>Overlap taken for rounding, mm.</summary>
    private const double Binding = 0.001;

    /// <summary>Share of the pitch by which straight gaps may be widened, and share of a module by which the worm may stand less deep at the plate's faces (common practice, no source).</summary>
    private const double Widest = 0.15, Shallowest = 0.25;

    public string Name => "worm";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<WormWork>())
        {
            var (pair, drawn) = (w.Pair, w.Drive.Passing.Distance);
            var what = $"the worm on '{proof.Machine.NameOf(w.Drive.Worm)}' and its wheel on '{proof.Machine.NameOf(w.Drive.Wheel)}'";
            Finding Said(Level level, double measured, double limit, string unit, string message, string advice) => new(level, Name, w.Name, null, null, measured, limit, unit, message, advice);

            // Each flank gives way by the tangent of its angle; play of both thinnings takes up so much.
            var off = drawn - pair.CentreDistance;
            if (off > proof.Limits.CentreDistance || off < -(w.Thinning / Math.Tan(pair.Rack.PressureAngle)) - Binding)
            {
                var fits = 2 * drawn - pair.WheelDiameter;
                yield return Said(
                    Level.Fault, drawn, pair.CentreDistance, "mm",
                    FormattableString.Invariant($"{what} want shafts {pair.CentreDistance:0.###} mm apart, as drawn they pass at {drawn:0.###} mm: {(off < 0 ? "the thread binds in the gaps" : "the teeth hardly reach the thread")}"),
                    FormattableString.Invariant($"Set the shafts {pair.CentreDistance:0.###} mm apart{(fits > 5 * pair.Module && fits < 25 * pair.Module ? FormattableString.Invariant($", or give the worm a diameter of {fits:0.###} mm") : "")}"));
            }

            if (w.Impossible is { } why)
            {
                yield return Said(Level.Fault, 0, 0, "", $"{what} can't be made: {why}", "Change 'diameter' under 'worm', 'bores', 'thickness' or 'module'");
                continue;
            }

            if (w.Wall < proof.Limits.Rim)
            {
                yield return Said(Level.Fault, w.Wall, proof.Limits.Rim, "mm", FormattableString.Invariant($"between the root of the worm on '{proof.Machine.NameOf(w.Drive.Worm)}' and its bore only {w.Wall:0.##} mm are left, limit {proof.Limits.Rim:0.##} mm"), "Take a thicker worm or a smaller bore");
            }

            if (w.Length < pair.Reach)
            {
                yield return Said(Level.Caution, w.Length, pair.Reach, "mm", FormattableString.Invariant($"the worm's thread is {w.Length:0.##} mm long; the wheel reaches into {pair.Reach:0.##} mm of it"), FormattableString.Invariant($"Give it {Math.Ceiling(pair.Reach):0} mm, or leave 'length' out"));
            }

            if (w.Widening > Widest * pair.Pitch)
            {
                yield return Said(
                    Level.Caution, w.Widening, Widest * pair.Pitch, "mm",
                    FormattableString.Invariant($"cut straight through {w.Thickness:0.##} mm, the gaps of the wheel at '{w.Name}' must be {w.Widening:0.##} mm wider than its pitch of {pair.Pitch:0.##} mm gives, and its teeth as much thinner"),
                    "Take a thinner plate, fewer starts or a thicker worm, or cut the teeth slanted: 'cut: slanted'");
            }

            if (pair.Shallow(w.Thickness) > Shallowest * pair.Module)
            {
                yield return Said(
                    Level.Caution, pair.Shallow(w.Thickness), Shallowest * pair.Module, "mm",
                    FormattableString.Invariant($"at the faces of the plate of {w.Thickness:0.##} mm the worm stands {pair.Shallow(w.Thickness):0.##} mm less deep in the gaps than in its middle"),
                    "Take a thinner plate or a thicker worm, or hollow the rim to the worm");
            }

            if (w.ContactRatio < proof.Limits.ContactRatio)
            {
                yield return Said(w.ContactRatio < 1 ? Level.Fault : Level.Caution, w.ContactRatio, proof.Limits.ContactRatio, "", FormattableString.Invariant($"{what} have a contact ratio of {w.ContactRatio:0.###}, limit {proof.Limits.ContactRatio:0.##}"), "Take more teeth on the wheel");
            }

            if (w.Wheel!.IsUndercut)
            {
                yield return Said(Level.Caution, pair.WheelTeeth, Gears.ToothLimits.LeastTeeth(pair.Rack), "", FormattableString.Invariant($"a worm wheel of {pair.WheelTeeth} teeth is undercut; from {Gears.ToothLimits.LeastTeeth(pair.Rack):0.#} on it is not"), "Take more teeth");
            }
        }
    }
}
