using System.Diagnostics;
using Jackwork.Barrels;
using Jackwork.Cams;
using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>The cams that a motion asks for, and the run on them as cut, with the times that they took, ms.</summary>
/// <param name="Motion">The motion.</param>
/// <param name="Cutter">Diameter of the cutter, mm.</param>
/// <param name="Made">The plate cams, one for each acted member that one moves, each with where its follower then rests.</param>
/// <param name="Barrels">The barrel cams, likewise.</param>
/// <param name="AsCut">The run on them.</param>
/// <param name="CamMs">Time for the cams.</param>
/// <param name="AsCutMs">Time for the run.</param>
internal sealed record CamStage(Motion.Motion Motion, double Cutter, IReadOnlyList<MadeCam> Made, IReadOnlyList<Barrel> Barrels, AsCut AsCut, double CamMs, double AsCutMs)
{
    /// <summary>The plate cams.</summary>
    public IReadOnlyList<Cam> Cams { get; } = [.. Made.Select(m => m.Cam)];

    /// <summary>Makes the cams and runs on them.</summary>
    /// <param name="motion">The motion as the chart asks for it.</param>
    /// <param name="limits">Limits that the sizing keeps to.</param>
    /// <param name="cutter">Diameter of the cutter, mm.</param>
    /// <param name="before">Cams of another text of the design; whichever come out the same are taken from there. Null for none.</param>
    public static CamStage Of(Motion.Motion motion, Limits limits, double cutter, CamStage? before)
    {
        var clock = Stopwatch.GetTimestamp();
        var acted = motion.Machine.Acted.Where(a => a.Cam is CamDrive).ToList();
        var same = acted.Select(a => before?.Same(motion, a, cutter)).ToList();
        var between = same.All(s => s is not null) ? motion : Jackwork.Motion.Motion.Solve(motion.Machine, 0.5);
        var cams = acted.Select((a, k) => same[k]?.Cam ?? CamFinish.Finish(CamMaker.Define(motion, a, limits), between, cutter)).ToList();
        var barrels = motion.Machine.Acted.Select(a => a.Cam).OfType<BarrelDrive>().Select(d => Barrel.Of(motion, d)).ToList();
        var camMs = Proof.Lap(ref clock);
        List<MadeCam> made = [.. cams.Select((c, k) => same[k] ?? new(c, AsCut.Rests(motion, c), ReturnPlay.Stops(motion, c)))];
        var contacts = made.Select(m => m.Contact).Concat(barrels.Select(b => b.Contact(motion))).ToDictionary(c => c.Follower);
        var asCut = AsCut.Run(motion, [.. motion.Machine.Acted.Select(a => contacts[a.Cam.Driven])]);
        return new(motion, cutter, made, barrels, asCut, camMs, Proof.Lap(ref clock));
    }

    // The cam of an acted member where nothing that it follows from has changed.
    private MadeCam? Same(Motion.Motion motion, Acted acted, double cutter)
    {
        var (now, then) = (motion.Machine, Motion.Machine);
        var k = then.Acted.ToList().FindIndex(a => a.Cam.Driven == acted.Cam.Driven && a.Cam.Driver == acted.Cam.Driver);
        return k >= 0 && cutter == Cutter && now.Design.Limits == then.Design.Limits
            && then.Acted[k] is var old && old.Cam is CamDrive { Spec: var spec } && spec == ((CamDrive)acted.Cam).Spec && old.Shaft == acted.Shaft
            && Likewise(acted.Cam.Driver) && Likewise(acted.Cam.Driven) && Likewise(acted.Shaft)
            && Jumps(acted).SequenceEqual(Jumps(old))
            ? Made.First(m => m.Cam.FollowerMember == acted.Cam.Driven)
            : null;

        bool Likewise(int member) => now.NameOf(member) == then.NameOf(member) && now.Members[member].Joint == then.Members[member].Joint
            && now.Members[member].Carrier == then.Members[member].Carrier && motion.Of(member).SequenceEqual(Motion.Of(member));
    }

    private static IEnumerable<double> Jumps(Acted acted) => acted.Chart.Knots.Where(k => k.HasVelocityJump).Select(k => k.Angle);
}

/// <summary>A cam, and where its follower rests on it as cut.</summary>
/// <param name="Cam">The cam.</param>
/// <param name="Rests">The follower's coordinate at every step, NaN where it touches nothing.</param>
/// <param name="Stops">The same where the other side of a positive cam stops it; null for a cam with one side.</param>
internal sealed record MadeCam(Cam Cam, double[] Rests, double[]? Stops)
{
    /// <summary>The contact of its follower.</summary>
    public CutContact Contact => new(Cam.FollowerMember, Cam.Follower.Reach, Rests, Stops is null ? null : (Rests, Stops), Cam.Follower.Outward);
}
