using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>Finishes a cam: its loop, the loop's error against the truth, and what the cutter leaves.</summary>
internal static class CamFinish
{
    /// <summary>The finished cam.</summary>
    /// <param name="cam">The cam as the motion asks for it.</param>
    /// <param name="between">The same machine solved half a step later, for true points between the samples.</param>
    /// <param name="cutter">Diameter of the cutter, mm.</param>
    public static Cam Finish(CamDefinition cam, Motion.Motion between, double cutter)
    {
        var machine = cam.Motion.Machine;
        var loop = Cut(cam, between, cutter, false);
        var plane = new CamPlane(machine.Members[cam.Drive.Driver].Joint);
        return new(
            machine.NameOf(cam.Drive.Driven),
            machine.NameOf(cam.Drive.Driver),
            cam.Drive.Driver,
            cam.Drive.Driven,
            cam.Follower,
            cam.Profile,
            loop.Outline,
            loop.Error,
            loop.AsCut,
            loop.Unreached,
            cam.BaseRadius,
            cam.BaseWanted,
            CamMaker.HubRadius(cam.Drive),
            cam.Drive.Spec.BoreDiameter,
            plane.Station(cam.Drive.Spec.Follower.At),
            cam.Turn.Unlike(cam.Motion, cam.Drive, cam.Falls),
            cam.Corners)
        {
            Drive = cam.Drive,
            Return = ReturnMaker.Of(cam, between, cutter),
        };
    }

    /// <summary>The loop that a cam's envelope is cut to.</summary>
    /// <param name="cam">The cam as the motion asks for it.</param>
    /// <param name="between">The same machine solved half a step later.</param>
    /// <param name="cutter">Diameter of the cutter, mm.</param>
    /// <param name="isHole">Whether the wood lies outside the loop, and the cutter runs inside.</param>
    public static CutLoop Cut(CamDefinition cam, Motion.Motion between, double cutter, bool isHole)
    {
        var envelope = TrueEnvelope.Of(cam);
        var outline = CamOutline.Fit(envelope.Samples);
        var reach = CutterReach.Of(isHole ? outline.Reversed() : outline, cutter / 2);
        return new(outline, Error(cam, between, envelope, outline), isHole ? reach.AsCut.Reversed() : reach.AsCut, reach.Left);
    }

    // True points halfway between the samples against the loop; between those that stand in it, since what undercut takes away is not there to be held against.
    private static double Error(CamDefinition cam, Motion.Motion between, TrueEnvelope envelope, Outline outline)
    {
        var q = between.Of(cam.Drive.Driven);
        var t = between.Of(cam.Drive.Driver);
        var walk = new LoopWalk(outline);
        var worst = 0.0;
        for (var k = 0; k < cam.Turn.Steps - 1; k++)
        {
            var i = cam.Turn.Sense > 0 ? cam.Turn.Steps - 2 - k : k;
            if (envelope.StandsFrom(i) && cam.Profile.DropAt(i) is null)
            {
                worst = Math.Max(worst, walk.DistanceTo(cam.Follower.Sample(q[i], t[i]).Point));
            }
        }

        return worst;
    }
}
