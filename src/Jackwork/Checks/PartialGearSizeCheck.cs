using Jackwork.Gears;
using Jackwork.PartialGears;

namespace Jackwork.Checks;

/// <summary>Partial gears that can't be made, are held badly, or leave too little wood.</summary>
internal sealed class PartialGearSizeCheck : ICheck
{
    /// <summary>Most play of the locked wheel to either side, rad (common practice, no source): more is seen at the figure.</summary>
    private const double Play = 1.5 * Math.PI / 180;

    /// <summary>Least half angle over which the rim lies in its hollow, rad (common practice, no source): with less the corners wear round.</summary>
    private const double Lap = 10 * Math.PI / 180;

    public string Name => "partial-gear-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<PartialGearWork>())
        {
            Finding At(Level level, double measured, double limit, string unit, string message, string advice) => new(level, Name, w.Name, null, null, measured, limit, unit, message, advice);
            if (w.Impossible is { } why)
            {
                yield return At(Level.Fault, w.Lock.Disc, 0, "mm", $"the partial gear at '{w.Name}' can't be made: {why}", "Take more teeth, a larger module, smaller bores, or 'steps' that leave fewer places to stop at");
                continue;
            }

            var (held, least) = (w.Lock, proof.Limits.Rim);
            (double Wall, string Where)[] walls =
            [
                (held.Core - w.Bores.Driven / 2, "between the hollow that locks it and its bore"),
                (w.Gear.Pair.Second.RootRadius - w.Bores.Driven / 2, "between its teeth and its bore"),
                (held.CutAway - w.Bores.Driver / 2, "between the bore of its driver and where the locking rim is cut away"),
            ];
            foreach (var (wall, where) in walls.Where(x => x.Wall < least))
            {
                yield return At(Level.Fault, wall, least, "mm", FormattableString.Invariant($"of the partial gear at '{w.Name}' only {wall:0.##} mm are left {where}, limit {least:0.##} mm"), "Take more teeth, a larger module or smaller bores");
            }

            if (w.Gear.HornRoom(held) is var room && room < 0)
            {
                yield return At(Level.Fault, room, 0, "mm", FormattableString.Invariant($"a horn of the hollow of '{w.Name}' runs {-room:0.##} mm into the end of the locking rim while it is driven"), "Take a wheel with more teeth, or a driver with more all round");
            }

            if (held.Play > Play)
            {
                yield return At(
                    Level.Caution, Proof.Deg(held.Play), Proof.Deg(Play), "deg",
                    FormattableString.Invariant($"locked, '{w.Name}' can still be turned by {Proof.Deg(held.Play):0.##}° either way, limit {Proof.Deg(Play):0.#}°"), "Take less clearance or larger wheels");
            }

            if (held.HalfLap < Lap)
            {
                yield return At(
                    Level.Caution, Proof.Deg(held.HalfLap), Proof.Deg(Lap), "deg",
                    FormattableString.Invariant($"the locking rim lies in the hollow of '{w.Name}' for only {Proof.Deg(held.HalfLap):0.#}° to either side, limit {Proof.Deg(Lap):0}°; its corners will wear"), "Take fewer teeth of a larger module");
            }

            foreach (var (gear, on) in ((SpurGear, string)[])[(w.Gear.Pair.First, proof.Machine.NameOf(w.Drive.Driver)), (w.Gear.Pair.Second, w.Name)])
            {
                if (gear.IsUndercut)
                {
                    yield return At(
                        Level.Caution, gear.Shift, gear.UndercutShift, "",
                        FormattableString.Invariant($"the teeth of the partial gear on '{on}' are undercut: they are weakened at the root"),
                        FormattableString.Invariant($"Give them a profile shift of {Math.Ceiling(100 * gear.UndercutShift) / 100:0.##} (and the others the opposite, to keep the distance), or 17 teeth and more"));
                }

                var start = ReferenceEquals(gear, w.Gear.Pair.First) ? w.Gear.Pair.StartOfActiveProfile1 : w.Gear.Pair.StartOfActiveProfile2;
                if (new CutterFit(gear, proof.Cutter).Against(start) is { RunsFreely: false } cut)
                {
                    yield return At(
                        Level.Fault, proof.Cutter, CutterFit.Largest(gear), "mm",
                        FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not pass the gaps of the partial gear on '{on}': its flanks come out true only from radius {cut.FormRadius:0.##} mm, the mate needs them from {cut.Required:0.##} mm"), "Use a smaller cutter, or a larger module");
                }
            }
        }
    }
}
