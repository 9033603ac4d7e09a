using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Comparing;

/// <summary>The greatest difference of a member's coordinate between two versions.</summary>
/// <param name="Greatest">Later less earlier, where that is greatest: rad of a pivot, mm of a slide; not brought within a turn, so that a shaft with another ratio runs ever farther ahead.</param>
/// <param name="Crank">Crank angle there, rad, from the start of the performance.</param>
public readonly record struct CoordinateDifference(double Greatest, double Crank);

/// <summary>A member that is in both versions.</summary>
/// <param name="Name">Its name now.</param>
/// <param name="Before">The member as it was.</param>
/// <param name="After">The member as it is.</param>
/// <param name="Difference">How its coordinate differs over the turns that both performances have; null where its joint is of another kind. Where a relation can't close, which the checks say, the coordinate is where the member stands still.</param>
/// <param name="Turns">Turns for a turn of the crank, before and now; null where wheels don't tie it to the crank.</param>
/// <param name="DriveChange">What makes it move and what carries it, where either is another now, in words; else null.</param>
public sealed record MemberChange(string Name, Member Before, Member After, CoordinateDifference? Difference, (Rational? Before, Rational? After) Turns, string? DriveChange)
{
    /// <summary>Whether it moves otherwise than before by more than is seen: <see cref="Sameness.Rad"/> or <see cref="Sameness.Mm"/>.</summary>
    public bool MovesOtherwise => Difference is not { } d || Math.Abs(d.Greatest) > (After.Joint.Kind == JointKind.Pivot ? Sameness.Rad : Sameness.Mm);

    /// <summary>Whether anything of it is another: its motion, its drive or its carrier.</summary>
    public bool IsChanged => MovesOtherwise || DriveChange is not null;

    /// <summary>Compares the members of two versions.</summary>
    internal static Pairing<MemberChange> All(Proof before, Proof after, Renames renames) => Pairing<MemberChange>.Of(
        before.Machine.Members.Select((m, i) => (renames.Now(m.Name), i)),
        after.Machine.Members.Select((m, i) => (m.Name, i)),
        (name, i, j) => Of(name, before, i, after, j, renames));

    private static MemberChange Of(string name, Proof before, int i, Proof after, int j, Renames renames)
    {
        var (was, now) = (before.Machine, after.Machine);
        string Way(Machine machine, int m) => $"{machine.Drives[m].Kind}{(machine.Drives[m].Driver == Member.Case ? "" : " from " + machine.NameOf(machine.Drives[m].Driver))}, on {(machine.Members[m].Carrier == Member.Case ? "the case" : machine.NameOf(machine.Members[m].Carrier))}";
        var (old, here) = (renames.Now(Way(was, i)), Way(now, j));
        return new(
            name,
            was.Members[i],
            now.Members[j],
            was.Members[i].Joint.Kind == now.Members[j].Joint.Kind ? Greatest(before.Motion, i, after.Motion, j) : null,
            (was.Turns[i], now.Turns[j]),
            old == here ? null : $"was driven by {old}; now by {here}");
    }

    // At the steps of the finer of the two, over the turns that both have; the coarser is solved at those angles anew.
    private static CoordinateDifference Greatest(Motion.Motion before, int i, Motion.Motion after, int j)
    {
        var (p, q) = (before.Machine.Performance, after.Machine.Performance);
        var sameSteps = (long)p.Steps * q.CrankTurns == (long)q.Steps * p.CrankTurns;
        var finer = p.Step <= q.Step ? p : q;
        var (a, b) = (Reader(before, i, sameSteps || finer == p), Reader(after, j, sameSteps || finer == q));
        var steps = (int)((long)finer.Steps * Math.Min(p.CrankTurns, q.CrankTurns) / finer.CrankTurns);
        var greatest = default(CoordinateDifference);
        for (var k = 0; k < steps; k++)
        {
            var d = b(k, finer.At(k)) - a(k, finer.At(k));
            if (Math.Abs(d) > Math.Abs(greatest.Greatest))
            {
                greatest = new(d, finer.At(k));
            }
        }

        return greatest;
    }

    private static Func<int, double, double> Reader(Motion.Motion motion, int member, bool onItsSteps)
    {
        var probe = onItsSteps ? null : motion.Probe();
        return (step, crank) => probe is null ? motion.Of(member)[step].Value : probe.At(member, crank).Value;
    }
}
