using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>How a second part moves as seen from a first, over a parameter u from 0 to 1.</summary>
/// <remarks>All speeds are mm per unit of u, and bounds: the true speed may be less, never more. A bound too small makes contacts missed.</remarks>
public interface IRelativeMotion
{
    /// <summary>The second part's frame as seen from the first part's frame.</summary>
    Frame At(double u);

    /// <summary>Greatest speed of any point of <paramref name="ball"/>, carried by the second part, for u in [<paramref name="from"/>, <paramref name="to"/>].</summary>
    double Speed(in Ball ball, double from, double to);

    /// <summary>How fast the gap between two pieces can close, counting only the component of the speed along a normal, either way.</summary>
    /// <remarks>
    /// A wheel that turns beside a plate has no speed towards it, and a disc that turns about its own axis none towards anything:
    /// this is what makes such pairs cheap. Only the core of the second piece counts, since a margin does not turn.
    /// </remarks>
    /// <param name="normal">Unit vector from the first piece to the second, in the first part's frame.</param>
    /// <param name="first">Piece of the first part.</param>
    /// <param name="second">Piece of the second part, in that part's frame.</param>
    /// <param name="from">Start of the interval of u.</param>
    /// <param name="to">End of the interval of u.</param>
    double SpeedAlong(in Vec3 normal, ConvexPiece first, ConvexPiece second, double from, double to);
}
