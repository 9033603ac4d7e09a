using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>What touches a plate cam and how it moves, in the cam's plane as drawn (see <see cref="CamPlane"/>).</summary>
/// <remarks>
/// The shaft stands at angle t, the follower at coordinate q. Turning the whole plane by -t shows the follower going
/// round a cam that stands still (inversion); the outline is the envelope of the follower there.
/// R. L. Norton, Design of Machinery, chapter 8; H. A. Rothbart (ed.), Cam Design Handbook, chapter 3 (from memory).
/// </remarks>
public abstract class Follower
{
    /// <summary>Whether the follower turns (a lever) or slides (a stem).</summary>
    public abstract bool Turns { get; }

    /// <summary>Whether it can touch a hollow of the outline, as a roller can and a flat face can't.</summary>
    public abstract bool EntersHollows { get; }

    /// <summary>How far it is set over on its member from where it is drawn, rad for a lever, mm for a stem.</summary>
    public abstract double SetOver { get; }

    /// <summary>The least distance over the motion from the cam's axis to the face or the roller's rim: the base circle's radius, mm.</summary>
    /// <param name="least">Smallest coordinate of the follower, rad or mm.</param>
    /// <param name="most">Largest coordinate.</param>
    public abstract double BaseRadius(double least, double most);

    /// <summary>The same follower set over on its member until the base circle is <paramref name="radius"/> mm; null where no setting reaches it.</summary>
    public abstract Follower? WithBase(double radius, double least, double most);

    /// <summary>+1 where a growing coordinate takes the contact away from the shaft, -1 where it brings it nearer.</summary>
    /// <param name="q">The follower's coordinate, rad or mm.</param>
    public abstract int Outward(double q);

    /// <summary>The point of the outline that is touched.</summary>
    /// <param name="q">The follower's coordinate.</param>
    /// <param name="t">The shaft's coordinate.</param>
    public abstract CamSample Sample(Jet q, Jet t);

    /// <summary>Speed and acceleration of the follower's point: mm per rad (or per mm) of its coordinate.</summary>
    public abstract double Reach { get; }
}
