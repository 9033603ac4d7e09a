using System.Diagnostics;
using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>The cams that a motion asks for, and the run on them as cut, with the times that they took, ms.</summary>
internal sealed record CamStage(IReadOnlyList<Cam> Cams, AsCut AsCut, double CamMs, double AsCutMs)
{
    /// <summary>Makes the cams and runs on them.</summary>
    /// <param name="motion">The motion as the chart asks for it.</param>
    /// <param name="limits">Limits that the sizing keeps to.</param>
    /// <param name="cutter">Diameter of the cutter, mm.</param>
    public static CamStage Of(Motion.Motion motion, Limits limits, double cutter)
    {
        var clock = Stopwatch.GetTimestamp();
        var defined = motion.Machine.Acted.Select(a => CamMaker.Define(motion, a, limits)).ToList();
        var between = Motion.Motion.Solve(motion.Machine, 0.5);
        var cams = defined.ConvertAll(d => CamFinish.Finish(d, between, cutter));
        var camMs = Proof.Lap(ref clock);
        var asCut = AsCut.Run(motion, cams);
        return new(cams, asCut, camMs, Proof.Lap(ref clock));
    }
}
