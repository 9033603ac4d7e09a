using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Guides;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The slotted sleeve of a guide.</summary>
/// <remarks>
/// The developed sleeve with its slot is cut into convex polygons, these into strips as wide as a flat face, and each bent round the axis: outside
/// faces touch the cylinder from outside, inside ones the bore from within the wall; the walls of the slot run towards
/// the axis, so that it narrows inwards, where a cutter would leave it as wide as outside: only the pin comes there, which the guide's own checks judge. A slot that goes round more than once, or
/// leaves the sleeve, is not cut out of the solid: it is then a plain tube, never smaller than the true one.
/// </remarks>
/// <param name="Joint">The guide.</param>
/// <param name="Reach">Where the sleeve begins and ends along the axis, mm.</param>
/// <param name="Outside">Outside diameter, mm.</param>
/// <param name="Bore">Bore, mm.</param>
/// <param name="Slot">The slot.</param>
/// <param name="PinAt">Where the slot's y = 0 lies along the axis, mm.</param>
/// <param name="Towards">Direction of its x = 0 from the axis.</param>
internal readonly record struct SleeveSolid(Joint Joint, (double From, double To) Reach, double Outside, double Bore, GuideSlot Slot, double PinAt, Vec3 Towards)
{
    /// <summary>Flat faces round the sleeve.</summary>
    private const int Faces = 32;

    /// <summary>Room kept between the slot and the edges of the developed sleeve for it to be cut, mm.</summary>
    private const double Room = 0.05;

    /// <summary>A part of this shape.</summary>
    public Part Part(string name, Body body, Material material)
    {
        var tube = new TubeSolid(Station.At(Joint, Reach.From), Station.At(Joint, Reach.To), Outside, Bore);
        var slot = Slot.Outline();
        var (min, max) = slot.Bounds();
        var (bottom, top, round) = (Reach.From - PinAt, Reach.To - PinAt, Math.PI * Outside);
        var left = (min.X + max.X - round) / 2;
        var sheet = Outline.Polygon([new(left, bottom), new(left + round, bottom), new(left + round, top), new(left, top)]);
        var fits = min.X > left + Room && min.Y > bottom + Room && max.Y < top - Room;
        if (!fits || ConvexCut.PlateOrNull(sheet, [slot], PlateParts.Sagitta, Frame.Identity, 0, 1) is null)
        {
            return tube.Part(name, PartKind.Guide, body, material) with { RunsOn = tube.Line };
        }

        var cut = slot.SignedArea * (Outside - Bore) / 2 * (Outside + Bore) / (2 * Outside);
        return new(name, PartKind.Guide, body, Pieces(ConvexCut.Of(sheet, [slot], PlateParts.Sagitta), left), tube.Volume - cut, material) { RoundAbout = tube.Line, RunsOn = tube.Line };
    }

    private ImmutableArray<ConvexPiece> Pieces(ImmutableArray<ImmutableArray<Point2>> polygons, double left)
    {
        var pieces = ImmutableArray.CreateBuilder<ConvexPiece>();
        var face = Math.PI * Outside / Faces;
        foreach (var polygon in polygons)
        {
            var (first, last) = ((int)Math.Floor((polygon.Min(p => p.X) - left) / face), (int)Math.Ceiling((polygon.Max(p => p.X) - left) / face));
            for (var i = first; i < last; i++)
            {
                var (from, to) = (left + i * face, left + (i + 1) * face);
                var strip = Above(Above(polygon, p => p.X - from), p => to - p.X);
                if (strip.Count > 2 && strip.Max(p => p.X) - strip.Min(p => p.X) > Sliver && strip.Max(p => p.Y) - strip.Min(p => p.Y) > Sliver)
                {
                    pieces.Add(Bent(strip, (from + to) / 2));
                }
            }
        }

        return pieces.ToImmutable();
    }

    /// <summary>Breadth below which a piece is rounding, mm.</summary>
    private const double Sliver = 1e-6;

    private ConvexPiece Bent(List<Point2> strip, double middle)
    {
        var radius = Outside / 2;
        var inner = Bore / 2 * Math.Cos(Math.PI / Faces);
        var (sin, cos) = Math.SinCos(middle / radius);
        var outward = cos * Towards + sin * Joint.Along.Cross(Towards);
        var beside = Joint.Along.Cross(outward);
        var points = new List<Point3>(2 * strip.Count);
        foreach (var p in strip)
        {
            var tan = Math.Tan((p.X - middle) / radius);
            var foot = Station.At(Joint, PinAt + p.Y);
            points.Add(foot + radius * (outward + tan * beside));
            points.Add(foot + inner * (outward + tan * beside));
        }

        return ConvexPiece.Hull([.. points]);
    }

    // The part of a convex polygon where a linear function is not below zero.
    private static List<Point2> Above(IReadOnlyList<Point2> polygon, Func<Point2, double> f)
    {
        var kept = new List<Point2>();
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            var (fa, fb) = (f(a), f(b));
            if (fa >= 0)
            {
                kept.Add(a);
            }

            if (fa > 0 && fb < 0 || fa < 0 && fb > 0)
            {
                kept.Add(a + fa / (fa - fb) * (b - a));
            }
        }

        return kept;
    }
}
