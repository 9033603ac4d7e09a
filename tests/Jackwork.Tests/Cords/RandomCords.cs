using CsCheck;
using Jackwork.Cords;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Cords;

/// <summary>Two members joined by a cord, and the cord followed along given motions of one of them.</summary>
/// <param name="Members">Driver and driven, on the case.</param>
/// <param name="Run">The cord's way.</param>
internal sealed record RandomCords(IReadOnlyList<Member> Members, CordRun Run)
{
    private const int Steps = 200;

    public static Vec3 Normal => new(0, 0, 1);

    public CordDrive Drive => new(Members, 0, 1, Run, new());

    /// <summary>A hold of either end: an eye tied to a lever or slide, a pulley on one with the end on the case beside it, or a drum.</summary>
    private sealed record Hold(Func<int, Point3, Member> Member, Func<int, Point3, IReadOnlyList<CordLead>> Leads);

    // Hanging below what stands at the height 0: its point moves about up and down.
    private static Gen<Hold> AnyHold => Gen.Select(Gen.Int[0, 4], Gen.Double[-0.4, 0.4], Gen.Double[25, 60], Gen.Bool, Gen.Double[4, 9]).Select((kind, lean, arm, left, radius) => new Hold(
        (_, at) =>
        {
            var out0 = (left ? 1 : -1) * arm * new Vec3(Math.Cos(lean), Math.Sin(lean), 0);
            return kind % 2 == 0
                ? new("m", Member.Case, new(JointKind.Slide, default, new Vec3(Math.Sin(lean), Math.Cos(lean), 0)))
                : new("m", Member.Case, new(JointKind.Pivot, kind == 3 ? at : at + out0, left ? Normal : -1 * Normal));
        },
        (m, at) => kind switch
        {
            0 or 1 => [new(LeadKind.Eye, m, at, 0, 0, 0)],
            3 => [new(LeadKind.Drum, m, at, radius, left ? 1 : -1, 3)],
            _ => [new(LeadKind.Pulley, m, at, radius, 0, 0), new(LeadKind.Eye, Member.Case, at + new Vec3(0, 55, 0), 0, 0, 0)],
        }));

    /// <summary>Any two holds, with an eye, a pulley or two pulleys above between them.</summary>
    public static Gen<RandomCords> Any => Gen.Select(AnyHold, AnyHold, Gen.Int[0, 2], Gen.Double[5, 12], Gen.Double[0, 20]).Select((first, second, between, radius, wide) =>
    {
        var (a, b) = (new Point3(-wide - 15, -60, 0), new Point3(wide + 15, -70, 0));
        var from = first.Leads(0, a).Reverse().ToList();
        var to = second.Leads(1, b).ToList();
        CordLead Above(double x, double r) => new(r == 0 ? LeadKind.Eye : LeadKind.Pulley, Member.Case, new(x, 10, 0), r, r == 0 ? 0 : -1, 0);
        CordLead[] middle = between switch { 0 => [Above(0, 0)], 1 => [Above(1, radius)], _ => [Above(-15 - wide / 2, radius), Above(16 + wide / 2, 6)] };

        // A pulley on a member is gone round underneath: counter-clockwise from the left down and up to the right on the side it stands, seen from its own end.
        CordLead Under(CordLead l) => l.Kind == LeadKind.Pulley && l.Member != Member.Case ? l with { Way = 1 } : l;
        return new RandomCords([first.Member(0, a) with { Name = "a" }, second.Member(1, b) with { Name = "b" }], new([first.Member(0, a), second.Member(1, b)], [.. from.Select(Under), .. middle, .. to.Select(Under)], Normal));
    }).Where(c => Math.Min(Math.Abs(Slope(c, 0)), Math.Abs(Slope(c, 1))) > 0.3);

    /// <summary>How fast the cord grows with a member, as drawn, for what its arm moves.</summary>
    public static double Slope(RandomCords c, int member) => c.Run.Length([.. c.Members.Select((m, i) => m.Joint.At(i == member ? Jet.Variable(0) : default))]).First / c.Arm(member);

    /// <summary>What a unit of a member's coordinate moves, mm.</summary>
    public double Arm(int member)
    {
        var lead = Run.Leads.First(l => l.Member == member);
        return Members[member].Joint is { Kind: JointKind.Pivot } j ? Math.Max(lead.Radius, lead.At.DistanceTo(j.Foot(lead.At))) : 1;
    }

    /// <summary>Follows the cord from the pose as drawn to a time, one member moving as given; the state of the other there.</summary>
    public Jet Follow(End unknown, Func<double, Jet> known, double time)
    {
        var drive = Drive;
        var (found, given) = unknown == End.Driven ? (1, 0) : (0, 1);
        MemberState[] states = [.. Members.Select(m => m.Joint.At(default))];
        var branch = drive.DrawnBranch(unknown);
        for (var i = 0; i <= Steps; i++)
        {
            states[given] = Members[given].Joint.At(known(time * i / Steps));
            states[found] = drive.Solve(unknown, states, new(branch, states[found].Q, time / Steps), out branch, out var miss);
            Assert.Equal(0, miss);
            Assert.True(drive.Residual(states) < 1e-9);
        }

        return states[found].Q;
    }

    /// <summary>A swing that takes a few mm of cord.</summary>
    public Func<double, Jet> Swing(int member, double share, double phase) => t =>
    {
        var (s, c) = Jet.SinCos(Jet.Variable(t) + phase);
        var size = 4 * share / Arm(member);
        return size * (s - Math.Sin(phase)) + 0.3 * size * (Jet.Square(c) - Math.Cos(phase) * Math.Cos(phase));
    };
}
