namespace Jackwork.Guides;

/// <summary>One straight leg of a guide's track on the developed cylinder: a lift, a swing, or a helix that does both evenly.</summary>
/// <param name="Turn">How far it turns, rad, positive by the right-hand rule about the axis.</param>
/// <param name="Lift">How far it goes along the axis, mm.</param>
/// <param name="Rounding">Least radius of the middle line where the leg joins the one before, mm on the developed cylinder; 0 for a sharp corner. Without meaning for the first leg.</param>
public readonly record struct GuideLeg(double Turn, double Lift, double Rounding);
