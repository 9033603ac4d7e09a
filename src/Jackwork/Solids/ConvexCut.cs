using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Cuts a plate with arcs and holes into convex polygons.</summary>
/// <remarks>
/// Arcs become straight lines on the side that never makes the solid smaller (see <see cref="PlateLoop"/>): tangents where the
/// solid bulges, chords where it is hollow, holes included. So a clearance found with the pieces is never greater than the true one,
/// and smaller by no more than the sagitta. The flattened plate is cut into triangles (<see cref="EarClipping"/>) and these
/// joined again (<see cref="ConvexMerge"/>).
/// </remarks>
public static class ConvexCut
{
    /// <summary>Convex polygons, counter-clockwise, that together cover the flattened plate exactly and do not overlap.</summary>
    /// <param name="outside">The plate's outside, either way round; must not cross itself.</param>
    /// <param name="holes">Its holes, either way round, within the outside and farther apart than the sagitta.</param>
    /// <param name="sagittaMm">Greatest distance between the true outline and the pieces, mm, above 0.</param>
    /// <exception cref="ArgumentException">The loops cross or touch themselves or each other, or a hole lies outside.</exception>
    public static ImmutableArray<ImmutableArray<Point2>> Of(Outline outside, IReadOnlyList<Outline> holes, double sagittaMm)
    {
        var (polygons, fault) = Try(outside, holes, sagittaMm);
        return fault is null ? polygons : throw new ArgumentException(fault, nameof(outside));
    }

    private static (ImmutableArray<ImmutableArray<Point2>> Polygons, string? Fault) Try(Outline outside, IReadOnlyList<Outline> holes, double sagittaMm)
    {
        ArgumentNullException.ThrowIfNull(outside);
        ArgumentNullException.ThrowIfNull(holes);
        if (!(sagittaMm > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(sagittaMm), sagittaMm, FormattableString.Invariant($"Sagitta is {sagittaMm} mm; allowed: above 0 mm."));
        }

        var points = new List<Point2>();
        List<int> Indexed(Outline loop, bool solidInside)
        {
            var first = points.Count;
            points.AddRange(PlateLoop.Of(loop, solidInside, sagittaMm));
            return [.. Enumerable.Range(first, points.Count - first)];
        }

        var rim = Indexed(outside, true);
        List<List<int>> inner = [.. holes.Select(h => Indexed(h, false))];
        if (LoopFault.Of(points, rim, inner) is { } fault)
        {
            return ([], FormattableString.Invariant($"{fault} The outline is flattened to {sagittaMm} mm."));
        }

        return EarClipping.Cut(points, rim, inner) is { } triangles
            ? ([.. ConvexMerge.Join(points, triangles).Select(p => p.Select(i => points[i]).ToImmutableArray())], null)
            : ([], FormattableString.Invariant($"The outline of {outside.Segments.Length} segments, flattened to {sagittaMm} mm, touches itself or a hole."));
    }

    /// <summary>The plate's pieces as prisms; null where the outline is no plate's: its loops cross or touch themselves or each other, or a hole lies outside.</summary>
    /// <param name="outside">As for <see cref="Of"/>.</param>
    /// <param name="holes">As for <see cref="Of"/>.</param>
    /// <param name="sagittaMm">As for <see cref="Of"/>.</param>
    /// <param name="frame">The outline lies in the frame's x-y plane.</param>
    /// <param name="bottom">Lower face, mm along the frame's z.</param>
    /// <param name="top">Upper face, mm along the frame's z.</param>
    public static ImmutableArray<ConvexPiece>? PlateOrNull(
        Outline outside, IReadOnlyList<Outline> holes, double sagittaMm, in Frame frame, double bottom, double top) =>
        Try(outside, holes, sagittaMm) is { Fault: null, Polygons: var polygons } ? Prisms(polygons, frame, bottom, top) : null;

    /// <summary>The plate's pieces as prisms.</summary>
    /// <param name="outside">As for <see cref="Of"/>.</param>
    /// <param name="holes">As for <see cref="Of"/>.</param>
    /// <param name="sagittaMm">As for <see cref="Of"/>.</param>
    /// <param name="frame">The outline lies in the frame's x-y plane.</param>
    /// <param name="bottom">Lower face, mm along the frame's z.</param>
    /// <param name="top">Upper face, mm along the frame's z.</param>
    public static ImmutableArray<ConvexPiece> Plate(
        Outline outside, IReadOnlyList<Outline> holes, double sagittaMm, in Frame frame, double bottom, double top)
    {
        return Prisms(Of(outside, holes, sagittaMm), frame, bottom, top);
    }

    private static ImmutableArray<ConvexPiece> Prisms(ImmutableArray<ImmutableArray<Point2>> polygons, in Frame frame, double bottom, double top)
    {
        var pieces = ImmutableArray.CreateBuilder<ConvexPiece>();
        foreach (var polygon in polygons)
        {
            pieces.Add(ConvexPiece.Prism(frame, polygon.AsSpan(), bottom, top));
        }

        return pieces.ToImmutable();
    }
}
