using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Cams;

/// <summary>What a positive cam is made of beside its disc: rim and back of a groove, the second disc, or the yoke.</summary>
/// <param name="machine">The machine.</param>
/// <param name="cam">The cam.</param>
/// <param name="play">The play of its follower as cut.</param>
public sealed class PositiveCamWork(Machine machine, Cam cam, ReturnPlay play) : Mechanism(machine, cam.FollowerMember)
{
    /// <summary>Wood round the opening of a yoke, and room beside the disc in it, mm (common practice, no source).</summary>
    private const double YokeWall = 8, Beside = 1;

    private readonly Design.CamSpec spec = cam.Spec;

    /// <summary>The cam.</summary>
    public Cam Cam => cam;

    /// <inheritdoc/>
    public override string Word => cam.Return!.Word;

    /// <inheritdoc/>
    public override string Folder => "positive-cams";

    /// <inheritdoc/>
    public override string Contents => "what positive cams have beside their discs: rims and backs of grooves, second discs, yokes; outline to cut";

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => cam.Return switch
    {
        GrooveWall wall => [Rim(wall), Back(wall)],
        SecondDisc second => [Second(second)],
        YokeFace yoke => [Yoke(yoke)],
        _ => [],
    };

    /// <summary>The positive cams of a proof.</summary>
    internal static IEnumerable<Mechanism> Of(Proof proof) => proof.Machine.Drives.Any(d => d is CamDrive { Spec.IsPositive: true })
        ? proof.Cams.Select(c => (Cam: c, proof.AsCutOf(c).Play)).Where(c => c.Play is not null).Select(c => new PositiveCamWork(proof.Machine, c.Cam, c.Play!.Value))
        : [];

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        var json = new JsonObject
        {
            ["name"] = Name,
            ["on"] = cam.On,
            ["kind"] = Word,
            ["clearanceMm"] = ResultJson.Number(cam.Return!.Clearance),
            ["minPlayMm"] = ResultJson.Number(play.Least),
            ["maxPlayMm"] = ResultJson.Number(play.Most),
            ["maxPlayAtCrankDeg"] = ResultJson.Number(Proof.Deg(play.MostAt)),
        };
        foreach (var (key, value) in cam.Return switch
        {
            GrooveWall w => [("discRadiusMm", w.DiscRadius), ("minWallRadiusMm", w.Profile.MinConcaveRadius), ("outlineErrorMm", w.Loop.Error)],
            SecondDisc s => [("baseRadiusMm", s.BaseRadius), ("maxPressureAngleDeg", Proof.Deg(s.Profile.MaxPressureAngle)), ("minConvexRadiusMm", s.Profile.MinConvexRadius), ("outlineErrorMm", s.Loop.Error)],
            YokeFace y => [("openingMm", y.Opening), ("breadthMinMm", y.Breadth.Least), ("breadthMaxMm", y.Breadth.Most)],
            _ => ((string, double)[])[],
        })
        {
            json[key] = ResultJson.Number(value);
        }

        return json;
    }

    private double Half => (spec.Thickness ?? PlateParts.Thickness) / 2;

    // +1 where the hub of the cam stands ahead along the shaft, else -1.
    private int HubSide => spec.HubSide == "behind" ? -1 : 1;

    private Plate OnShaft(string name, Outline rim, double from, double to) =>
        new($"{Name} {name}", cam.Shaft, rim, Plate.On(Machine.Members[cam.Shaft].Joint), Math.Min(from, to), Math.Max(from, to)) { Note = $"{Word} on {cam.On}" };

    private Plate Rim(GrooveWall wall) => OnShaft("rim", Outline.Circle(Point2.Origin, wall.DiscRadius), cam.Station - Half, cam.Station + Half) with { Openings = [wall.Loop.AsCut] };

    private Plate Back(GrooveWall wall) =>
        OnShaft("back", Outline.Circle(Point2.Origin, wall.DiscRadius), cam.Station + HubSide * Half, cam.Station + HubSide * (Half + wall.Back)) with { Bore = cam.Bore };

    // Its hub stands away from the first disc, so that the lever can lie between the two.
    private Plate Second(SecondDisc second) => OnShaft("second cam", second.Loop.AsCut, second.Station - Half, second.Station + Half) with
    {
        Bore = cam.Bore,
        Hub = new(2 * cam.HubRadius, spec.HubLength, second.Station > cam.Station, spec.Grub),
    };

    // A frame round the disc, in its plane, its faces square to the first face's normal.
    private Plate Yoke(YokeFace yoke)
    {
        var face = (FlatFollower)cam.Follower;
        var (n, height) = face.Face(0);
        var most = cam.Outline.Segments.Max(s => Math.Max(s.Start.FromOrigin.Length, s.PointAt(0.5).FromOrigin.Length)) + Beside;
        var half = spec.Follower.Flat!.Value / 2;
        var (left, right) = (Math.Max(face.Middle + half, most), Math.Min(face.Middle - half, -most));
        Outline Frame(double more)
        {
            Point2 At(double along, double left) => Point2.Origin + along * n + left * n.Left;
            var (top, bottom) = (height + more, height - yoke.Opening - more);
            return Outline.Polygon([At(bottom, right - more), At(top, right - more), At(top, left + more), At(bottom, left + more)]);
        }

        return OnShaft("yoke", Frame(YokeWall), cam.Station - Half, cam.Station + Half) with { Member = cam.FollowerMember, Openings = [Frame(0)] };
    }
}
