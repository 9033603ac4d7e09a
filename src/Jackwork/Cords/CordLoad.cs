using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Cords;

/// <summary>What the driven member of a cord, and all that hangs on it, asks of the cord at a step: weight, inertia and spring.</summary>
/// <remarks>
/// <para>Virtual work: with q the driven's coordinate, x_j the places of masses m_j that stand for the bodies that move with it, a_j their accelerations, g = 9.80665 m/s^2 up as drawn, F the spring's pull and c its length,</para>
/// <para>  G = sum m_j (a_j + g) . dx_j/dq + F dc/dq</para>
/// <para>is what the cord must do: N on a slide, N mm on a pivot. a_j = x_j'' w^2 by the jets at the crank's rpm.</para>
/// <para>With q move the member itself, what sits on it, and what is driven from it, step by step: there dx/dq comes from solving each relation with q as the variable. Left out are rods that float, friction of
/// what is moved, and what is driven through a ratchet or a wheel that stands at times.</para>
/// </remarks>
internal sealed class CordLoad
{
    private const double Gravity = 9806.65, NewtonPerGramMm = 1e-6;

    private readonly Machine machine;
    private readonly CordDrive drive;
    private readonly List<(int Member, CarriedPoint Point, Motion.Path Path, double Grams)> masses = [];
    private readonly List<Relation> downstream = [];
    private readonly CarriedPoint springEnd;
    private readonly MemberState[] varied;

    /// <summary>The load of a cord.</summary>
    public CordLoad(Proof proof, CordDrive drive)
    {
        (machine, this.drive) = (proof.Machine, drive);
        varied = new MemberState[machine.Members.Count];
        var moved = Moved();
        foreach (var parts in proof.Assembly.Parts.Where(p => !p.Body.IsRod && moved.Contains(p.Body.Member)).GroupBy(p => p.Body.Member))
        {
            var (m, joint) = (parts.Key, machine.Members[parts.Key].Joint);
            var path = Motion.Path.Between(machine.Members, machine.Members[m].Carrier, Member.Case);
            masses.AddRange(parts.Select(MassMoments.Of).Aggregate((a, b) => a + b).Points().Select(p => (m, new CarriedPoint(joint, p.At), path, p.Grams)));
        }

        if (drive.Spec.Spring is { } spring)
        {
            springEnd = new(machine.Members[drive.Driven].Joint, spring.At);
        }
    }

    /// <summary>Mass that moves with the driven, g.</summary>
    public double Grams => masses.Sum(m => m.Grams);

    /// <summary>The states of all members with the driven's coordinate as the variable: what follows from it has its derivatives by it, all else has none.</summary>
    public MemberState[] Varied(ReadOnlySpan<MemberState> states)
    {
        for (var m = 0; m < varied.Length; m++)
        {
            varied[m] = machine.Members[m].Joint.At(m == drive.Driven ? Jet.Variable(states[m].Q.Value) : Jet.Constant(states[m].Q.Value));
        }

        foreach (var r in downstream)
        {
            var (at, drawn) = (Jet.Constant(states[r.Driven].Q.Value), r.DrawnBranch(End.Driven));
            var (one, other) = (r.Solve(End.Driven, varied, new(drawn, at, 0), out _, out _), r.Solve(End.Driven, varied, new(-drawn, at, 0), out _, out _));
            varied[r.Driven] = Math.Abs(one.Q.Value - at.Value) <= Math.Abs(other.Q.Value - at.Value) ? one : other;
        }

        return varied;
    }

    /// <summary>G: what the cord must do against weight, inertia and spring, N or N mm.</summary>
    /// <param name="states">The states as they move.</param>
    /// <param name="by">The same from <see cref="Varied"/>.</param>
    public double Asked(ReadOnlySpan<MemberState> states, ReadOnlySpan<MemberState> by)
    {
        var w2 = machine.CrankSpeed * machine.CrankSpeed;
        var sum = 0.0;
        foreach (var (m, point, path, grams) in masses)
        {
            var (x, d) = (Place(m, point, path, states), Place(m, point, path, by));
            sum += NewtonPerGramMm * grams * (w2 * x.X.Second * d.X.First + (w2 * x.Y.Second + Gravity) * d.Y.First + w2 * x.Z.Second * d.Z.First);
        }

        return drive.Spec.Spring is { } s && SpringLength(by) is var length ? sum + s.PullAt(length.Value) * length.First : sum;
    }

    /// <summary>What a newton more of the spring's pull adds to G once it is taut, 0 where there is no spring; and how many newtons it takes to make it taut.</summary>
    public (double Share, double Slack) OfSpring(ReadOnlySpan<MemberState> by) => drive.Spec.Spring is { } s && SpringLength(by) is var length ? (length.First, s.SlackAt(length.Value)) : default;

    /// <summary>What a gram more on a driven that slides adds to G; 0 for one that turns.</summary>
    public double GramShare(ReadOnlySpan<MemberState> states, ReadOnlySpan<MemberState> by)
    {
        var joint = machine.Members[drive.Driven].Joint;
        if (joint.Kind != JointKind.Slide)
        {
            return 0;
        }

        var (point, path, w2) = (new CarriedPoint(joint, joint.Through), Motion.Path.Between(machine.Members, machine.Members[drive.Driven].Carrier, Member.Case), machine.CrankSpeed * machine.CrankSpeed);
        var (x, d) = (Place(drive.Driven, point, path, states), Place(drive.Driven, point, path, by));
        return NewtonPerGramMm * (w2 * x.X.Second * d.X.First + (w2 * x.Y.Second + Gravity) * d.Y.First + w2 * x.Z.Second * d.Z.First);
    }

    private Jet SpringLength(ReadOnlySpan<MemberState> by) => Jet.Sqrt((springEnd.At(by[drive.Driven]) - drive.Spec.Spring!.To).SquaredLength);

    private static Jet3 Place(int m, in CarriedPoint point, Motion.Path path, ReadOnlySpan<MemberState> states)
    {
        var p = point.At(states[m]);
        return path.IsEmpty ? p : path.Point(p, states);
    }

    // The driven, what it drives in turn, and all that sits on any of these.
    private HashSet<int> Moved()
    {
        HashSet<int> moved = [drive.Driven];
        for (var before = 0; before < moved.Count;)
        {
            before = moved.Count;
            moved.UnionWith(Enumerable.Range(0, machine.Members.Count).Where(m => Carriers.IsCarriedByAny(machine.Members, m, moved)));
            foreach (var r in machine.Drives.OfType<Relation>().Where(r => !moved.Contains(r.Driven) && moved.Contains(r.Driver) && r.BranchIsSide && !r.NeedsShaft))
            {
                moved.Add(r.Driven);
                downstream.Add(r);
            }
        }

        return moved;
    }
}
