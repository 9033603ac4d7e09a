using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>A plate as it is made, before it is cut into convex pieces: an outline with holes, as thick as from bottom to top.</summary>
/// <param name="Rim">The outside, mm, in the frame's x-y plane.</param>
/// <param name="Holes">What is cut out of it.</param>
/// <param name="Frame">Where it stands in the part's coordinates.</param>
/// <param name="Bottom">Lower face, mm along the frame's z.</param>
/// <param name="Top">Upper face, mm along the frame's z, above <paramref name="Bottom"/>.</param>
public sealed record PlateShape(Outline Rim, ImmutableArray<Outline> Holes, Frame Frame, double Bottom, double Top)
{
    /// <summary>A disc or tube about a line, with a round bore.</summary>
    /// <param name="from">Middle of one face, mm.</param>
    /// <param name="to">Middle of the other, mm.</param>
    /// <param name="radius">Outer radius, mm.</param>
    /// <param name="bore">Diameter of the bore, mm.</param>
    public static PlateShape Ring(Point3 from, Point3 to, double radius, double bore) => new(
        Outline.Circle(Point2.Origin, radius), [Outline.Circle(Point2.Origin, bore / 2)], Frame.Along(from, (to - from).Unit()), 0, from.DistanceTo(to));
}
