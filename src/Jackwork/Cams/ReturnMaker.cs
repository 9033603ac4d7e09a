using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>Makes the side of a positive cam that brings its follower back.</summary>
internal static class ReturnMaker
{
    /// <summary>Clearance unless given, mm (common practice, no source).</summary>
    public const double Clearance = 0.1;

    /// <summary>Wood outside a groove, and thickness of its back, unless given, mm (common practice, no source).</summary>
    private const double Wall = 6, Back = 3;

    /// <summary>The other side of a cam; null where it has none.</summary>
    /// <param name="cam">The cam as the motion asks for it.</param>
    /// <param name="between">The same machine solved half a step later.</param>
    /// <param name="cutter">Diameter of the cutter, mm.</param>
    public static CamReturn? Of(CamDefinition cam, Motion.Motion between, double cutter) => cam.Drive.Spec switch
    {
        { Groove: { } groove } => Groove(cam, groove, between, cutter),
        { Second: { } second } => Second(cam, second, between, cutter),
        { Yoke: { } yoke } => Yoke(cam, yoke.Clearance ?? Clearance),
        _ => null,
    };

    private static GrooveWall Groove(CamDefinition cam, Design.GrooveSpec spec, Motion.Motion between, double cutter)
    {
        var roller = (RollerFollower)cam.Follower;
        var clearance = spec.Clearance ?? Clearance;
        var wall = With(cam, roller.WithRadius(-(roller.Radius + clearance)));
        var loop = CamFinish.Cut(wall, between, cutter, true);
        var widest = loop.Outline.Segments.Max(s => Math.Max(s.Start.FromOrigin.Length, s.PointAt(0.5).FromOrigin.Length));
        return new(clearance, wall.Profile, loop, Math.Ceiling(2 * (widest + (spec.Wall ?? Wall))) / 2, spec.Back ?? Back);
    }

    private static SecondDisc Second(CamDefinition cam, Design.SecondSpec spec, Motion.Motion between, double cutter)
    {
        var machine = cam.Motion.Machine;
        var clearance = spec.Clearance ?? Clearance;
        var follower = FollowerBuilder.Build(machine, cam.Drive, spec.Follower);
        var disc = With(cam, follower is RollerFollower roller ? roller.WithRadius(roller.Radius + clearance) : ((FlatFollower)follower).Nearer(clearance));
        var plane = new CamPlane(machine.Members[cam.Drive.Driver].Joint);
        return new(clearance, follower, disc.Profile, CamFinish.Cut(disc, between, cutter, false), follower.BaseRadius(cam.Turn.Least, cam.Turn.Most) - clearance, plane.Station(spec.Follower.At));
    }

    private static YokeFace Yoke(CamDefinition cam, double clearance)
    {
        var breadth = DiscBreadth.Of(cam.Profile.Samples);
        var face = ((FlatFollower)cam.Follower).Opposite(breadth.Most + clearance);
        return new(clearance, face, With(cam, face).Profile, breadth);
    }

    // The same motion met by another follower.
    private static CamDefinition With(CamDefinition cam, Follower follower) =>
        cam with { Follower = follower, Profile = CamProfile.Of(cam.Motion, cam.Drive, follower, cam.Turn.Steps, []), BaseWanted = null };
}
