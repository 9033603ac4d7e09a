using System.Diagnostics;
using Jackwork.Barrels;
using Jackwork.Cams;
using Jackwork.Gears;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>A cam, the acted member that it serves, and how it does as cut.</summary>
public readonly record struct CamWork(Cam Cam, Acted Acted, AsCutResult AsCut);

/// <summary>Everything that is worked out of a machine before it is judged: motion, cams, gears, and the run on the cams as cut.</summary>
public sealed class Proof
{
    private readonly Lazy<CamStage> cut;
    private readonly Lazy<IReadOnlyList<GearWork>> gears;
    private readonly Lazy<IReadOnlyList<(string List, Mechanism Work)>> mechanisms;
    private readonly Lazy<Residuals> residuals;
    private readonly double motionMs;
    private readonly Lazy<Assembly> assembly;
    private readonly Lazy<Sweep> sweep;
    private readonly Lazy<(IReadOnlyList<Clearance> All, double Ms)> clearances;
    private readonly Lazy<IReadOnlyList<Stack>> stacks;
    private readonly CamStage? before;

    private Proof(Machine machine, Motion.Motion motion, double motionMs, CamStage? before)
    {
        (Machine, Motion, this.motionMs, Limits, this.before) = (machine, motion, motionMs, new(machine.Design.Limits), before);
        cut = new(() => CamStage.Of(motion, Limits, Cutter, before));
        assembly = new(() => Assembly.Of(this));
        sweep = new(() => new(Motion, Assembly.Parts));
        clearances = new(Clear);
        stacks = new(() => StackMaker.Of(this));
        gears = new(() => GearWork.Of(motion, Cutter));
        mechanisms = new(() => [.. MechanismKind.All.SelectMany(k => k.In(this).Select(w => (k.List, w)))]);
        residuals = new(() => Residuals.Of(motion));
    }

    /// <summary>The machine.</summary>
    public Machine Machine { get; }

    /// <summary>Its whole performance.</summary>
    public Motion.Motion Motion { get; }

    /// <summary>The limits it is held against.</summary>
    public Limits Limits { get; }

    /// <summary>The plate cams, one for each acted member that one moves, in the order of <see cref="Machine.Acted"/>.</summary>
    public IReadOnlyList<Cam> Cams => cut.Value.Cams;

    /// <summary>The barrel cams, likewise.</summary>
    public IReadOnlyList<Barrel> Barrels => cut.Value.Barrels;

    /// <summary>The acted member that a cam serves.</summary>
    public Acted ActedOf(Cam cam) => Machine.Acted[IndexOf(cam.FollowerMember)];

    /// <summary>What that member does on the cam as cut.</summary>
    public AsCutResult AsCutOf(Cam cam) => AsCutOf(cam.FollowerMember);

    /// <summary>What the acted member that a follower moves does on its cam as cut.</summary>
    /// <param name="follower">Index of the follower.</param>
    internal AsCutResult AsCutOf(int follower) => AsCut.Results[IndexOf(follower)];

    /// <summary>Whether every relation that the motion of an acted member comes by closes everywhere.</summary>
    public bool IsSound(Acted acted) => !Motion.Gaps.Any(g => acted.Chain.Contains(g.Relation));

    private int IndexOf(int follower)
    {
        var k = 0;
        while (Machine.Acted[k].Cam.Driven != follower)
        {
            k++;
        }

        return k;
    }

    /// <summary>The cams whose motion closes everywhere, with what they serve; of the others nothing can be said but that they don't close.</summary>
    public IReadOnlyList<CamWork> SoundCams => [.. Cams.Select(c => new CamWork(c, ActedOf(c), AsCutOf(c))).Where(c => IsSound(c.Acted))];

    /// <summary>The spur pairs.</summary>
    public IReadOnlyList<GearWork> Gears => gears.Value;

    /// <summary>What the drives and joints are made of, spur wheels and the discs of cams apart.</summary>
    public IEnumerable<Mechanism> Mechanisms => mechanisms.Value.Select(m => m.Work);

    /// <summary>The mechanisms of one kind.</summary>
    public IEnumerable<T> MechanismsOf<T>()
        where T : Mechanism => Mechanisms.OfType<T>();

    /// <summary>The mechanisms that stand in one list of the result.</summary>
    internal IEnumerable<Mechanism> Listed(string list) => mechanisms.Value.Where(m => m.List == list).Select(m => m.Work);

