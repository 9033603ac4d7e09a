using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>The samples of a cam in order round it, counter-clockwise, without the stretches that undercut removes.</summary>
/// <remarks>
/// A sample falls away where it lies inside the follower at some other position. Where a stretch has fallen away, the
/// two branches that are left cross; the crossing of their circles of curvature, exact to the third order of the
/// spacing, is put in once for each branch, and the outline has its corner there.
/// </remarks>
internal sealed class TrueEnvelope
{
    /// <summary>How far (mm) an outline point may lie inside the follower at a neighbouring position before it counts as cut away; rounding only.</summary>
    private const double Inside = 1e-6;

    /// <summary>Crank angle by which a sample may miss a corner of the chart and still be at it, rad: rounding of the angles, worth well under 1e-6 mm.</summary>
    private const double AtCorner = 1e-8;

    /// <summary>Arcs that the roller's rim is put in by at a corner.</summary>
    private const int RimParts = 8;

    private const int None = -1;

    /// <summary>Fewest samples that still make an outline.</summary>
    private const int FewestKept = 3;

    private readonly Follower follower;
    private readonly List<Place> all = [];
    private readonly bool[] stands;

    private TrueEnvelope(CamDefinition cam)
    {
        follower = cam.Follower;
        stands = new bool[cam.Profile.Samples.Length];
        Collect(cam);
        if (cam.Turn.Sense > 0)
        {
            all.Reverse();
        }

        var kept = cam.Profile.IsUndercut || cam.HasCorners ? Kept() : Enumerable.Repeat(true, all.Count).ToArray();
        Samples = Join(kept);
        for (var i = 0; i < all.Count; i++)
        {
            if (all[i].Step != None)
            {
                stands[all[i].Step] = kept[i];
            }
        }
    }

    // A sample, its step, or None for one that was put in at a corner, and whether it is known to fall away.
    private readonly record struct Place(CamSample Sample, int Step, bool Falls = false);

    /// <summary>The samples round the cam; a loop that undercut leaves nothing of comes back as it was asked for.</summary>
    public IReadOnlyList<CamSample> Samples { get; }

    /// <summary>The envelope of a cam's follower.</summary>
    public static TrueEnvelope Of(CamDefinition cam) => new(cam);

    /// <summary>Whether the samples of a step and of the next both stand in the outline.</summary>
    public bool StandsFrom(int step) => stands[step] && stands[step + 1];

    // At a corner of the chart, where the speed jumps, both sides' samples are put in, and between them the roller's rim.
    private void Collect(CamDefinition cam)
    {
        var performance = cam.Motion.Machine.Performance;
        var samples = cam.Profile.Samples;
        var step = 0;
        foreach (var (crank, drop) in cam.Corners.Select(c => (Crank: c, Drop: (DropFace?)null)).Concat(cam.Profile.Drops.Select(d => (Crank: d.Fall.From, Drop: (DropFace?)d))).OrderBy(c => c.Crank))
        {
            for (; step < samples.Length && performance.At(step) < crank - AtCorner; step++)
            {
                Add(cam, step);
            }

            var isAtStep = step < samples.Length && performance.At(step) < crank + AtCorner;
            if (drop is null)
            {
                AddCorner(cam, crank, isAtStep ? step++ : None);
            }
            else
            {
                all.AddRange(drop.Samples().Select(s => new Place(s, None)));
                step += isAtStep ? 1 : 0;
            }
        }

        for (; step < samples.Length; step++)
        {
            Add(cam, step);
        }
    }

    // What rides over a tip is put in with the face below it.
    private void Add(CamDefinition cam, int step)
    {
        if (!cam.Profile.IsOnTip(step))
        {
            all.Add(new(cam.Profile.Samples[step], step));
        }
    }

    private void AddCorner(CamDefinition cam, double crank, int step)
    {
        var probe = cam.Motion.Probe();
        probe.Go(crank, before: true);
        var before = follower.Sample(probe.States[cam.Drive.Driven].Q, probe.States[cam.Drive.Driver].Q);
        probe.Go(crank + AtCorner);
        var after = follower.Sample(probe.States[cam.Drive.Driven].Q, probe.States[cam.Drive.Driver].Q);
        var sense = cam.Turn.Sense;
        if (follower is not RollerFollower { Radius: var r })
        {
            // A face leaps along the outline: forward round the cam it leaves a straight edge, backward it cuts both ends away.
            var leaps = -sense * (after.Point - before.Point).Dot(before.Tangent);
            var edge = before with { Radius = double.PositiveInfinity, PitchRadius = double.PositiveInfinity };
            AddCorner(before, leaps < 0 ? [] : [edge, edge with { Point = after.Point }], after, step);
            return;
        }

        // A roller turns about its centre: where the pitch curve turns inward its rim bridges the two sides by an arc,
        // where it turns outward each side cuts the other's end away; on the outside of its band (r < 0) the other way about.
        var sweep = Math.Atan2(before.Normal.Cross(after.Normal), before.Normal.Dot(after.Normal));
        var rim = before with { Radius = -r, PitchRadius = 0 };
        AddCorner(before, sweep * sense * r < 0 ? [] : [.. Enumerable.Range(0, RimParts).Select(i => Along(rim, -i * r * sweep / RimParts)), after with { Radius = -r, PitchRadius = 0 }], after, step);
    }

