using Jackwork.Cams;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Barrels;

/// <summary>A finished barrel cam.</summary>
/// <param name="Drive">The drive that it serves.</param>
/// <param name="Follower">Its roller.</param>
/// <param name="Groove">Its groove, sampled.</param>
/// <param name="Pattern">The drum unrolled, as it is cut.</param>
/// <param name="From">Where along the shaft's axis, from the point that the design gives for it, the drum begins, mm.</param>
/// <param name="Unlike">Largest difference between what two turns of the drum ask of the follower, rad or mm, and the step where it is.</param>
public sealed record Barrel(BarrelDrive Drive, BarrelFollower Follower, BarrelGroove Groove, BarrelPattern Pattern, double From, (double Difference, int Step) Unlike)
{
    /// <summary>Clearance unless given, mm (common practice, no source).</summary>
    private const double Usual = 0.1;

    /// <summary>By how much the groove is wider than the roller, mm.</summary>
    public double Clearance => 2 * (Groove.Half - Follower.Radius);

    /// <summary>Where along the axis the drum ends, mm.</summary>
    public double To => From + Drive.Spec.Length;

    /// <summary>Makes a barrel from the motion.</summary>
    internal static Barrel Of(Motion.Motion motion, BarrelDrive drive)
    {
        var turn = CamTurn.Of(motion, drive);
        var spec = drive.Spec;
        var follower = Build(motion.Machine, drive);
        var half = (spec.Roller + (spec.Clearance ?? Usual)) / 2;
        var q = motion.Of(drive.Driven);
        var t = motion.Of(drive.Driver);
        var samples = new BarrelSample[turn.Steps];
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = follower.Sample(q[i], t[i], spec.Radius, half);
        }

        var groove = new BarrelGroove(samples, spec.Radius, half);
        var (low, high) = groove.Reach;
        var from = (low + high - spec.Length) / 2;
        return new(drive, follower, groove, BarrelPattern.Of(groove, from, spec.Length), from, turn.Unlike(motion, drive, []));
    }

    /// <summary>Where the roller stands between the walls as cut: in the middle of its play, and at either wall.</summary>
    internal CutContact Contact(Motion.Motion motion)
    {
        var (low, high) = (new BarrelContact(Follower, Groove.Surface, Pattern.Lower, From, Pattern.Length), new BarrelContact(Follower, Groove.Surface, Pattern.Upper, From, Pattern.Length));
        var q = motion.Of(Drive.Driven);
        var t = motion.Of(Drive.Driver);
        var (first, other, middle) = (new double[q.Length], new double[q.Length], new double[q.Length]);
        for (var i = 0; i < middle.Length; i++)
        {
            (first[i], other[i]) = (low.Stop(t[i].Value, q[i].Value), high.Stop(t[i].Value, q[i].Value));
            middle[i] = (first[i] + other[i]) / 2;
        }

        return new(Drive.Driven, Follower.Reach, middle, (first, other), c => double.IsNaN(c) ? 0 : Math.Sign(Follower.Motion(c).Y));
    }

    // The roller as drawn, on the frame of BarrelFollower.
    private static BarrelFollower Build(Machine machine, BarrelDrive drive)
    {
        var (shaft, joint, spec) = (machine.Members[drive.Driver].Joint, machine.Members[drive.Driven].Joint, drive.Spec);
        var n = (spec.At - shaft.Through).Across(shaft.Along).Unit();
        var w = shaft.Along.Cross(n);
        var direction = new CamPlane(shaft).Direction(n).Angle;
        Point2 Place(Point3 p) => new((p - shaft.Through).Dot(w), (p - shaft.Through).Dot(shaft.Along));
        if (joint.Kind == JointKind.Slide)
        {
            return new BarrelSlide(Place(spec.At).Y, Math.Sign(joint.Along.Dot(shaft.Along)), spec.Roller / 2, direction);
        }

        var (at, pivot) = (Place(spec.At), Place(joint.Through));
        return new BarrelLever(pivot, at.DistanceTo(pivot), (at - pivot).Angle, Math.Sign(joint.Along.Dot(n)), spec.Roller / 2, direction);
    }
}
