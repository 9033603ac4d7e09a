using System.Collections.Immutable;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The boards of the case, with their openings and with holes for the shafts and axles that cross them.</summary>
internal static class CaseParts
{
    /// <summary>Thickness of the boards unless given, mm.</summary>
    private const double Board = 9;

    /// <summary>The boards.</summary>
    public static IEnumerable<Part> Of(Machine machine, IReadOnlyList<Part> others)
    {
        if (machine.Design.Case is not { } spec)
        {
            yield break;
        }

        var t = spec.Board ?? Board;
        var material = Material.Named(spec.Material ?? "birch-plywood");
        foreach (var side in Boards(spec))
        {
            List<Outline> holes = [.. OpeningPlace.Cut(spec, side).Where(o => o.Fault is null).Select(o => o.Outline)];
            foreach (var rod in others.Where(p => p.Kind is PartKind.Shaft or PartKind.Axle or PartKind.Guide))
            {
                // A shaft that comes through an opening, or runs inside another, needs no hole of its own.
                if (side.Bearing(rod, t) is not { } bearing || holes.Any(h => Overlap(h, bearing)))
                {
                    continue;
                }

                var bush = rod.Kind == PartKind.Guide ? null : BushParts.For(machine, rod);
                var diameter = bush is null ? 0 : 2 * rod.Pieces[0].Radii[0];
                var middle = bearing.Segments[0].Centre;
                var wide = bush is null ? bearing : Outline.Circle(middle, BushParts.Outside(bush, diameter) / 2);
                if (bush is null || !BushParts.HasWall(bush, diameter) || !side.Holds(wide) || holes.Any(h => Overlap(h, wide)))
                {
                    holes.Add(bearing);
                    continue;
                }

                holes.Add(wide);
                yield return BushParts.Of($"{machine.NameOf(rod.Bears ?? rod.Body.Member)} bush {side.Name}", bush, side.Frame.Apply(new Point3(middle.X, middle.Y, 0)), side.Frame.Z, diameter, t);
            }

            var pieces = ConvexCut.PlateOrNull(side.Rim, holes, PlateParts.Sagitta, side.Frame, 0, t) ?? ConvexCut.Plate(side.Rim, [], PlateParts.Sagitta, side.Frame, 0, t);
            var area = side.Rim.SignedArea - holes.Sum(h => h.SignedArea);
            yield return new($"case {side.Name}", PartKind.Board, Body.Case, pieces, area * t, material) { Plates = [new(side.Rim, [.. holes], side.Frame, 0, t)] };
        }
    }

    /// <summary>The boards that there are.</summary>
    public static IEnumerable<BoardPlace> Boards(CaseSpec spec) =>
        BoardPlace.All(spec.Inside[0], spec.Inside[1], spec.Board ?? Board).Where(side => spec.Open?.Contains(side.Name) != true);

    private static bool Overlap(Outline a, Outline b)
    {
        var (p, q) = (a.Bounds(), b.Bounds());
        return p.Min.X < q.Max.X && q.Min.X < p.Max.X && p.Min.Y < q.Max.Y && q.Min.Y < p.Max.Y;
    }
}
