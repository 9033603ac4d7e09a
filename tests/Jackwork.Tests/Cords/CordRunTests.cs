using System.Diagnostics;
using System.Text.Json;
using CsCheck;
using Jackwork.Cords;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Cords;

/// <summary>The length of a cord over its leads: belts, hulls, the principle of the shortest way, jets against differences.</summary>
public sealed class CordRunTests
{
    private static readonly Vec3 Z = new(0, 0, 1);

    private static CordLead Eye(double x, double y) => new(LeadKind.Eye, Member.Case, new(x, y, 0), 0, 0, 0);

    private static CordLead Pulley(double x, double y, double r, int way) => new(LeadKind.Pulley, Member.Case, new(x, y, 0), r, way, 0);

    private static double Length(params CordLead[] leads) => new CordRun([], leads, Z).Length([]).Value;

    // J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, 5th ed., section 17-2, equations 17-1 to 17-4 (from memory). The cord begins and ends at an eye on the belt's straight side.
    [Fact]
    [Trait("Proof", "published")]
    public void BeltsRoundTwoPulleys() => Gen.Select(Gen.Double[5, 40], Gen.Double[5, 40], Gen.Double[90, 300], Gen.Bool).Sample((r1, r2, c, crossed) =>
    {
        var (d, e) = (2 * Math.Min(r1, r2), 2 * Math.Max(r1, r2));
        var lean = Math.Asin((e + (crossed ? d : -d)) / (2 * c));
        var (small, large) = (Math.PI + (crossed ? 2 : -2) * lean, Math.PI + 2 * lean);
        var published = Math.Sqrt(4 * c * c - Math.Pow(e + (crossed ? d : -d), 2)) + (d * small + e * large) / 2;

        // The upper straight side touches both circles at their middles plus r n, on the crossed belt less for the second.
        var (sin, cos) = ((crossed ? r1 + r2 : r1 - r2) / c, Math.Sqrt(1 - Math.Pow((crossed ? r1 + r2 : r1 - r2) / c, 2)));
        var s = crossed ? -r2 : r2;
        var (x, y) = ((r1 * sin + c + s * sin) / 2, (r1 * cos + s * cos) / 2);
        Assert.Equal(published, Length(Eye(x, y), Pulley(0, 0, r1, 1), Pulley(c, 0, r2, crossed ? -1 : 1), Eye(x, y)), 1e-9 * published);
    });

    private const string Hull = """
        import json, sys
        from shapely.geometry import Point
        from shapely.ops import unary_union
        print(json.dumps([unary_union([Point(x, y).buffer(r, 2048) if r else Point(x, y) for x, y, r in discs]).convex_hull.length for discs in json.load(sys.stdin)]))
        """;

    // A cord from an eye round discs that all stand on their hull, back to the eye, is as long as the hull's edge, by Shapely. Its circles are polygons of 8192 sides: shorter by 2.5e-8.
    [Fact]
    [Trait("Proof", "independent")]
    public void RoundDiscsAsLongAsTheirHull()
    {
        var jobs = new List<double[][]>();
        Gen.Select(Gen.Double[4, 18].Array[3, 5], Gen.Double[0, 6]).Sample((radii, start) =>
        {
            double[] At(int i, double out0, double r) => [out0 * Math.Cos(start + i * Math.Tau / (radii.Length + 1)), out0 * Math.Sin(start + i * Math.Tau / (radii.Length + 1)), r];
            jobs.Add([At(0, 90, 0), .. radii.Select((r, i) => At(i + 1, 60, r))]);
        }, iter: 40, threads: 1);
        var lengths = Python<double[]>(Hull, jobs);
        foreach (var (discs, length) in jobs.Zip(lengths))
        {
            CordLead eye = Eye(discs[0][0], discs[0][1]);
            Assert.Equal(length, Length([eye, .. discs.Skip(1).Select(d => Pulley(d[0], d[1], d[2], 1)), eye]), 1e-7 * length);
        }
    }

    // 3-4-5: an eye 50 mm from the axis of a disc of 30 mm is 40 mm from where its tangent touches; a cord from one such eye to the opposite one lies round the angle pi - 2 acos(3/5) of the disc.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ATangentOfThreeFourFive() => Assert.Equal(80 + 30 * (Math.PI - 2 * Math.Acos(0.6)), Length(Eye(-50, 0), Pulley(0, 0, 30, -1), Eye(50, 0)), 1e-12);

    // Eyes alone run in space: 2-3-6 and 1-4-8 make 7 and 9.
    [Fact]
    [Trait("Proof", "closed form")]
    public void EyesInSpaceAreJoinedStraight()
    {
        CordLead At(double x, double y, double z) => new(LeadKind.Eye, Member.Case, new(x, y, z), 0, 0, 0);
        Assert.Equal(16, new CordRun([], [At(0, 0, 0), At(2, 3, 6), At(3, 7, -2)], null).Length([]).Value, 1e-12);
    }

    // A taut cord is the shortest way: its length changes by what the ends of its straight pieces move along them and drums turn, though arcs and directions change too.
    [Fact]
    [Trait("Proof", "property")]
    public void ItGrowsByWhatItsEndsMoveAlongIt() => Gen.Select(RandomCords.Any, Gen.Double[-1, 1], Gen.Double[-1, 1]).Sample((cord, a, b) =>
    {
        MemberState[] states = [cord.Members[0].Joint.At(cord.Swing(0, a, 1)(0.7)), cord.Members[1].Joint.At(cord.Swing(1, b, 2)(0.7))];
        var (strands, wraps) = (new CordStrand[cord.Run.Leads.Count - 1], new Jet[cord.Run.Leads.Count]);
        var length = cord.Run.Follow(states, strands, wraps);
        var by = strands.Sum(s => s.Along.Dot(new((s.To - s.From).X.First, (s.To - s.From).Y.First, (s.To - s.From).Z.First)));
        foreach (var (k, sign) in ((int, int)[])[(0, -1), (cord.Run.Leads.Count - 1, 1)])
        {
            by += cord.Run.Leads[k].Kind == LeadKind.Drum ? sign * cord.Run.Leads[k].Side * cord.Run.Turned(k, states).First : 0;
        }

        Assert.Equal(by, length.First, 1e-10);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void ItsDerivativesAgainstDifferences() => Gen.Select(RandomCords.Any, Gen.Double[-1, 1], Gen.Double[-1, 1]).Sample((cord, a, b) =>
    {
        Jet At(double t) => cord.Run.Length([cord.Members[0].Joint.At(cord.Swing(0, a, 1)(t)), cord.Members[1].Joint.At(cord.Swing(1, b, 2)(t))]);
        Assert.Equal(Richardson.First(t => At(t).Value, 0.7, 0.2), At(0.7).First, 1e-7);
        Assert.Equal(Richardson.Second(t => At(t).Value, 0.7, 0.2), At(0.7).Second, 1e-6);
    });

    internal static T Python<T>(string script, object job)
    {
        var start = new ProcessStartInfo("/usr/bin/python3", ["-c", script]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        using var python = Process.Start(start)!;
        python.StandardInput.Write(JsonSerializer.Serialize(job));
        python.StandardInput.Close();
        var output = python.StandardOutput.ReadToEnd();
        python.WaitForExit();
        Assert.Equal(0, python.ExitCode);
        return JsonSerializer.Deserialize<T>(output)!;
    }
}
