using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>One point of a cam's outline and what happens there, in the cam's own plane with the shaft as drawn.</summary>
/// <param name="Point">Point of the outline, mm.</param>
/// <param name="Normal">Unit normal of the outline, out of the cam.</param>
/// <param name="Radius">Radius of curvature of the outline, mm: positive convex, negative hollow, infinite straight.</param>
/// <param name="PitchRadius">The same for the curve of the roller's centre; for a flat face, of the outline itself.</param>
/// <param name="PressureAngle">Angle between the normal and the motion of the follower's point, rad, 0 to pi/2.</param>
/// <param name="FaceOffset">For a flat face: how far along the face the contact lies from its middle, mm; else 0.</param>
public readonly record struct CamSample(Point2 Point, Vec2 Normal, double Radius, double PitchRadius, double PressureAngle, double FaceOffset)
{
    /// <summary>Unit tangent of the outline, counter-clockwise round the cam.</summary>
    public Vec2 Tangent => Normal.Left;
}
