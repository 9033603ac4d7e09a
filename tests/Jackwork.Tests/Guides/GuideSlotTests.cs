using System.Diagnostics;
using System.Text.Json;
using CsCheck;
using Jackwork.Geometry;
using Jackwork.Guides;
using Xunit;

namespace Jackwork.Tests.Guides;

/// <summary>The developed slot of a guide.</summary>
public sealed class GuideSlotTests
{
    private const string Script = """
        import json, sys
        import numpy as np
        from shapely.geometry import LineString, Polygon
        answer = []
        for job in json.load(sys.stdin):
            swept = LineString(job['middle']).buffer(job['half'], 256)
            cut = Polygon(job['edge'])
            # Near the least radius the flattened wall may cross itself by less than its flats: that is cleaned away, and the area is held.
            whole = cut.buffer(0)
            answer.append([swept.area, cut.area, swept.symmetric_difference(whole).area, swept.boundary.hausdorff_distance(whole.boundary), int(whole.geom_type == 'Polygon')])
        json.dump(answer, sys.stdout)
        """;

    // The middle line in short chords and the buffer about it, by shapely, against the walls as they are drawn for cutting.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheEdgeIsWhatACutterOfTheSlotsWidthSweeps()
    {
        var slots = new List<GuideSlot>();
        Gen.Select(RandomTracks.Any, Gen.Double[0.5, 3]).Where((t, w) => Plain(new(t, w))).Sample(
            (track, width) =>
            {
                lock (slots)
                {
                    slots.Add(new(track, width));
                }
            },
            iter: 200);
        slots.Add(new(new(8, [new(0, 20, 0), new(Math.PI / 2, 0, 4)]), 3.15));
        slots.Add(new(new(8, [new(0, 20, 0), new(-Math.PI / 2, 0, 0), new(0, -6, 0)]), 3.15));
        foreach (var (slot, a) in slots.Zip(Shapely(slots)))
        {
            var told = $"width {slot.Width:R}, radius {slot.Track.Radius:R}, legs {string.Join(" ", slot.Track.Legs.Select(l => $"({l.Turn:R}, {l.Lift:R}, {l.Rounding:R})"))}";
            Assert.True(a[4] == 1, $"the edge is in pieces: {told}");
            Assert.True(a[3] < 0.006, $"an edge is {a[3]} mm off: {told}");
            Assert.True(a[2] < 0.004 * a[0] / slot.Half, $"{a[2]} mm2 of {a[0]}: {told}");
            Assert.Equal(a[1], slot.Outline().SignedArea, 0.002 * a[1]);
        }
    }

