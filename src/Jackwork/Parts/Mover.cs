using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>A part on its way through the performance, seen from what carries both parts of a pair.</summary>
/// <param name="part">The part.</param>
/// <param name="path">The path of its body.</param>
internal readonly struct Mover(Part part, BodyPath path)
{
    /// <summary>The part's pieces.</summary>
    public PieceSet Set { get; } = part.Set;

    /// <summary>The box round the part, along its body's axes as drawn.</summary>
    public ConvexPiece Shell { get; } = part.Set.Shell;

    /// <summary>See <see cref="BodyPath.Reach"/>, mm.</summary>
    public double Reach { get; } = path.Reach(part.Set.Ball);

    /// <summary>Whether it stands still.</summary>
    public bool IsStill => path.IsStill;

    /// <summary>Its frame at a place, steps.</summary>
    public Frame At(double place) => path.At(place);

    /// <summary>How far any of its points departs from its chord over a stretch, mm at the most.</summary>
    public double Bow(in Stretch s) => path.Bow(s, Reach);
}