    // The piece between the two sides repeats their points, so that it is drawn as one; without it both sides fall away.
    private void AddCorner(in CamSample before, CamSample[] piece, in CamSample after, int step)
    {
        all.Add(new(before, None, piece.Length == 0));
        all.AddRange(piece.Select(s => new Place(s, None)));
        all.Add(new(after, step, piece.Length == 0));
    }

    private bool[] Kept()
    {
        var farthest = all.Max(s => s.Sample.Point.FromOrigin.Length);
        var move = 0.0;
        for (var i = 0; i < all.Count; i++)
        {
            move = Math.Max(move, Change(all[i].Sample, all[(i + 1) % all.Count].Sample, farthest));
        }

        var kept = Enumerable.Range(0, all.Count).Select(i => !all[i].Falls && !IsCutAway(i, move)).ToArray();
        return kept.Count(k => k) >= FewestKept ? kept : [.. kept.Select(_ => true)];
    }

    // How deep a point lies inside the follower at the position of a sample, mm.
    private double Depth(in CamSample s, Point2 p) => follower is RollerFollower { Radius: var r }
        ? Math.Abs(r) - p.DistanceTo(s.Point + r * s.Normal)
        : (p - s.Point).Dot(s.Normal);

    // The most by which the depth of any point of the cam changes from one position to the next, mm.
    private double Change(in CamSample a, in CamSample b, double farthest) => follower is RollerFollower { Radius: var r }
        ? (a.Point + r * a.Normal).DistanceTo(b.Point + r * b.Normal)
        : Math.Abs(a.Point.FromOrigin.Dot(a.Normal) - b.Point.FromOrigin.Dot(b.Normal)) + farthest * (a.Normal - b.Normal).Length;

    private bool IsCutAway(int i, double move)
    {
        var p = all[i].Sample.Point;
        for (var k = 1; k < all.Count;)
        {
            var depth = Depth(all[(i + k) % all.Count].Sample, p);
            if (depth > Inside)
            {
                return true;
            }

            // No position nearer than this many steps can reach the point.
            k += Math.Max(1, (int)(-depth / move));
        }

        return false;
    }

    // The kept samples with the crossings between them.
    private List<CamSample> Join(bool[] kept)
    {
        var crossings = new Dictionary<int, (CamSample, CamSample)>();
        foreach (var (last, first) in Gaps(kept))
        {
            AddCrossing(last, first, kept, crossings);
        }

        var list = new List<CamSample>(all.Count);
        for (var i = 0; i < all.Count; i++)
        {
            if (kept[i])
            {
                list.Add(all[i].Sample);
            }

            if (crossings.TryGetValue(i, out var crossing))
            {
                list.AddRange([crossing.Item1, crossing.Item2]);
            }
        }

        return list;
    }

    // The positions tried lie a step apart, so that a place just past the crossing may have been kept; it falls away here.
    private void AddCrossing(int last, int first, bool[] kept, Dictionary<int, (CamSample, CamSample)> crossings)
    {
        while (kept[last] && kept[first] && Crossing(all[last].Sample, all[first].Sample) is var (s, t))
        {
            if (s >= 0 && t <= 0)
            {
                var a = Along(all[last].Sample, s);
                crossings[last] = (a, Along(all[first].Sample, t) with { Point = a.Point });
                return;
            }

            if (s < 0)
            {
                kept[last] = false;
                last = (last + all.Count - 1) % all.Count;
            }

            if (t > 0)
            {
                kept[first] = false;
                first = (first + 1) % all.Count;
            }
        }
    }

    // The last kept place before each stretch that has fallen away, and the first after it.
    private static List<(int Last, int First)> Gaps(bool[] kept)
    {
        var list = new List<(int, int)>();
        var n = kept.Length;
        for (var last = 0; last < n; last++)
        {
            if (kept[last] && !kept[(last + 1) % n])
            {
                var first = last + 2;
                while (!kept[first % n])
                {
                    first++;
                }

                list.Add((last, first % n));
            }
        }

        return list;
    }

    // Lengths along the circles of curvature from a and b to where they cross (Newton's method); null where they don't, near by.
    private static (double S, double T)? Crossing(in CamSample a, in CamSample b)
    {
        const int tries = 20;
        var near = 2 * a.Point.DistanceTo(b.Point) + Inside;
        var (s, t) = (0.0, 0.0);
        for (var i = 0; i < tries; i++)
        {
            var (x, y) = (Along(a, s), Along(b, t));
            var off = x.Point - y.Point;
            if (off.Length < Inside / 1000)
            {
                return (s, t);
            }

            var across = x.Tangent.Cross(y.Tangent);
            s -= off.Cross(y.Tangent) / across;
            t -= off.Cross(x.Tangent) / across;
            if (!(Math.Abs(s) < near && Math.Abs(t) < near))
            {
                return null;
            }
        }

        return null;
    }

    // The sample a length s along the circle of curvature, counter-clockwise.
    private static CamSample Along(in CamSample a, double s)
    {
        const double straight = 1e6;
        var r = a.Radius;
        if (!(Math.Abs(r) < straight))
        {
            return a with { Point = a.Point + s * a.Tangent };
        }

        var n = a.Normal.Turned(s / r);
        return a with { Point = a.Point + r * (n - a.Normal), Normal = n };
    }
}
