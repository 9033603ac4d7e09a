using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Drops;

/// <summary>What a follower carries with it as it falls: inertia, weight, spring and joints, as functions of its coordinate q alone.</summary>
/// <remarks>
/// The machine is solved forward from the follower, the crank held where the fall begins, with the follower's coordinate as the
/// variable of the jets; so every point that falls has x(q), x', x''. A body with mass m, centre c, second moments S about it and axes
/// a1, a2, a3 fixed in it has the kinetic energy M q'^2/2 with
///   M = m c'.c' + sum S_ij a_i'.a_j',   dM/dq = 2 m c'.c'' + 2 sum S_ij a_i'.a_j''
/// (Euler, Lagrange: any textbook of mechanics), and its weight drives with -m g c_y', g = 9.80665 m/s^2 (ISO 80000-3), y up.
/// A rod between two pins lies along them; what it has across them is left out. A spring of length l pulls with F = F0 + k (l - l0),
/// never below 0, and drives with -F l'. Friction: each joint of what falls is taken to carry the weight of everything that falls
/// and the whole pull of the spring, W; a journal of radius r holds back with m W r |q_j'|, a slide or guide with m W |q_j'|, which is more
/// than they do where the load is shared (common practice, no source). Masses in g, lengths in mm, times in s: forces in g mm/s^2.
/// </remarks>
internal sealed class FallingBodies
{
    /// <summary>Acceleration of free fall, mm/s^2.</summary>
    public const double Gravity = 9806.65;

    /// <summary>One newton, g mm/s^2.</summary>
    public const double Newton = 1e6;

    /// <summary>Coefficient of friction unless given (common practice, no source).</summary>
    public const double Friction = 0.2;

    /// <summary>Speed for a unit of the follower's, mm or rad, below which a body or joint stands still.</summary>
    private const double Still = 1e-12;

    private readonly Machine machine;
    private readonly Cam cam;
    private readonly Pass pass;
    private readonly double[] given;
    private readonly double crank;
    private readonly (Body Body, MassMoments Moments)[] bodies;
    private readonly double[] journals;
    private readonly double weight;

    /// <summary>What falls with the follower of a cam from a crank angle on, rad.</summary>
    public FallingBodies(Proof proof, Cam cam, double crank)
    {
        (machine, this.cam, this.crank) = (proof.Machine, cam, crank);
        given = new double[machine.Members.Count];
        pass = Standing(proof.Motion);
        Go(Q = proof.Motion.Of(cam.FollowerMember)[StepBefore].Value);
        journals = [.. Enumerable.Range(0, given.Length).Select(m => Journal(proof, m))];
        bodies = [.. proof.Assembly.Parts.Where(p => p.Body.Member != Member.Case && Moves(p.Body)).GroupBy(p => p.Body).Select(g => (g.Key, g.Select(MassMoments.Of).Aggregate((a, b) => a + b)))];
        weight = Gravity * bodies.Sum(b => b.Moments.Mass);
    }

    /// <summary>The follower's coordinate at the step before the fall, rad or mm.</summary>
    public double Q { get; }

    /// <summary>Mass of everything that falls, g.</summary>
    public double Mass => weight / Gravity;

    /// <summary>Names of the members that fall, in the order of the design.</summary>
    public IReadOnlyList<string> Members => [.. bodies.Where(b => !b.Body.IsRod).Select(b => b.Body.Member).Order().Select(machine.NameOf)];

    /// <summary>The spring; null where there is none.</summary>
    private Design.SpringSpec? Spring => cam.Spec.Spring;

    private int StepBefore => Math.Min((int)(crank / machine.Performance.Step), machine.Performance.Steps - 1);

    /// <summary>Inertia and forces at a coordinate of the follower.</summary>
    public FallState At(double q)
    {
        Go(q);
        var (m, m1, drive) = (0.0, 0.0, 0.0);
        foreach (var (body, moments) in bodies)
        {
            var (centre, axes) = Placed(body, moments.Centre);
            m += moments.Mass * Product(centre, centre);
            m1 += 2 * moments.Mass * Changing(centre, centre);
            drive -= moments.Mass * Gravity * centre.Y.First;
            var s = moments.Second;
            foreach (var (i, j, size) in (ReadOnlySpan<(int, int, double)>)[(0, 0, s.XX), (1, 1, s.YY), (2, 2, s.ZZ), (0, 1, 2 * s.XY), (0, 2, 2 * s.XZ), (1, 2, 2 * s.YZ)])
            {
                m += size * Product(axes[i], axes[j]);
                m1 += size * (Changing(axes[i], axes[j]) + Changing(axes[j], axes[i]));
            }
        }

        var length = Spring is { } spring ? SpringLength(spring) : default;
        var pull = Pull(length.Value);
        return new(m, m1, drive - pull * length.First, (cam.Spec.Friction ?? Friction) * (weight + pull) * Rubbing());
    }

