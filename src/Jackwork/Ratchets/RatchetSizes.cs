using Jackwork.Geometry;

namespace Jackwork.Ratchets;

/// <summary>The sizes of a ratchet wheel and its pawls. Lengths mm, angles rad; the wheel is fed counter-clockwise, a tooth's tip on the x axis.</summary>
/// <remarks>
/// <para>Tips on the radius R, T = (R, 0) one of them. Its face goes inwards and ahead, undercut by u: F(s) = T + s (-cos u, sin u), s from 0 to h/cos u. The back
/// of the tooth behind is straight to there, and the corner rounded with the radius r that the cutter leaves: it takes r/tan(c/2) of the face, c the angle of the corner.</para>
/// <para>The pawl's nose lies on the rest of the face; M is the middle of that seat, at the radius q. A pawl that pushes has its pivot O behind M, square to the
/// radius through M: |OM|^2 = |O|^2 - q^2.</para>
/// <para>The square to the face at M passes O at the angle b on the side of the wheel's axis: then the pressure draws the pawl in, and with friction too where
/// b exceeds the angle of friction. "A line perpendicular to the face will pass somewhere between the centre of the wheel and the centre of the pivot":
/// Machinery's Handbook, "Ratchet Gearing", Shape of Ratchet Wheel Teeth (from memory). Depth and undercut unless given are common practice, no source.</para>
/// </remarks>
/// <param name="Law">How it is fed.</param>
/// <param name="Radius">R.</param>
/// <param name="Depth">h.</param>
/// <param name="Undercut">u, not negative.</param>
/// <param name="Corner">r.</param>
/// <param name="PivotRadius">|O|: distance of the pawl's pivot from the wheel's axis.</param>
public sealed record RatchetSizes(RatchetLaw Law, double Radius, double Depth, double Undercut, double Corner, double PivotRadius)
{
    /// <summary>Depth unless given, over the distance of the tips along their circle.</summary>
    public const double UsualDepth = 0.45;

    /// <summary>Undercut unless given.</summary>
    public const double UsualUndercut = 20 * Math.PI / 180;

    /// <summary>Tip of the tooth.</summary>
    public Point2 Tip => new(Radius, 0);

    /// <summary>Length of the face to the sharp corner.</summary>
    public double Face => Depth / Math.Cos(Undercut);

    /// <summary>The place on the face at a length from its tip.</summary>
    public Point2 OnFace(double s) => Tip + s * new Vec2(-Math.Cos(Undercut), Math.Sin(Undercut));

    /// <summary>c: angle of the corner between a face and the back of the tooth behind it.</summary>
    public double CornerAngle
    {
        get
        {
            var corner = OnFace(Face);
            return Between(Tip - corner, Tip.Turned(-Law.Pitch) - corner);
        }
    }

    /// <summary>How much of the face the rounded corner takes, measured along it.</summary>
    public double Rounded => Corner / Math.Tan(CornerAngle / 2);

    /// <summary>Length of the face that the nose lies on; not positive where the cutter leaves none.</summary>
    public double Seat => Face - Rounded;

    /// <summary>M: middle of the seat.</summary>
    public Point2 Middle => OnFace(Seat / 2);

    /// <summary>q: radius of M.</summary>
    public double SeatRadius => Middle.FromOrigin.Length;

    /// <summary>Angle of a tooth at its tip, between face and back.</summary>
    public double ToothAngle => Between(OnFace(Face) - Tip, OnFace(Face).Turned(Law.Pitch) - Tip);

    /// <summary>Length of the pawl from its pivot to M; not a number where the pivot stands within the wheel.</summary>
    public double PawlLength => Math.Sqrt(PivotRadius * PivotRadius - SeatRadius * SeatRadius);

    /// <summary>O for the pawl in this tooth.</summary>
    public Point2 Pivot => Middle - PawlLength * Middle.FromOrigin.Unit().Left;

    /// <summary>How far O stands behind M as seen from the wheel's axis.</summary>
    public double PivotBehind => Math.Acos(SeatRadius / PivotRadius);

    /// <summary>b: angle at M from the direction to O to the square on the face, positive where the pressure draws the pawl in.</summary>
    public double DrawsIn
    {
        get
        {
            var square = new Vec2(-Math.Sin(Undercut), -Math.Cos(Undercut));
            var pivot = Pivot - Middle;
            return Math.Atan2(square.Cross(pivot), square.Dot(pivot));
        }
    }

    /// <summary>How far the pawl must swing out to let a tip pass beneath its nose, about.</summary>
    public double Lift => Depth / PawlLength;

    private static double Between(Vec2 a, Vec2 b) => Math.Atan2(Math.Abs(a.Cross(b)), a.Dot(b));
}
