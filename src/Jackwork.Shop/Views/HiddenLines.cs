using Jackwork.Geometry;

namespace Jackwork.Shop.Views;

/// <summary>Tells what of an edge is seen and what stands before it.</summary>
/// <remarks>
/// Along each edge a point is taken at least every <see cref="Step"/>; where two neighbours differ the change is closed in by
/// halving. What is thinner than a step in the view may be missed. A grid over the view leaves few solids to ask for each point.
/// </remarks>
internal sealed class HiddenLines
{
    /// <summary>Distance between the points that are tried, mm: about the width of a line.</summary>
    private const double Step = 0.25;

    /// <summary>Distance to which a change is closed in, mm.</summary>
    private const double Closeness = 0.001;

    /// <summary>How far a solid must stand before a point to hide it, mm, so that a face does not hide its own edges by rounding.</summary>
    private const double Skin = 0.001;

    /// <summary>How far inside a neighbour's face an edge must run to count as within that face, mm.</summary>
    private const double Within = 0.01;

    /// <summary>Steepest face, rise over run, within which an edge still counts as lying in it.</summary>
    private const double Steepest = 3;

    /// <summary>Size of a cell of the grid, mm.</summary>
    private const double Cell = 4;

    private readonly IReadOnlyList<Placed> solids;
    private readonly Dictionary<(int, int), List<int>> cells = [];

    /// <summary>Takes all solids of the view.</summary>
    public HiddenLines(IReadOnlyList<Placed> solids)
    {
        this.solids = solids;
        for (var s = 0; s < solids.Count; s++)
        {
            var box = solids[s].Solid.Bounds;
            for (var i = Index(box.Least.X); i <= Index(box.Most.X); i++)
            {
                for (var j = Index(box.Least.Y); j <= Index(box.Most.Y); j++)
                {
                    if (!cells.TryGetValue((i, j), out var here))
                    {
                        cells[(i, j)] = here = [];
                    }

                    here.Add(s);
                }
            }
        }

        // Nearest to the viewer first, so that a search ends early.
        foreach (var here in cells.Values)
        {
            here.Sort((a, b) => solids[b].Solid.Bounds.Most.Z.CompareTo(solids[a].Solid.Bounds.Most.Z) is var c && c != 0 ? c : a.CompareTo(b));
        }
    }

    /// <summary>A solid of a part.</summary>
    /// <param name="Solid">The solid.</param>
    /// <param name="Part">Index of its part.</param>
    /// <param name="Stuff">Solids with the same number are one piece of stuff: no line is seen where their faces run on.</param>
    public readonly record struct Placed(ViewSolid Solid, int Part, int Stuff);

    /// <summary>Index of the solid seen at a point of the view, and its z there; null where there is none.</summary>
    /// <remarks>Of faces that lie in one plane the one of the first solid counts.</remarks>
    public (int Solid, double Z)? At(Point2 p)
    {
        var (best, most) = (-1, double.NegativeInfinity);
        foreach (var s in Near(p.X, p.Y))
        {
            if (solids[s].Solid.Bounds.Most.Z < most - Skin)
            {
                break;
            }

            var top = solids[s].Solid.Top(p.X, p.Y);
            if (top > most + Skin || (top >= most - Skin && s < best))
            {
                (best, most) = (s, top);
            }
        }

        return best < 0 ? null : (best, most);
    }

    /// <summary>The stretches of an edge that are seen, as shares of its length from 0 to 1.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="owner">Index of the solid it belongs to.</param>
    public IEnumerable<(double From, double To)> Seen(ViewEdge edge, int owner)
    {
        var run = edge.To - edge.From;
        var length = Math.Sqrt(run.X * run.X + run.Y * run.Y);
        if (length < Closeness)
        {
            yield break;
        }

        bool SeenAt(double t) => !IsHidden(edge.From + t * run, owner, edge.OnFace);
        var n = (int)Math.Ceiling(length / Step);

        // The first and the last point stand just inside the ends, where other edges begin.
        double Place(int i) => i == 0 ? Closeness / length / 2 : i == n + 1 ? 1 - Closeness / length / 2 : (i - 0.5) / n;
        var (last, seen) = (Place(0), SeenAt(Place(0)));
        var from = 0.0;
        for (var i = 1; i <= n + 1; i++)
        {
            var (t, now) = (Place(i), SeenAt(Place(i)));
            if (now != seen)
            {
                var (a, b) = (last, t);
                while ((b - a) * length > Closeness)
                {
                    var middle = (a + b) / 2;
                    (a, b) = SeenAt(middle) == seen ? (middle, b) : (a, middle);
                }

                if (seen)
                {
                    yield return (from, (a + b) / 2);
                }

                from = (a + b) / 2;
            }

            (last, seen) = (t, now);
        }

        if (seen)
        {
            yield return (from, 1);
        }
    }

    private bool IsHidden(Point3 p, int owner, bool onFace)
    {
        foreach (var s in Near(p.X, p.Y))
        {
            var solid = solids[s].Solid;
            if (solid.Bounds.Most.Z < p.Z - Skin)
            {
                break;
            }

            if (solid.Top(p.X, p.Y) > p.Z + Skin)
            {
                return true;
            }

            if (onFace && s != owner && solids[s].Stuff == solids[owner].Stuff && IsWithin(solid, p))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsWithin(ViewSolid solid, Point3 p)
    {
        var least = p.Z - Steepest * Within;
        return solid.Top(p.X - Within, p.Y) > least && solid.Top(p.X + Within, p.Y) > least
            && solid.Top(p.X, p.Y - Within) > least && solid.Top(p.X, p.Y + Within) > least;
    }

    private List<int> Near(double x, double y) => cells.TryGetValue((Index(x), Index(y)), out var here) ? here : [];

    private static int Index(double mm) => (int)Math.Floor(mm / Cell);
}
