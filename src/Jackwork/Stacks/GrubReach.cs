using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Stacks;

/// <summary>Tries, over the performance, whether the key of a grub screw gets straight to it.</summary>
/// <remarks>
/// The screw stands in the middle of its hub, in line with the timing mark: straight up as drawn, seen along the shaft. Its key
/// is a rod on that radius, from the hub outward by the key's long arm. What is fixed on the shaft is in its way always or
/// never; all else is tried every 5 degrees of the shaft. Room to turn the key's short arm outside is not asked for.
/// </remarks>
internal sealed class GrubReach
{
    /// <summary>Turn of the shaft between two tries, rad.</summary>
    private const double Turn = Math.PI / 36;

    /// <summary>Room round the key, mm, and from the hub's surface to where the way is first looked at (common practice, no source).</summary>
    private const double Room = 0.3, Clear = 0.5;

    private readonly Proof proof;
    private readonly BodyFrames bodies;
    private readonly (Part Part, PieceSet Set)[] parts;

    public GrubReach(Proof proof)
    {
        this.proof = proof;
        bodies = new(proof.Motion);
        parts = [.. proof.Assembly.Parts.Select(p => (p, new PieceSet(p.Pieces.AsSpan())))];
    }

    /// <summary>When the key of a hub reaches it.</summary>
    public GrubAccess Of(Stack stack, StackItem hub)
    {
        var (key, body) = (Key(stack.Axis, hub), hub.Part.Body);
        var turns = Math.Abs(proof.Machine.Turns[body.Member]!.Value.Value);
        var tries = Math.Max(1, (int)Math.Round(proof.Machine.Performance.Length * turns / Turn));
        var step = proof.Machine.Performance.Length / tries;
        foreach (var (part, set) in parts)
        {
            if (part.Body == body && part != hub.Part && IsHit(key, set, Frame.Identity))
            {
                return new(hub, [], step, part.Name);
            }
        }

        var others = parts.Where(p => p.Part.Body != body).ToArray();
        var blocked = new Dictionary<string, int>();
        var open = new bool[tries];
        var last = 0;
        for (var i = 0; i < tries; i++)
        {
            var place = (double)i * bodies.Steps / tries;
            var frames = new Dictionary<Body, Frame>();
            Frame At(Body b) => frames.TryGetValue(b, out var f) ? f : frames[b] = bodies.At(b, place);
            var own = At(body);

            // What was in the way a moment ago mostly still is.
            var hit = Array.FindIndex(others, last, 1, p => IsHit(key, p.Set, own.See(At(p.Part.Body))));
            hit = hit >= 0 ? hit : Array.FindIndex(others, p => IsHit(key, p.Set, own.See(At(p.Part.Body))));
            open[i] = hit < 0;
            if (hit >= 0)
            {
                last = hit;
                blocked[others[hit].Part.Name] = blocked.GetValueOrDefault(others[hit].Part.Name) + 1;
            }
        }

        return new(hub, Spans(open, step), step, blocked.Count > 0 ? blocked.MaxBy(b => b.Value).Key : null);
    }

    private static PieceSet Key(Joint axis, StackItem hub)
    {
        var size = hub.Grub!;
        var foot = Station.At(axis, hub.Middle);
        var (up, radius) = (axis.Along.AnyPerpendicular(), size.KeyRadius + Room);
        var surface = hub.Outside / 2;
        return new(ConvexPiece.Capsule(foot + (surface + Clear + radius) * up, foot + (surface + size.Reach - radius) * up, radius));
    }

    private static bool IsHit(PieceSet key, PieceSet part, in Frame partInKey) =>
        key.Ball.GapTo(part.Ball.In(partInKey)) <= 0 && PartDistance.Between(key, part, partInKey, double.Epsilon) is { Apart.Signed: <= 0 };

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