    /// <summary>The least base circle that keeps the cam of an acted member within its limits, as <c>base: auto</c> would choose it; null where none does.</summary>
    public LeastBase? LeastBase(Acted acted) => CamMaker.Least(Motion, acted, Limits);

    /// <summary>The run on the cams as cut.</summary>
    public AsCut AsCut => cut.Value.AsCut;

    /// <summary>All parts of the piece; worked out when first asked for.</summary>
    public Assembly Assembly => assembly.Value;

    /// <summary>What the parts sweep; worked out when first asked for.</summary>
    internal Sweep Sweep => sweep.Value;

    /// <summary>How near parts come to each other, nearest to their limit first; worked out when first asked for.</summary>
    public IReadOnlyList<Clearance> Clearances => clearances.Value.All;

    /// <summary>What stands where along each shaft and axle; worked out when first asked for.</summary>
    public IReadOnlyList<Stack> Stacks => stacks.Value;

    /// <summary>Time that the clearances took, ms.</summary>
    public double ClearanceMs => clearances.IsValueCreated ? clearances.Value.Ms : 0;

    /// <summary>Largest amount by which any relation is not satisfied by the solved positions, mm, where it closes at all.</summary>
    public double Closure => residuals.Value.Worst;

    /// <summary>For each rod and slot its least transmission angle, rad, and the step where that is.</summary>
    internal IReadOnlyList<(Relation Relation, double Angle, int Step)> Transmission => residuals.Value.Transmission;

    /// <summary>Diameter of the cutter, mm.</summary>
    public double Cutter => Machine.Design.Cutter ?? 3;

    /// <summary>Time that the stages took, ms.</summary>
    public (double Motion, double Cams, double AsCut) Elapsed => (motionMs, cut.Value.CamMs, cut.Value.AsCutMs);

    /// <summary>Works everything out.</summary>
    public static Proof Of(Machine machine)
    {
        var proof = OfMotion(machine);
        _ = (proof.Cams, proof.Gears, proof.Closure, proof.Clearances);
        return proof;
    }

    /// <summary>Solves the motion; cams, wheels, parts, clearances and stacks wait until they are asked for.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="before">Another text of the design, worked out; cams that come out the same are taken from there. Null for none.</param>
    public static Proof OfMotion(Machine machine, Proof? before = null)
    {
        var clock = Stopwatch.GetTimestamp();
        var motion = Jackwork.Motion.Motion.Solve(machine);
        return new(machine, motion, Lap(ref clock), before is null ? null : before.cut.IsValueCreated ? before.cut.Value : before.before);
    }

    private (IReadOnlyList<Clearance> All, double Ms) Clear()
    {
        var clock = Stopwatch.GetTimestamp();
        var all = ClearanceSweep.Of(Machine, Sweep, Assembly, Limits.Clearance);
        return (all, Lap(ref clock));
    }

    /// <summary>A crank angle (rad) as a maker finds it: degrees of the crank, and of a shaft within its turn. Past the performance's end it starts anew.</summary>
    public string Where(double crank, int shaft)
    {
        crank = crank > Machine.Performance.Length ? crank - Machine.Performance.Length : crank;
        var own = FormattableString.Invariant($"crank {Deg(crank):0.#}°");
        return shaft == Machine.Crank || Machine.Turns[shaft] is null ? own : FormattableString.Invariant($"{Machine.NameOf(shaft)} {ShaftDeg(crank, shaft):0.#}° ({own})");
    }

    /// <summary>How far a geared shaft has turned since the start, in the sense in which it runs: degrees from 0 to 360 within its turn, at a crank angle in rad.</summary>
    public double ShaftDeg(double crank, int shaft)
    {
        var deg = Machine.Turns[shaft]!.Value.Numerator.Sign * Deg(ShaftTurn.At(Machine, shaft, crank));
        return deg - 360 * Math.Floor(deg / 360);
    }

    /// <summary>Degrees.</summary>
    public static double Deg(double rad) => rad * 180 / Math.PI;

    /// <summary>Crank angle of a step, rad.</summary>
    public double At(int step) => Machine.Performance.At(step);

    /// <summary>Time since <paramref name="clock"/>, ms, which then starts anew.</summary>
    internal static double Lap(ref long clock)
    {
        var now = Stopwatch.GetTimestamp();
        var ms = Stopwatch.GetElapsedTime(clock, now).TotalMilliseconds;
        clock = now;
        return ms;
    }
}
