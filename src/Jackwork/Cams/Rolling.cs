using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>
/// Rests a follower on a loop that is taken as an unknown piece of plywood: how far out it stands at each angle of the shaft.
/// </summary>
/// <remarks>
/// <para>This is the other calculation: it knows nothing of charts, pitch curves or envelopes, only of lines, arcs and corners.
/// For each of them it finds where the follower would just touch it; the outermost of these is where it rests, since
/// there it touches one and lies inside none.</para>
/// <para>Roller of radius R on a lever (axis P', arm L, both seen from the cam): its centre lies on the circle (P', L) and
/// at R outside the line or arc, that is on a parallel line or on a circle of radius r + R about a convex arc's centre,
/// r - R about a hollow one's, R about a corner: circle with circle, or circle with line. On a stem: line with circle, line with line.</para>
/// <para>Inside a hole the innermost of these is where it is stopped; the hole's loop runs clockwise, its wood to the left as for a plate.</para>
/// <para>Flat face: the loop's greatest extent along the face's normal, c . m + r over arcs and corners, equals the face's height.</para>
/// </remarks>
internal abstract class Rolling
{
    /// <summary>Slack with which a touch still counts as lying on its arc or line, rad or share of length; joins must not fall between two neighbours.</summary>
    protected const double Slack = 1e-6;

    /// <summary>The contact calculation for a follower on a loop.</summary>
    public static Rolling On(Outline loop, Follower follower) => follower switch
    {
        ArmRoller f => new ArmRollerRolling(loop, f),
        StemRoller f => new StemRollerRolling(loop, f),
        ArmFace f => new ArmFaceRolling(loop, f),
        StemFace f => new StemFaceRolling(loop, f),
        _ => throw new ArgumentOutOfRangeException(nameof(follower), follower.GetType().Name, "No contact calculation is known for this kind of follower."),
    };

    /// <summary>The contact calculation for a roller that is held in by the wall of a hole: where it is stopped on its way out.</summary>
    public static Rolling Within(Outline hole, RollerFollower roller) => roller switch
    {
        ArmRoller f => new ArmRollerRolling(hole.Reversed(), f, true),
        StemRoller f => new StemRollerRolling(hole.Reversed(), f, true),
        _ => throw new ArgumentOutOfRangeException(nameof(roller), roller.GetType().Name, "No contact calculation is known for this kind of roller."),
    };

    /// <summary>The follower's coordinate (rad or mm) with the shaft at <paramref name="t"/> rad, near <paramref name="near"/>; not-a-number where it touches nothing.</summary>
    public abstract double Rest(double t, double near);
}
