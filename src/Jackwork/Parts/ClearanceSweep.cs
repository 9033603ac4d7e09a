using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Least distance of every pair of parts that can meet, over the whole performance.</summary>
/// <remarks>
/// Boxes round all that each part sweeps over the performance tell which pairs can meet at all; <see cref="PairSearch"/> does the rest,
/// seen from the innermost member that carries both, so that what two parts do together costs nothing.
/// </remarks>
internal sealed class ClearanceSweep
{
    /// <summary>Distance beyond which a pair is not reported, mm.</summary>
    public const double Report = 2;

    /// <summary>Distance (mm) and sine within which two lines are one.</summary>
    private const double SameLine = 1e-6;

    /// <summary>Level of the stretches over which swept boxes are made: 2^3 steps.</summary>
    private const int BoxLevel = 3;

    private readonly Machine machine;
    private readonly Assembly assembly;
    private readonly BodyFrames bodies;
    private readonly Paths paths;
    private readonly double usual;
    private readonly double far;
    private readonly PairSearch search;

    private ClearanceSweep(Motion.Motion motion, Assembly assembly, double usual)
    {
        (machine, this.assembly, this.usual) = (motion.Machine, assembly, usual);
        far = Math.Max(Report, usual) + PairSearch.Margin;
        bodies = new(motion);
        paths = new(bodies, machine);
        search = new(bodies.Steps);
    }

    /// <summary>The pairs that come within <see cref="Report"/> of each other or below their clearance, nearest to their limit first.</summary>
    /// <param name="motion">The solved performance.</param>
    /// <param name="assembly">The parts.</param>
    /// <param name="usual">The clearance that a pair must keep, mm.</param>
    public static IReadOnlyList<Clearance> Of(Motion.Motion motion, Assembly assembly, double usual) =>
        new ClearanceSweep(motion, assembly, usual).All();

    private IReadOnlyList<Clearance> All()
    {
        var parts = assembly.Parts;
        var seen = new Body[parts.Count];
        var boxes = new (Bounds Swept, int Part)[parts.Count];
        for (var i = 0; i < parts.Count; i++)
        {
            seen[i] = SpinsInPlace(parts[i]) ? new(machine.Members[parts[i].Body.Member].Carrier) : parts[i].Body;
            boxes[i] = (Swept(parts[i], paths.Of(seen[i], Member.Case)), i);
        }

        // By their left ends: what begins beyond the right end of a part is passed over, with all after it.
        Array.Sort(boxes, (p, q) => p.Swept.Least.X.CompareTo(q.Swept.Least.X) is var c && c != 0 ? c : p.Part.CompareTo(q.Part));
        var found = new List<Clearance>();
        for (var i = 0; i < boxes.Length; i++)
        {
            var right = boxes[i].Swept.Most.X + far;
            for (var j = i + 1; j < boxes.Length && boxes[j].Swept.Least.X < right; j++)
            {
                var (a, b) = (Math.Min(boxes[i].Part, boxes[j].Part), Math.Max(boxes[i].Part, boxes[j].Part));
                if (Near(boxes[i].Swept, boxes[j].Swept, far)
                    && !assembly.Meant.Has(parts[a], parts[b])
                    && Pair(parts[a], seen[a], parts[b], seen[b]) is { } clearance)
                {
                    found.Add(clearance);
                }
            }
        }

        return [.. found.OrderBy(c => c.Min - c.Least).ThenBy(c => c.A.Name, StringComparer.Ordinal).ThenBy(c => c.B.Name, StringComparer.Ordinal)];
    }

    // A part that is round about the axis it turns on looks the same at every angle, and stands still on its carrier.
    private bool SpinsInPlace(Part part) =>
        part is { Body: { IsRod: false, Member: var m }, RoundAbout: { } line } && m != Member.Case
        && machine.Members[m].Joint is { Kind: JointKind.Pivot } j
        && j.Along.Cross(line.Along).Length < SameLine && (line.Through - j.Through).Across(j.Along).Length < SameLine;

    // The box round the part at the ends of short stretches, grown by what it bows out between them.
    private Bounds Swept(Part part, BodyPath path)
    {
        var box = part.Box;
        if (path.IsStill)
        {
            return box;
        }

        var mover = new Mover(part, path);
        var (middle, half) = (box.Middle, 0.5 * (box.Most - box.Least));
        var before = 0.0;
        Bounds? all = null;
        for (var k = 0; k << BoxLevel <= bodies.Steps + (1 << BoxLevel) - 1; k++)
        {
            // At each end of a stretch, grown by the larger bow on either side.
            var place = Math.Min(k << BoxLevel, bodies.Steps);
            var after = place < bodies.Steps ? mover.Bow(Stretch.At(BoxLevel, k, bodies.Steps)) : 0;
            var bow = Math.Max(before, after);
            before = after;
            var f = path.At(place);
            var c = f.Apply(middle);
            var reach = new Vec3(
                bow + Math.Abs(f.X.X) * half.X + Math.Abs(f.Y.X) * half.Y + Math.Abs(f.Z.X) * half.Z,
                bow + Math.Abs(f.X.Y) * half.X + Math.Abs(f.Y.Y) * half.Y + Math.Abs(f.Z.Y) * half.Z,
                bow + Math.Abs(f.X.Z) * half.X + Math.Abs(f.Y.Z) * half.Y + Math.Abs(f.Z.Z) * half.Z);
            var here = new Bounds(c + -1 * reach, c + reach);
            all = all?.Around(here) ?? here;
        }

        return all!.Value;
    }

    private static bool Near(in Bounds a, in Bounds b, double far) =>
        a.Least.Y < b.Most.Y + far && b.Least.Y < a.Most.Y + far && a.Least.Z < b.Most.Z + far && b.Least.Z < a.Most.Z + far;

    private Clearance? Pair(Part a, Body bodyA, Part b, Body bodyB)
    {
        var carrier = bodies.CommonCarrier(bodyA, bodyB);
        var (first, second) = (new Mover(a, paths.Of(bodyA, carrier)), new Mover(b, paths.Of(bodyB, carrier)));
        var floor = PlaneGap.Of(machine, a, b, carrier);
        var least = usual;
        if (floor > far || search.Least(first, second, far, floor) is not { } nearest)
        {
            return null;
        }

        var apart = nearest.Parts.Apart.In(first.At(nearest.Place));
        var below = apart.Signed >= least ? null : first.IsStill && second.IsStill ? 0 : search.First(first, second, least);
        var outside = bodies.At(new(carrier), nearest.Place);
        return new(
            a,
            b,
            apart.Signed,
            machine.Performance.At(nearest.Place),
            outside.Apply(apart.OnFirst),
            outside.Apply(apart.OnSecond),
            least,
            below is { } at ? machine.Performance.At(at) : null);
    }
}
