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
    private readonly ImmutableArray<(Part Part, Frame Frame)> parts;
    private readonly HiddenLines hidden;

    private AssemblyView(ViewSide side, ImmutableArray<(Part Part, Frame Frame)> parts)
    {
        (Side, this.parts) = (side, parts);
        List<HiddenLines.Placed> solids = [.. parts.SelectMany((p, i) => ViewSolids.Of(p.Part, p.Frame).Select(s => new HiddenLines.Placed(s, i, Joined(i))))];
        var bounds = solids.Select(s => s.Solid.Bounds).Aggregate((a, b) => a.Around(b));
        Bounds = new(new(bounds.Least.X, bounds.Least.Y), new(bounds.Most.X, bounds.Most.Y));
        var across = side.Frame.Apply(bounds.Most - bounds.Least);
        Size = new(Math.Abs(across.X), Math.Abs(across.Y), Math.Abs(across.Z));
        hidden = new(solids);
        Lines = [.. LinesOf(solids)];
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
    public int? PartAt(Point2 p) => hidden.PartAt(p.X, p.Y);

    /// <summary>The axes of the shafts of which something is seen: two ends each, the same point where a shaft is seen from its end, and its radius, mm.</summary>
    public IEnumerable<(Point2 From, Point2 To, double Radius)> Axes()
    {
        var seen = Lines.Select(l => l.Part).ToHashSet();
        foreach (var (part, frame) in parts.Where((p, i) => p.Part.Kind == PartKind.Shaft && seen.Contains(i)))
        {
            var piece = part.Pieces[0];
            var (from, to) = (frame.Apply(default(Point3) + piece.Centres[0]), frame.Apply(default(Point3) + piece.Centres[0] + piece.Sweep));
            yield return (new(from.X, from.Y), new(to.X, to.Y), piece.Radii[0]);
        }
    }

    // The bars of one lever are glued into one: no line is seen where their faces run on.
    private int Joined(int part) => parts[part].Part.Kind == PartKind.Lever
        ? parts.ToList().FindIndex(p => p.Part.Kind == PartKind.Lever && p.Part.Body == parts[part].Part.Body)
        : -1;

    private IEnumerable<ViewLine> LinesOf(List<HiddenLines.Placed> solids)
    {
        var drawn = new LineSet();
        for (var s = 0; s < solids.Count; s++)
        {
            var run = new List<Point2>();
            foreach (var edge in solids[s].Solid.Edges)
            {
                var (a, b) = (new Point2(edge.From.X, edge.From.Y), new Point2(edge.To.X, edge.To.Y));
                foreach (var (from, to) in hidden.Seen(edge, s).SelectMany(t => drawn.Add(a + t.From * (b - a), a + t.To * (b - a))))
                {
                    if (run.Count > 0 && run[^1] != from)
                    {
                        yield return new(solids[s].Part, [.. run]);
                        run.Clear();
                    }

                    if (run.Count == 0)
                    {
                        run.Add(from);
                    }

                    run.Add(to);
                }
            }

            if (run.Count > 0)
            {
                yield return new(solids[s].Part, [.. run]);
            }
        }
    }
}
