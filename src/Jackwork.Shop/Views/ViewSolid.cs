using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>An edge of a solid or a line of its silhouette, in view coordinates, mm.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="OnFace">Whether it bounds a flat face that the viewer sees.</param>
public readonly record struct ViewEdge(Point3 From, Point3 To, bool OnFace = false);

/// <summary>A solid as a view needs it, in view coordinates: x right, y up, z to the viewer, mm.</summary>
/// <remarks>
/// A point is hidden by the solid when some of the solid stands nearer to the viewer on the line through the point along z,
/// so the highest point of the solid on each such line, its top, is all that hiding needs.
/// </remarks>
internal abstract class ViewSolid
{
    /// <summary>Greatest distance of a straight piece of a round edge from the true edge, mm: less than a hundredth of a line's width.</summary>
    public const double Sagitta = 0.002;

    /// <summary>A direction whose component is smaller than this counts as at right angles: a micrometre in a kilometre.</summary>
    protected const double Square = 1e-9;

    /// <summary>The smallest box that holds the solid.</summary>
    public abstract Bounds Bounds { get; }

    /// <summary>Its sharp edges and its silhouette, each run of joined edges in order. Some may lie behind or inside the solid.</summary>
    public abstract IEnumerable<ViewEdge> Edges { get; }

    /// <summary>The greatest z of the solid on the line through x, y along z; minus infinity where the line misses it.</summary>
    public abstract double Top(double x, double y);

    /// <summary>Straight pieces for a full circle.</summary>
    protected internal static int Pieces(double radius) => Math.Max(12, (int)Math.Ceiling(Math.PI / Math.Acos(1 - Math.Min(0.5, Sagitta / radius))));
}
