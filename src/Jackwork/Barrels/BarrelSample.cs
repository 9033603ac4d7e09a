using Jackwork.Geometry;

namespace Jackwork.Barrels;

/// <summary>One position of the roller in the groove of a barrel, on the drum unrolled (see <see cref="BarrelFollower"/>).</summary>
/// <param name="Centre">Where the roller's axis meets the surface, (u, v), mm.</param>
/// <param name="Lower">The point of the wall towards smaller v, and its direction towards greater u.</param>
/// <param name="Upper">The same of the wall towards greater v.</param>
/// <param name="PitchRadius">Radius of curvature of the pitch curve, mm, positive or negative as it bends; infinite where it is straight.</param>
/// <param name="PressureAngle">Angle between the wall's normal and the motion of the roller, rad, 0 to pi/2.</param>
public readonly record struct BarrelSample(Point2 Centre, OutlinePoint Lower, OutlinePoint Upper, double PitchRadius, double PressureAngle);