    /// <summary>Length of the spring at a coordinate of the follower, mm, and its pull, N; null without a spring.</summary>
    public (double Length, double Pull)? SpringAt(double q)
    {
        Go(q);
        return Spring is { } spring ? (SpringLength(spring).Value, Pull(SpringLength(spring).Value) / Newton) : null;
    }

    private double Pull(double length) => Newton * (Spring?.PullAt(length) ?? 0);

    private void Go(double q)
    {
        given[cam.FollowerMember] = q;
        pass.Go(crank, given: given, varied: cam.FollowerMember);
    }

    // The machine run forward to the step before the fall, so that every linkage stands on its own branch.
    private Pass Standing(Motion.Motion motion)
    {
        var forward = new Pass(machine, ForwardRun.Forward(machine));
        for (var i = 0; i <= StepBefore; i++)
        {
            foreach (var acted in machine.Acted)
            {
                given[acted.Cam.Driven] = motion.Of(acted.Cam.Driven)[i].Value;
            }

            forward.Go(machine.Performance.At(i), given: given);
        }

        return forward;
    }

    private Jet SpringLength(Design.SpringSpec s)
    {
        var carrier = machine.Members[cam.FollowerMember].Carrier;
        return Jet.Sqrt((Carried(cam.FollowerMember, s.At) - Carried(carrier, s.To)).SquaredLength);
    }

    private double Rubbing()
    {
        var sum = 0.0;
        for (var m = 0; m < journals.Length; m++)
        {
            sum += journals[m] * Math.Abs(pass.States[m].Q.First);
        }

        return sum;
    }

    // Radius at which a member's joint rubs, mm for one that turns; 1 for one that slides.
    private double Journal(Proof proof, int m) => machine.Members[m].Joint.Kind != JointKind.Pivot ? 1
        : proof.Assembly.Parts.FirstOrDefault(p => p.Kind is PartKind.Axle or PartKind.Shaft && (p.Bears ?? p.Body.Member) == m) is { } axle && axle.Pieces[0].Radii.Length > 0 ? axle.Pieces[0].Radii[0]
        : LeverParts.Axle / 2;

    private bool Moves(Body body)
    {
        var (centre, axes) = Placed(body, default);
        return axes.Append(centre).Any(v => Product(v, v) > Still * Still);
    }

    // A point fixed to the body, and its three axes, as they stand.
    private (Jet3 Point, Jet3[] Axes) Placed(Body body, Point3 p)
    {
        if (!body.IsRod)
        {
            var at = Carried(body.Member, p);
            return (at, [Carried(body.Member, p + new Vec3(1, 0, 0)) - at, Carried(body.Member, p + new Vec3(0, 1, 0)) - at, Carried(body.Member, p + new Vec3(0, 0, 1)) - at]);
        }

        var link = machine.Drives[body.Member].Link!;
        var (from, to) = (Carried(link.From.Member, link.From.At), Carried(link.To.Member, link.To.At));
        var along = 1 / link.From.At.DistanceTo(link.To.At) * (to - from);
        return (from + p.X * along, [along, default, default]);
    }

    private Jet3 Carried(int member, Point3 drawn) => Motion.Path.Between(machine.Members, member, Member.Case).Point(Jet3.Constant(drawn), pass.States);

    // a'.b' and a'.b''.
    private static double Product(in Jet3 a, in Jet3 b) => a.X.First * b.X.First + a.Y.First * b.Y.First + a.Z.First * b.Z.First;

    private static double Changing(in Jet3 a, in Jet3 b) => a.X.First * b.X.Second + a.Y.First * b.Y.Second + a.Z.First * b.Z.Second;
}

/// <summary>What falls, at one coordinate of the follower: M q'' + (dM/dq) q'^2/2 = Drive - Friction sign q'. Lengths in mm, masses in g, times in s.</summary>
/// <param name="M">Inertia, g mm^2 for a follower that turns, g for one that slides.</param>
/// <param name="M1">Its derivative with respect to the coordinate.</param>
/// <param name="Drive">Force of weight and spring along the coordinate, g mm^2/s^2 or g mm/s^2, with its sign.</param>
/// <param name="Friction">What the joints hold back with at the most, same unit, 0 or more.</param>
internal readonly record struct FallState(double M, double M1, double Drive, double Friction);
