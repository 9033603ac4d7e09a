using System.Collections.Immutable;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Drawings;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>A line of a view that is seen: part of an edge or silhouette.</summary>
/// <param name="Part">Index of the part it belongs to.</param>
/// <param name="Points">Two or more, mm.</param>
public sealed record ViewLine(int Part, ImmutableArray<Point2> Points);

/// <summary>The parts of a piece seen from one side at full size, hidden lines removed: x right, y up, mm.</summary>
public sealed class AssemblyView
{
    /// <summary>A shaft whose direction runs less than this across the view, as a share, is seen from its end.</summary>
    private const double EndOn = 0.01;

    private readonly ImmutableArray<(Part Part, Frame Frame)> parts;
    private readonly IReadOnlyList<HiddenLines.Placed> solids;
    private readonly HiddenLines hidden;

    private AssemblyView(ViewSide side, ImmutableArray<(Part Part, Frame Frame)> parts)
    {
        (Side, this.parts) = (side, parts);
        solids = [.. parts.SelectMany((p, i) => ViewSolids.Of(p.Part, p.Frame).Select(s => new HiddenLines.Placed(s, i, Stuff(i))))];
        var bounds = solids.Select(s => s.Solid.Bounds).Aggregate((a, b) => a.Around(b));
        Bounds = new(new(bounds.Least.X, bounds.Least.Y), new(bounds.Most.X, bounds.Most.Y));
        var across = side.Frame.Apply(bounds.Most - bounds.Least);
        Size = new(Math.Abs(across.X), Math.Abs(across.Y), Math.Abs(across.Z));
        hidden = new(solids);
        Lines = [.. LinesOf()];
    }

    /// <summary>From where it is seen.</summary>
    public ViewSide Side { get; }

    /// <summary>What is seen, no line over another.</summary>
    public ImmutableArray<ViewLine> Lines { get; }

    /// <summary>The smallest box about all parts, seen or not, mm; a round part may stand out by 0.002 mm more.</summary>
    public Box Bounds { get; }

    /// <summary>Width along x, height along y, depth along z of the box about all parts, mm.</summary>
    public Vec3 Size { get; }

    /// <summary>The parts, in the order of the assembly.</summary>
    public IEnumerable<Part> Parts => parts.Select(p => p.Part);

    /// <summary>The piece of a proved design.</summary>
    /// <param name="proof">What was worked out.</param>
    /// <param name="side">From where it is seen.</param>
    /// <param name="crank">Crank angle, rad; any.</param>
    public static AssemblyView Of(Proof proof, ViewSide side, double crank = 0)
    {
        var frames = new BodyFrames(proof.Motion);
        var performance = proof.Machine.Performance;
        var turned = crank - performance.Length * Math.Floor(crank / performance.Length);
        return Of(proof.Assembly.Parts, body => frames.At(body, turned / performance.Step), side);
    }

    /// <summary>Any parts.</summary>
    /// <param name="parts">At least one.</param>
    /// <param name="standing">Where each body stands.</param>
    /// <param name="side">From where they are seen.</param>
    public static AssemblyView Of(IReadOnlyList<Part> parts, Func<Body, Frame> standing, ViewSide side) =>
        new(side, [.. parts.Select(p => (p, side.Frame.See(standing(p.Body))))]);

    /// <summary>Index of the part that is seen at a point of the view; null where none is.</summary>
    public int? PartAt(Point2 p) => hidden.At(p) is { } seen ? solids[seen.Solid].Part : null;

    /// <summary>
    /// The axes of the shafts, from the first to the last place along each at which the shaft is seen, and its radius, mm; both places are the
    /// same where a shaft is seen from its end.
    /// </summary>
    public IEnumerable<(Point2 From, Point2 To, double Radius)> Axes()
    {
        foreach (var lines in Lines.GroupBy(l => l.Part).Where(g => parts[g.Key].Part.Kind == PartKind.Shaft))
        {
            var (part, frame) = parts[lines.Key];
            var piece = part.Pieces[0];
            var (middle, along) = (frame.Apply(default(Point3) + piece.Centres[0]), frame.Apply(piece.DiscAxis));
            var (foot, across) = (new Point2(middle.X, middle.Y), new Vec2(along.X, along.Y));
            if (across.Length < EndOn)
            {
                yield return (foot, foot, piece.Radii[0]);
                continue;
            }

            var places = lines.SelectMany(l => l.Points).Select(p => (p - foot).Dot(across.Unit())).ToList();
            yield return (foot + places.Min() * across.Unit(), foot + places.Max() * across.Unit(), piece.Radii[0]);
        }
    }

    // A part is one piece of stuff, and so are the bars of one lever, which are glued into one, and the lengths of one cord: the index of the first of them.
    private int Stuff(int part) => parts[part].Part switch
    {
        { Kind: PartKind.Lever, Body: var body } => parts.ToList().FindIndex(p => p.Part.Kind == PartKind.Lever && p.Part.Body == body),
        { Kind: PartKind.Cord, Body.Member: var driven } => parts.ToList().FindIndex(p => p.Part.Kind == PartKind.Cord && p.Part.Body.Member == driven),
        _ => part,
    };

    private IEnumerable<ViewLine> LinesOf()
    {
        var drawn = new LineSet();
        for (var s = 0; s < solids.Count; s++)
        {
            var runs = new LineRuns();
            foreach (var edge in solids[s].Solid.Edges)
            {
                var (a, b) = (new Point2(edge.From.X, edge.From.Y), new Point2(edge.To.X, edge.To.Y));
                foreach (var (from, to) in hidden.Seen(edge, s).SelectMany(t => drawn.Add(a + t.From * (b - a), a + t.To * (b - a))))
                {
                    runs.Add(from, to);
                }
            }

            foreach (var run in runs.Done())
            {
                yield return new(solids[s].Part, run);
            }
        }

        foreach (var (solid, from, to) in new Seams(hidden, solids).Of(Bounds).Where(m => !(drawn.IsOn(m.From) && drawn.IsOn(m.To))).ToList())
        {
            foreach (var line in drawn.Add(from, to))
            {
                yield return new(solids[solid].Part, [line.From, line.To]);
            }
        }
    }
}