    // A straight slot: w L and a circle of w at its ends.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AHelicalSlotIsAStraightOneOnThePattern() => Gen.Select(Gen.Double[3, 30], Gen.Double[0.5, 6], Gen.Double[2, 60], Gen.Double[0.5, 5]).Sample((radius, turn, lift, width) =>
    {
        var slot = new GuideSlot(new(radius, [new(turn, lift, 0)]), width);
        var length = Math.Sqrt(Math.Pow(radius * turn, 2) + lift * lift);
        Assert.Equal(width * length + Math.PI * width * width / 4, slot.Outline().SignedArea, 1e-9 * width * length + 1e-9);
        Assert.Equal(2 * length + Math.PI * width, slot.Outline().Length, 1e-9 * length + 1e-9);
        Assert.Equal(0, slot.Outline().Gap, 1e-9);
        Assert.Equal(2, slot.Drills.Length);
        Assert.True(slot.Drills[0].DistanceTo(Point2.Origin) < 1e-9 && slot.Drills[1].DistanceTo(new(radius * turn, lift)) < 1e-9);
        Assert.Equal(-width / 2, slot.Reach.From, 1e-9);
        Assert.Equal(lift + width / 2, slot.Reach.To, 1e-9);
    });

    // Turns of a helix of the pitch p stand p cos(atan(p/(2 pi R))) apart, square to the slot.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TurnsOfAHelixLeaveTheWallThatItsPitchGives() => Gen.Select(Gen.Double[4, 20], Gen.Double[1, 4], Gen.Double[0.5, 4], Gen.Double[1.3, 3]).Sample((radius, width, wall, turns) =>
    {
        var pitch = GuideSizing.LeastPitch(radius, width, wall);
        if (width + wall > 3 * radius)
        {
            return;
        }

        var slot = new GuideSlot(new(radius, [new(Math.Tau * turns, pitch * turns, 0)]), width);
        var near = slot.Nearest(3 * (width + wall));
        Assert.NotNull(near);
        Assert.Equal(wall, near.Value.Wall, 0.01);
        Assert.True(near.Value.Wall >= wall - 1e-9);
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void ASlotThatNearlyClosesARingIsTold()
    {
        // 340 degrees on a radius of 10: the ends are 20 degrees apart, 3.49 mm, less the width of 2.
        var slot = new GuideSlot(new(10, [new(340 * Math.PI / 180, 0, 0)]), 2);
        Assert.Equal(10 * 20 * Math.PI / 180 - 2, slot.Nearest(12)!.Value.Wall, 1e-9);
        Assert.True(new GuideSlot(new(10, [new(370 * Math.PI / 180, 0, 0)]), 2).Nearest(12)!.Value.Wall < 0);
        Assert.Null(new GuideSlot(new(10, [new(1, 0, 0)]), 2).Nearest(12));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void AJoinRounderThanHalfTheSlotIsTold()
    {
        GuideSlot Of(double rounding) => new(new(8, [new(0, 30, 0), new(3, 0, rounding)]), 3);
        Assert.Equal(1, Of(1.49).Undercut!.Value.Leg);
        Assert.Null(Of(1.51).Undercut);
        Assert.Null(Of(0).Undercut);
    }

    private static bool Plain(GuideSlot slot)
    {
        if (slot.Undercut is not null || slot.Track.Joins.Any(j => j.IsCorner && Room(slot, j) < slot.Half * Math.Tan(Math.Abs(j.Turn) / 2) + 0.1))
        {
            return false;
        }

        // One that runs into itself has no edge of its own; the pattern is not rolled up here, so turns don't meet.
        var t = slot.Track;
        var places = Enumerable.Range(0, 301).Select(i => (At: i * t.Length / 300, t.At(i * t.Length / 300 - t.Drawn).Place)).ToList();
        return places.All(a => places.All(b => b.At - a.At < 4 * slot.Width || (b.Place - a.Place).Length > slot.Width + 0.2));
    }

    private static double Room(GuideSlot slot, TrackJoin join)
    {
        var (before, after) = (slot.Track.Joins.Where(j => j.At < join.At).Select(j => j.At + Math.Max(j.Half, slot.Half * Math.Tan(Math.Abs(j.Turn) / 2))).DefaultIfEmpty(0).Max(), slot.Track.Joins.Where(j => j.At > join.At).Select(j => j.At - Math.Max(j.Half, slot.Half * Math.Tan(Math.Abs(j.Turn) / 2))).DefaultIfEmpty(slot.Track.Length).Min());
        return Math.Min(join.At - before, after - join.At);
    }

    private static double[][] Shapely(List<GuideSlot> slots)
    {
        static double[] P(Point2 p) => [p.X, p.Y];
        var jobs = slots.Select(s => new
        {
            half = s.Half,
            middle = Breaks(s.Track).Select(t => P(Point2.Origin + s.Track.At(t - s.Track.Drawn).Place)),
            edge = s.Outline().Flatten(0.0005).Select(P),
        });
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(Script);
        using var python = Process.Start(start)!;
        python.StandardInput.Write(JsonSerializer.Serialize(jobs));
        python.StandardInput.Close();
        var output = python.StandardOutput.ReadToEnd();
        python.WaitForExit();
        Assert.Equal(0, python.ExitCode);
        return JsonSerializer.Deserialize<double[][]>(output)!;
    }

    private static IEnumerable<double> Breaks(GuideTrack track) =>
        Enumerable.Range(0, 801).Select(i => i * track.Length / 800).Concat(track.Joins.Select(j => j.At)).Order();
}
