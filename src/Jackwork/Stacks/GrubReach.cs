using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Stacks;

/// <summary>Tries, over the performance, whether the key of a grub screw gets straight to it.</summary>
/// <remarks>
/// The screw stands in the middle of its hub, in line with the timing mark: straight up as drawn, seen along the shaft. Its key
/// is a rod on that radius, from the hub outward by the key's long arm. What is fixed on the shaft (other grub
/// screws aside, which stand out by a hair at most) is in its way always or never; all else is tried every 5 degrees of the shaft, or a little less. Room to turn the key's short arm outside is not asked for.
/// </remarks>
internal sealed class GrubReach
{
    /// <summary>Largest turn of the shaft between two tries, rad.</summary>
    private const double Turn = Math.PI / 36;

    /// <summary>Share by which a whole number of steps may round to less.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Room round the key, mm (common practice, no source).</summary>
    private const double Room = 0.3;

    private readonly Proof proof;
    private readonly Dictionary<(Body Body, int Stride), Frame[]> known = [];

    public GrubReach(Proof proof)
    {
        this.proof = proof;
    }

    /// <summary>When the key of a hub reaches it.</summary>
    public GrubAccess Of(Stack stack, StackItem hub)
    {
        var (key, body) = (new KeyRod(stack.Axis, hub, Room), hub.Part.Body);
        var stride = Math.Clamp((int)(Turn * (1 + Rounding) / Pace(body.Member) / proof.Machine.Performance.Step), 1, proof.Machine.Performance.Steps);
        var step = stride * proof.Machine.Performance.Step;
        foreach (var part in proof.Assembly.Parts)
        {
            if (part.Body == body && !ReferenceEquals(part, hub.Part) && part.Kind != PartKind.Grub && key.Hits(part.Set, Frame.Identity))
            {
                return new(hub, [], step, part.Name);
            }
        }

        // What never comes near is left out, and what stands still beside what the key sweeps.
        var near = proof.Machine.Members[body.Member].Carrier == Member.Case ? key.Swept : (Bounds?)null;
        var others = proof.Assembly.Parts.Where((p, i) => p.Body != body
            && near?.Meets(proof.Sweep.Boxes[i]) != false
            && (p.Body.Member != stack.Carrier || key.Sweeps(p.Set))).ToArray();
        var kinds = others.Select(o => o.Body).Distinct().ToList();
        var which = Array.ConvertAll(others, o => kinds.IndexOf(o.Body));
        var (own, theirs) = (Frames(body, stride), kinds.ConvertAll(k => Frames(k, stride)));
        var (tries, frames) = (own.Length, new Frame[kinds.Count]);
        var blocked = new int[others.Length];
        var open = new bool[tries];
        var last = 0;
        for (var i = 0; i < tries; i++)
        {
            for (var k = 0; k < frames.Length; k++)
            {
                frames[k] = own[i].See(theirs[k][i]);
            }

            // What was in the way a moment ago mostly still is: the search begins with it.
            var hit = -1;
            for (var k = 0; k < others.Length && hit < 0; k++)
            {
                var at = (last + k) % others.Length;
                hit = key.Hits(others[at].Set, frames[which[at]]) ? at : -1;
            }

            open[i] = hit < 0;
            if (hit >= 0)
            {
                last = hit;
                blocked[hit]++;
            }
        }

        var most = blocked.Length == 0 ? 0 : Array.IndexOf(blocked, blocked.Max());
        return new(hub, Spans(open, step), step, blocked.Length > 0 && blocked[most] > 0 ? others[most].Name : null);
    }

    // Turns of a shaft for one of the crank; of one that swings, where it goes fastest.
    private double Pace(int member)
    {
        if (proof.Machine.Turns[member] is { } turns)
        {
            return Math.Abs(turns.Value);
        }

        var fastest = 0.0;
        foreach (ref readonly var q in proof.Motion.Of(member))
        {
            fastest = Math.Max(fastest, Math.Abs(q.First));
        }

        return fastest;
    }

    // The frames of a body at every so many steps of the performance.
    private Frame[] Frames(Body body, int stride)
    {
        if (!known.TryGetValue((body, stride), out var frames))
        {
            var path = proof.Sweep.Paths.Of(body, Member.Case);
            frames = new Frame[(proof.Sweep.Bodies.Steps + stride - 1) / stride];
            for (var i = 0; i < frames.Length; i++)
            {
                frames[i] = path.At(i * stride);
            }

            known.Add((body, stride), frames);
        }

        return frames;
    }

    private static List<(double, double)> Spans(bool[] open, double step)
    {
        var spans = new List<(double, double)>();
        for (var i = 0; i < open.Length; i++)
        {
            if (open[i] && (i == 0 || !open[i - 1]))
            {
                var end = Array.IndexOf(open, false, i);
                spans.Add((i * step, ((end < 0 ? open.Length : end) - 1) * step));
            }
        }

        return spans;
    }
}
