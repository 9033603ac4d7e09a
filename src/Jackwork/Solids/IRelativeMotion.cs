using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>How a second part moves as seen from a first, over a parameter u from 0 to 1.</summary>
/// <remarks>All speeds are mm per unit of u, and bounds: the true speed may be less, never more. A bound too small makes contacts missed.</remarks>
public interface IRelativeMotion
{
    /// <summary>The second part's frame as seen from the first part's frame.</summary>
    Frame At(double u);

    /// <summary>Greatest speed of any point of <paramref name="ball"/>, carried by the second part, for u in [<paramref name="from"/>, <paramref name="to"/>].</summary>
    double Speed(in Ball ball, double from, double to);

    /// <summary>As <see cref="Speed"/>, counting only the component along the unit vector <paramref name="normal"/> (first part's frame), either way.</summary>
    /// <remarks>A wheel that turns beside a plate has no speed towards it: this is what makes such pairs cheap.</remarks>
    double SpeedAlong(in Vec3 normal, in Ball ball, double from, double to);
}
