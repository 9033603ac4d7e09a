using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Least distance of every pair of parts that can meet, over the whole performance.</summary>
/// <remarks>
/// With d the distance of a pair at a step and T the travel of both since the start (<see cref="Travel"/>), the pair can't be
/// nearer than d - (T(j) - T(i)) at step j: all steps up to where that falls to the least distance known are passed over
/// (conservative advancement: B. Mirtich, Impulse-based Dynamic Simulation of Rigid Body Systems, 1996, chapter 2). The least
/// place is then closed in between the steps, and the first fall below the limit by halving.
/// </remarks>
internal static class ClearanceSweep
{
    /// <summary>Distance beyond which a pair is not reported, mm.</summary>
    public const double Report = 2;

    /// <summary>How far beyond the least distance known a distance is still worked out exactly, mm, so that more steps can be passed over.</summary>
    private const double Reach = 15;

    /// <summary>Distance (mm) and sine within which two lines are one.</summary>
    private const double SameLine = 1e-6;

    /// <summary>Rounding of distances, mm.</summary>
    private const double Rounding = 1e-7;

    /// <summary>Width to which places between steps are closed in, steps.</summary>
    private const double Place = 1e-7;

    /// <summary>A part on its way: its body, pieces, box (where it stands still), frames at every step, and travel.</summary>
    private readonly record struct Mover(Part Part, Body Body, PieceSet Set, Bounds? Box, Frame[] Frames, double[]? Travel)
    {
        public Frame FrameAt(int step) => Frames.Length == 1 ? Frames[0] : Frames[step];
    }

    /// <summary>The pairs that come within <see cref="Report"/> of each other or below their clearance, nearest to their limit first.</summary>
    public static IReadOnlyList<Clearance> Of(Motion.Motion motion, Assembly assembly, double usual)
    {
        var machine = motion.Machine;
        var bodies = new BodyFrames(motion);
        var travel = new Travel(bodies);
        var movers = assembly.Parts.Select(p => Make(machine, p, travel)).ToArray();
        var found = new List<Clearance>();
        for (var a = 0; a < movers.Length; a++)
        {
            for (var b = a + 1; b < movers.Length; b++)
            {
                if (!assembly.Meant.Has(movers[a].Part, movers[b].Part)
                    && Pair(machine, bodies, movers[a], movers[b], usual) is { } clearance)
                {
                    found.Add(clearance);
                }
            }
        }

        return [.. found.OrderBy(c => c.Min - c.Least)];
    }

    private static Mover Make(Machine machine, Part part, Travel travel)
    {
        var set = new PieceSet(part.Pieces.AsSpan());
        var body = SpinsInPlace(machine, part) ? new(machine.Members[part.Body.Member].Carrier) : part.Body;
        return body == Body.Case
            ? new(part, body, set, set.BoundsIn(Frame.Identity), [Frame.Identity], null)
            : new(part, body, set, null, travel.Frames(body), travel.Of(body, set.Ball));
    }

    // A part that is round about the axis it turns on looks the same at every angle, and stands still on its carrier.
    private static bool SpinsInPlace(Machine machine, Part part) =>
        part is { Body: { IsRod: false, Member: var m }, RoundAbout: { } line } && m != Member.Case
        && machine.Members[m].Joint is { Kind: JointKind.Pivot } j
        && j.Along.Cross(line.Along).Length < SameLine && (line.Through - j.Through).Across(j.Along).Length < SameLine;

    private static Clearance? Pair(Machine machine, BodyFrames bodies, Mover a, Mover b, double least)
    {
        var steps = bodies.Steps;
        var still = a.Travel is null && b.Travel is null || a.Body == b.Body;
        var best = Math.Max(Report, least);
        PartSeparation? nearest = null;
        var at = 0;
        var floor = PlaneGap.Of(machine, a.Part, b.Part);
        for (var i = 0; i < (still ? 1 : steps) && best > floor + Rounding;)
        {
            var (fa, fb) = (a.FrameAt(i), b.FrameAt(i));
            var slack = QuickGap(a, fa, b, fb) - best;
            if (slack < Reach)
            {
                var reach = best + Reach;
                var d = PartDistance.Between(a.Set, fa, b.Set, fb, reach);
                var signed = d?.Apart.Signed ?? reach;
                slack = signed - best;
                if (signed < best)
                {
                    (best, nearest, at, slack) = (signed, d, i, 0);
                }
            }

            i = Next(a.Travel, b.Travel, i, slack, steps);
        }

        if (nearest is not { } n)
        {
            return null;
        }

        var place = still ? 0.0 : Closest(bodies, a, b, at);
        if (place != at)
        {
            n = Between(bodies, a, b, place) ?? n;
        }

        var first = n.Apart.Signed < least ? still ? 0 : FirstBelow(bodies, a, b, least, place) : null as double?;
        return new(a.Part, b.Part, n.Apart.Signed, machine.Performance.At(place < 0 ? place + steps : place), n.Apart.OnFirst, n.Apart.OnSecond, least, first is { } f ? machine.Performance.At(f) : null);
    }

