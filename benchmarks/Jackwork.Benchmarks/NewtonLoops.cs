using Jackwork.Geometry;
using Jackwork.Motion;
using MathNet.Numerics.RootFinding;

namespace Jackwork.Benchmarks;

/// <summary>The keeper's loops solved one by one by MathNet.Numerics' Newton: the yardstick.</summary>
internal sealed class NewtonLoops
{
    /// <summary>Residual at which Newton's method stops, mm^2: for rods of some 100 mm, the closure of 1e-9 mm and better that the closed forms hold.</summary>
    private const double Accuracy = 1e-8;

    private readonly Motion.Motion motion;
    private readonly (Act Act, Func<double, double> Residual, Func<double, double> Slope)[] loops;
    private readonly MemberState[] states;

    public NewtonLoops(Machine machine, Motion.Motion motion)
    {
        this.motion = motion;
        states = new MemberState[machine.Members.Count];
        loops = [.. machine.Plan.Acts.Where(a => a.Relation is RodDrive or SlotDrive).Select(a => (a, F(a, 0), F(a, 1)))];

        // The signed residual of a relation as its unknown is tried, and its slope.
        Func<double, double> F(Act act, int order) => q =>
        {
            states[act.Member] = machine.Members[act.Member].Joint.At(new(q, 1, 0));
            var square = act.Relation switch
            {
                RodDrive rod => rod.Gap(states),
                SlotDrive slot => slot.Gap(states),
                _ => default,
            };
            return order == 0 ? square.Value : square.First;
        };
    }

    public double Solve()
    {
        var sum = 0.0;
        for (var m = 0; m < states.Length; m++)
        {
            states[m] = motion.Machine.Members[m].Joint.At(default);
        }

        var guess = new double[states.Length];
        for (var i = 0; i < motion.Steps; i++)
        {
            // Shafts and charts are given to it; it solves the loops.
            foreach (var act in motion.Machine.Plan.Acts)
            {
                if (act.Relation is RodDrive or SlotDrive)
                {
                    continue;
                }

                states[act.Member] = motion.Machine.Members[act.Member].Joint.At(Jet.Constant(motion.Of(act.Member)[i].Value));
            }

            foreach (var (act, residual, slope) in loops)
            {
                var q = guess[act.Member];
                var root = NewtonRaphson.FindRootNearGuess(residual, slope, q, double.MinValue, double.MaxValue, Accuracy);
                guess[act.Member] = root;
                states[act.Member] = motion.Machine.Members[act.Member].Joint.At(Jet.Constant(root));
                sum += root;
            }
        }

        return sum;
    }
}
