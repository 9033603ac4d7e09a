using Jackwork.Geneva;
using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>The jump of a Geneva wheel's acceleration as the pin enters and leaves, and how hard its rim is thrown.</summary>
/// <remarks>Speeds start and stop at nothing; accelerations jump by tan(pi/n) times the square of the driver's speed. See <see cref="Geneva.GenevaLaw"/>.</remarks>
internal sealed class GenevaJoltCheck : ICheck
{
    public string Name => "geneva-jolt";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var (machine, w) = (proof.Machine, proof.Machine.CrankSpeed);
        foreach (var g in proof.MechanismsOf<GenevaWork>())
        {
            var (driver, wheel) = (machine.NameOf(g.Drive.Driver), machine.NameOf(g.Drive.Driven));
            var forward = machine.Turns[g.Drive.Driver]!.Value.Numerator.Sign;
            var (entry, exit) = g.Drive.Corners(forward);
            var (from, to) = (ShaftTurn.Crank(machine, g.Drive.Driver, entry), ShaftTurn.Crank(machine, g.Drive.Driver, exit));
            var jump = g.Drive.Law.EntryAcceleration * Math.Pow(w * proof.Motion.Probe().At(g.Drive.Driver, from).First, 2);
            var (most, step) = (0.0, 0);
            var q = proof.Motion.Of(g.Drive.Driven);
            for (var i = 0; i < q.Length; i++)
            {
                if (Math.Abs(q[i].Second) > most)
                {
                    (most, step) = (Math.Abs(q[i].Second), i);
                }
            }

            var (rim, limit) = (most * w * w * g.Sizes.Outside, proof.Limits.Acceleration);
            yield return new(
                rim > limit ? Level.Caution : Level.Note, Name, wheel, Proof.Deg(from), Proof.Deg(to), rim / 1000, limit / 1000, "m/s2",
                FormattableString.Invariant($"the Geneva wheel '{wheel}' starts and stops at once: its acceleration jumps by {jump:0.#} rad/s² at {proof.Where(from, g.Drive.Driver)} and {proof.Where(to, g.Drive.Driver)}, every turn of '{driver}'; at most its rim is thrown with {rim / 1000:0.##} m/s², at {proof.Where(proof.At(step), g.Drive.Driver)}"),
                rim > limit ? "Turn more slowly, take more slots, or keep what the wheel carries light" : "Fasten well what the wheel carries, and keep it light towards the rim");
        }
    }
}
