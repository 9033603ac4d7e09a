using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A rack and its pinion: s = k t, s the slide's travel in mm and t the pinion's angle in rad.</summary>
/// <remarks>
/// r = m z/2 the pinion's pitch radius, a its axis, n the unit direction from the axis square to the rack, u the direction of travel: the pitch point r n
/// goes with the velocity r a x n for a rad of turn, so k = r (a x n) . u, of the magnitude r.
/// </remarks>
public sealed class RackDrive : ProportionalDrive
{
    /// <summary>A rack and its pinion on one carrier, the travel square to the axis.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">Driving member.</param>
    /// <param name="driven">Driven member.</param>
    /// <param name="spec">The two as designed.</param>
    public RackDrive(IReadOnlyList<Member> members, int driver, int driven, RackSpec spec)
        : base(driver, members[driver].Joint.Kind, driven, members[driven].Joint.Kind, Ratio(members, driver, driven, spec))
    {
        Spec = spec;
        (Pinion, Rack) = members[driver].Joint.Kind == JointKind.Pivot ? (driver, driven) : (driven, driver);
        Towards = Normal(members[Pinion].Joint, members[Rack].Joint, spec);
    }

    /// <summary>The two as designed.</summary>
    public RackSpec Spec { get; }

    /// <summary>The member with the pinion.</summary>
    public int Pinion { get; }

    /// <summary>The member with the rack.</summary>
    public int Rack { get; }

    /// <summary>Unit direction from the pinion's axis square to the rack, as drawn.</summary>
    public Vec3 Towards { get; }

    /// <inheritdoc/>
    public override string Kind => "rack";

    /// <inheritdoc/>
    public override string Word => "rack and pinion";

    /// <inheritdoc/>
    public override string How(string driver) => Driver == Pinion
        ? $"is moved along as a rack by a pinion of {Spec.Teeth} teeth on {driver}"
        : $"is turned as a pinion of {Spec.Teeth} teeth by a rack on {driver}";

    internal override string? Ended => Kind;

    private static double Ratio(IReadOnlyList<Member> members, int driver, int driven, RackSpec spec)
    {
        var pinionDrives = members[driver].Joint.Kind == JointKind.Pivot;
        var (pinion, rack) = pinionDrives ? (members[driver].Joint, members[driven].Joint) : (members[driven].Joint, members[driver].Joint);
        var k = 0.5 * spec.Module * spec.Teeth * Math.Sign(pinion.Along.Cross(Normal(pinion, rack, spec)).Dot(rack.Along));
        return pinionDrives ? k : 1 / k;
    }

    private static Vec3 Normal(Joint pinion, Joint rack, RackSpec spec)
    {
        var n = pinion.Along.Cross(rack.Along).Unit();
        return Math.Sign(n.Dot(spec.Towards)) * n;
    }
}