    // A lower bound of the distance from balls, and from the boxes of what stands still: boards are badly held by balls.
    private static double QuickGap(in Mover a, in Frame fa, in Mover b, in Frame fb)
    {
        var (p, q) = (a.Set.Ball.In(fa), b.Set.Ball.In(fb));
        var gap = p.GapTo(q);
        if (b.Box is { } box)
        {
            gap = Math.Max(gap, ToBox(p, box));
        }

        return a.Box is { } other ? Math.Max(gap, ToBox(q, other)) : gap;
    }

    private static double ToBox(in Ball ball, in Bounds box)
    {
        var c = ball.Centre;
        var x = Math.Max(0, Math.Max(box.Least.X - c.X, c.X - box.Most.X));
        var y = Math.Max(0, Math.Max(box.Least.Y - c.Y, c.Y - box.Most.Y));
        var z = Math.Max(0, Math.Max(box.Least.Z - c.Z, c.Z - box.Most.Z));
        return Math.Sqrt(x * x + y * y + z * z) - ball.Radius;
    }

    // The first step at which the pair could have come nearer by more than the slack.
    private static int Next(double[]? a, double[]? b, int i, double slack, int steps)
    {
        if (slack <= 0)
        {
            return i + 1;
        }

        double T(int j) => (a?[j] ?? 0) + (b?[j] ?? 0);
        var limit = T(i) + slack;
        var (low, high) = (i + 1, steps);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = T(middle) <= limit ? (middle, high) : (low, middle - 1);
        }

        return low;
    }

    private static PartSeparation? Between(BodyFrames bodies, Mover a, Mover b, double place)
    {
        var p = place < 0 ? place + bodies.Steps : place;
        return PartDistance.Between(a.Set, bodies.At(a.Body, p), b.Set, bodies.At(b.Body, p), Report + Reach);
    }

    private static double Distance(BodyFrames bodies, Mover a, Mover b, double place) => Between(bodies, a, b, place)?.Apart.Signed ?? Report + Reach;

    // Golden section between the neighbours of the nearest step.
    private static double Closest(BodyFrames bodies, Mover a, Mover b, int at)
    {
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (low, high) = (at - 1.0, at + 1.0);
        var (x, y) = (high - golden * (high - low), low + golden * (high - low));
        var (fx, fy) = (Distance(bodies, a, b, x), Distance(bodies, a, b, y));
        for (var i = 0; i < 24; i++)
        {
            if (fx < fy)
            {
                (high, y, fy) = (y, x, fx);
                x = high - golden * (high - low);
                fx = Distance(bodies, a, b, x);
            }
            else
            {
                (low, x, fx) = (x, y, fy);
                y = low + golden * (high - low);
                fy = Distance(bodies, a, b, y);
            }
        }

        var middle = (low + high) / 2;
        return Distance(bodies, a, b, middle) < Distance(bodies, a, b, at) ? middle : at;
    }

    // The first place from the start at which the distance falls below the limit: stepping by the travel, then halving.
    private static double FirstBelow(BodyFrames bodies, Mover a, Mover b, double least, double worst)
    {
        var steps = bodies.Steps;
        var before = 0;
        for (var i = 0; i < steps;)
        {
            var d = Distance(bodies, a, b, i);
            if (d < least)
            {
                if (i == 0)
                {
                    return 0;
                }

                var (low, high) = ((double)before, (double)i);
                while (high - low > Place)
                {
                    var middle = (low + high) / 2;
                    (low, high) = Distance(bodies, a, b, middle) < least ? (low, middle) : (middle, high);
                }

                return high;
            }

            before = i;
            i = Next(a.Travel, b.Travel, i, d - least, steps);
        }

        // It dips below between two steps only.
        return worst;
    }
}
