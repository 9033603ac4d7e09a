using Jackwork.Timing;

namespace Jackwork.Motion;

/// <summary>The states of all members at one crank angle, and what is needed to go on to the next.</summary>
internal sealed class Pass
{
    private readonly Act[] acts;
    private readonly Joint[] joints;
    private readonly MemberState[] states;
    private readonly int[] branches;
    private readonly double[] misses;

    /// <summary>Starts at the pose as drawn.</summary>
    public Pass(Machine machine, Plan plan)
    {
        acts = [.. plan.Acts];
        joints = [.. machine.Members.Select(m => m.Joint)];
        states = new MemberState[machine.Members.Count];
        branches = new int[acts.Length];
        misses = new double[acts.Length];
        Reset();
    }

    public ReadOnlySpan<MemberState> States => states;

    public ReadOnlySpan<int> Branches => branches;

    /// <summary>By how much each act missed at the last angle, mm.</summary>
    public ReadOnlySpan<double> Misses => misses;

    /// <summary>Crank angle that the states are for, rad.</summary>
    public double Crank { get; private set; }

    /// <summary>Back to the pose as drawn.</summary>
    public void Reset()
    {
        for (var m = 0; m < states.Length; m++)
        {
            states[m] = joints[m].At(default);
        }

        for (var i = 0; i < acts.Length; i++)
        {
            branches[i] = acts[i].Relation?.DrawnBranch(acts[i].Unknown) ?? 1;
        }

        Crank = 0;
    }

    /// <summary>Takes over the coordinates and branches of a known step, from which the next angle is then reached.</summary>
    public void Resume(double crank, Func<int, Jet> coordinate, ReadOnlySpan<int> branchesThere)
    {
        for (var m = 0; m < states.Length; m++)
        {
            states[m] = joints[m].At(coordinate(m));
        }

        branchesThere.CopyTo(branches);
        Crank = crank;
    }

    /// <summary>Goes to a crank angle (rad) near the present one. <paramref name="before"/> reads charts as they are just before that angle.</summary>
    /// <param name="crank">Crank angle, rad.</param>
    /// <param name="before">At a corner of a chart, which side's speed is taken.</param>
    /// <param name="given">Coordinates by member, for the members whose source is given.</param>
    /// <param name="varied">A given member whose coordinate is then the variable of the derivatives, in place of the crank angle; none by default.</param>
    public void Go(double crank, bool before = false, ReadOnlySpan<double> given = default, int varied = Act.None)
    {
        var advance = crank - Crank;
        for (var i = 0; i < acts.Length; i++)
        {
            var act = acts[i];
            ref var state = ref states[act.Member];
            ref readonly var joint = ref joints[act.Member];
            switch (act.Source)
            {
                case Source.Relation:
                    var history = new History(branches[i], state.Q, advance);
                    state = act.Relation!.Solve(act.Unknown, states, history, out branches[i], out misses[i]);
                    break;
                case Source.Chart:
                    var turned = act.Sense * states[act.Shaft].Q;
                    state = joint.At(before ? act.Chart!.Evaluate(turned, Side.Before) : act.Chart!.Evaluate(turned));
                    break;
                case Source.Crank:
                    state = joint.At(varied == Act.None ? Jet.Variable(crank) : Jet.Constant(crank));
                    break;
                default:
                    state = joint.At(act.Member == varied ? Jet.Variable(given[act.Member]) : Jet.Constant(given[act.Member]));
                    break;
            }
        }

        Crank = crank;
    }
}
