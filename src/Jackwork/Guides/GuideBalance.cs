using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Guides;

/// <summary>What a push on a guided member loses in its slot and sleeve.</summary>
/// <remarks>
/// <para>A unit push l acts at the point A; O is a point of the axis, a its direction. On the developed sleeve of radius R it is Q = (M/R, F),
/// M = l . (a x (A - O)) its moment, F = l . a its part along the axis. With d the unit direction of the track and n = (-d_z, d_u) square to it,
/// |Q . d| drives and the wall answers with N n, N = -Q . n, at the pin; g is the angle between Q and d.</para>
/// <para>The rod leans on the sleeve's ends z1 and z2 with R1 and R2 across the axis. Of all forces on it f is the part across the axis, acting at the station z, and
/// F the part along it, acting r beside it: sum f + R1 + R2 = 0, and about z1, R2 (z2 - z1) = sum (F r - (z - z1) f).</para>
/// <para>Friction m works on the pin along the track and on the rod, of radius b, at its speed v: of the work of the push
/// 1 - m (|N| + (|R1| + |R2|) v)/|Q . d| is left, v = sqrt((b d_u/R)^2 + d_z^2). Where that is nothing it jams, however hard it is pushed. The forces are those without friction,
/// so it errs by the square of m. With a push in the pin's own place it is 1 - m tan g, as for a screw pushed along its axis
/// (J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, 5th ed., section 8-2, from memory); the tilting rod by its statics.</para>
/// </remarks>
/// <param name="Angle">g, rad, 0 to pi/2.</param>
/// <param name="Wall">|N| for a push of 1.</param>
/// <param name="Lean">|R1| + |R2| for a push of 1.</param>
/// <param name="Drive">|Q . d|: what of a push of 1 acts along the track.</param>
/// <param name="Speed">v: how fast the rod's outside slides in the sleeve, for a travel of 1 along the slot.</param>
public readonly record struct GuideBalance(double Angle, double Wall, double Lean, double Drive, double Speed)
{
    /// <summary>The balance of a guide that is pushed at a travel.</summary>
    /// <param name="joint">The guide.</param>
    /// <param name="travel">Travel from the place as drawn, mm.</param>
    /// <param name="push">Unit direction of the push and the point it acts on, mm, both as seen from the carrier.</param>
    /// <param name="pin">Unit direction of the pin from the axis as drawn, and its place along the axis as drawn, mm.</param>
    /// <param name="sleeve">Where the sleeve begins and ends along the axis, mm.</param>
    /// <param name="rod">Radius of the rod, mm.</param>
    public static GuideBalance Of(Joint joint, double travel, (Vec3 Line, Point3 At) push, (Vec3 Towards, double At) pin, (double From, double To) sleeve, double rod)
    {
        var (a, radius) = (joint.Along, joint.Track!.Radius);
        var d = joint.Track.At(travel).First.Unit();
        var (turn, lift) = joint.Pose(travel);
        var radial = Math.Cos(turn) * pin.Towards + Math.Sin(turn) * a.Cross(pin.Towards);
        var arm = (push.At - joint.Through).Across(a);
        var q = new Vec2(push.Line.Dot(a.Cross(arm)) / radius, push.Line.Dot(a));
        var (drive, wall) = (Math.Abs(q.Dot(d)), -q.Dot(d.Left));

        // The push, then the wall on the pin: across the axis, and along it with where.
        (Vec3 Across, double Along, Vec3 Beside, double Station)[] forces =
        [
            (push.Line.Across(a), q.Y, arm, (push.At - joint.Through).Dot(a)),
            (-wall * d.Y * a.Cross(radial), wall * d.X, radius * radial, pin.At + lift),
        ];
        var (sum, second) = (default(Vec3), default(Vec3));
        foreach (var f in forces)
        {
            sum += f.Across;
            second += 1 / (sleeve.To - sleeve.From) * (f.Along * f.Beside - (f.Station - sleeve.From) * f.Across);
        }

        return new(Math.Atan2(Math.Abs(wall), drive), Math.Abs(wall), second.Length + (sum + second).Length, drive, Math.Sqrt(Math.Pow(rod * d.X / radius, 2) + d.Y * d.Y));
    }

    /// <summary>What is left of the push's work with the friction <paramref name="m"/>: 1 without any, 0 or less where it jams.</summary>
    public double Left(double m) => 1 - m * (Wall + Lean * Speed) / Drive;
}
