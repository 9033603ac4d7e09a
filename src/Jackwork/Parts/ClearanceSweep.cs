using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Least distance of every pair of parts that can meet, over the whole performance.</summary>
/// <remarks>
/// The boxes that the parts never leave tell which pairs can meet at all; <see cref="PairSearch"/> does the rest,
/// seen from the innermost member that carries both, so that what two parts do together costs nothing.
/// </remarks>
internal sealed class ClearanceSweep(Machine machine, Sweep sweep, Assembly assembly, double usual)
{
    /// <summary>Distance beyond which a pair is not reported, mm.</summary>
    public const double Report = 1;

    private readonly PairSearch search = new(sweep.Bodies.Steps);
    private readonly double far = Math.Max(Report, Math.Max(usual, (machine.Design.Apart ?? []).Max(a => (double?)a.Least) ?? 0)) + PairSearch.Margin;

    /// <summary>The pairs that come within <see cref="Report"/> of each other or below their clearance, nearest to their limit first.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="sweep">Its parts in their motion.</param>
    /// <param name="assembly">The parts.</param>
    /// <param name="usual">The clearance that a pair must keep, mm.</param>
    public static IReadOnlyList<Clearance> Of(Machine machine, Sweep sweep, Assembly assembly, double usual) =>
        new ClearanceSweep(machine, sweep, assembly, usual).All();

    private IReadOnlyList<Clearance> All()
    {
        // By their left ends: what begins beyond the right end of a part is passed over, with all after it.
        var boxes = sweep.Boxes.Select((box, part) => (Swept: box, Part: part)).OrderBy(b => b.Swept.Least.X).ToArray();
        var found = new List<Clearance>();
        for (var i = 0; i < boxes.Length; i++)
        {
            var right = boxes[i].Swept.Most.X + far;
            for (var j = i + 1; j < boxes.Length && boxes[j].Swept.Least.X < right; j++)
            {
                var (a, b) = (Math.Min(boxes[i].Part, boxes[j].Part), Math.Max(boxes[i].Part, boxes[j].Part));
                if (Near(boxes[i].Swept, boxes[j].Swept)
                    && assembly.Meant.Least(assembly.Parts[a], assembly.Parts[b], usual) is { } least
                    && Pair(a, b, least) is { } clearance)
                {
                    found.Add(clearance);
                }
            }
        }

        return [.. found.OrderBy(c => c.Min - c.Least).ThenBy(c => c.A.Name, StringComparer.Ordinal).ThenBy(c => c.B.Name, StringComparer.Ordinal)];
    }

    private bool Near(in Bounds a, in Bounds b) =>
        a.Least.Y < b.Most.Y + far && b.Least.Y < a.Most.Y + far && a.Least.Z < b.Most.Z + far && b.Least.Z < a.Most.Z + far;

    private Clearance? Pair(int i, int j, double least)
    {
        var (a, b) = (assembly.Parts[i], assembly.Parts[j]);
        var carrier = sweep.Bodies.CommonCarrier(sweep.Seen[i], sweep.Seen[j]);
        var (first, second) = (new Mover(a, sweep.Paths.Of(sweep.Seen[i], carrier)), new Mover(b, sweep.Paths.Of(sweep.Seen[j], carrier)));
        var floor = PlaneGap.Of(machine, a, b, carrier);

        // Of what is meant to touch only a depth is of interest.
        var bound = least < 0 ? least + PairSearch.Margin : far;
        var nearest = floor > bound ? null : search.Least(first, second, bound, floor);
        if (Within(first, a, second, b) && nearest is not { Parts.Apart.Signed: <= 0 })
        {
            // Within the mesh and never at its surface: as deep as the surface is far.
            var d = PartDistance.Between(a.Set, first.At(0), b.Set, second.At(0))!.Value.Apart;
            var out0 = sweep.Bodies.At(new(carrier), 0);
            return new(a, b, -d.Distance, 0, out0.Apply(d.OnFirst), out0.Apply(d.OnSecond), least, 0);
        }

        if (nearest is not { } n || (least < 0 && n.Parts.Apart.Signed >= least))
        {
            return null;
        }

        var apart = n.Parts.Apart.In(first.At(n.Place));
        var below = apart.Signed >= least ? null : first.IsStill && second.IsStill ? 0 : search.First(first, second, least);
        var outside = sweep.Bodies.At(new(carrier), n.Place);
        return new(
            a,
            b,
            apart.Signed,
            machine.Performance.At(n.Place),
            outside.Apply(apart.OnFirst),
            outside.Apply(apart.OnSecond),
            least,
            below is { } at ? machine.Performance.At(at) : null);
    }

    // Whether one of the two stands within the surface of a mesh at the start. Where they never touch, that holds for the whole performance.
    private static bool Within(in Mover first, Part a, in Mover second, Part b) =>
        (a.Mesh?.Contains(first.At(0).Undo(second.At(0).Apply(b.Set.Pieces[0].Ball.Centre))) ?? false)
        || (b.Mesh?.Contains(second.At(0).Undo(first.At(0).Apply(a.Set.Pieces[0].Ball.Centre))) ?? false);
}
