using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion.Drives;

/// <summary>Where a drive is to be made: between which members, under which place of the file its problems are told.</summary>
/// <param name="members">All members.</param>
/// <param name="driver">Index of the driving member.</param>
/// <param name="driven">Index of the driven member.</param>
/// <param name="path">Place of the drive in the file.</param>
/// <param name="specOf">What the design says of a member.</param>
/// <param name="problems">Where problems are noted.</param>
internal sealed class DriveSite(IReadOnlyList<Member> members, int driver, int driven, string path, Func<int, MemberSpec> specOf, ProblemList problems)
{
    /// <summary>Sine of the angle up to which two directions count as parallel; a tenth of what a bored hole can be trusted to.</summary>
    public const double Parallel = 1e-6;

    /// <summary>Distance below which a pin counts as standing on an axis, mm.</summary>
    public const double OnAxis = 1e-6;

    /// <summary>All members.</summary>
    public IReadOnlyList<Member> Members => members;

    /// <summary>Index of the driving member.</summary>
    public int Driver => driver;

    /// <summary>Index of the driven member.</summary>
    public int Driven => driven;

    /// <summary>Its joint.</summary>
    public Joint DriverJoint => members[driver].Joint;

    /// <summary>Its joint.</summary>
    public Joint DrivenJoint => members[driven].Joint;

    /// <summary>Its name.</summary>
    public string DriverName => members[driver].Name;

    /// <summary>Its name.</summary>
    public string DrivenName => members[driven].Name;

    /// <summary>How many problems there are by now.</summary>
    public int Problems => problems.Count;

    /// <summary>Cosine of the angle between the two joints' directions.</summary>
    public double AxisCosine => DriverJoint.Along.Dot(DrivenJoint.Along);

    /// <summary>What the design says of a member.</summary>
    public MemberSpec SpecOf(int member) => specOf(member);

    /// <summary>Name of a member.</summary>
    public string NameOf(int member) => members[member].Name;

    /// <summary>Index of a further member that the drive names; -1, with the problem noted, where there is none, or none that can have a part in it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="key">Key under the drive that names it.</param>
    /// <param name="purpose">What it is wanted for: "to turn with".</param>
    public int Other(string name, string key, string purpose)
    {
        var names = members.Select(m => m.Name).ToList();
        var other = names.IndexOf(name);
        if (other < 0)
        {
            Note(key, $"there is no member '{name}' {purpose}", Names.Suggest(name, [.. names.Where(n => n != DrivenName)]));
        }
        else if (other == driven || Carriers.IsCarriedBy(members, other, driven))
        {
            Note(key, other == driven ? $"'{name}' depends on itself" : $"'{name}' is carried by '{DrivenName}', which depends on it", "Name a member that does not depend on the driven one");
            other = -1;
        }

        return other;
    }

    /// <summary>Notes a problem where the two ends of a drive's spring don't say which way it pulls.</summary>
    public void CheckSpring(SpringSpec? spring)
    {
        if (spring is { } s && s.At.DistanceTo(s.To) < OnAxis)
        {
            Note("spring", "both ends of the spring stand on one point, so it can't be told which way it pulls", "Set 'to' where the spring is fixed");
        }
    }

    /// <summary>Notes a problem.</summary>
    /// <param name="key">Keys below the drive's place, by dots; empty for the drive itself.</param>
    /// <param name="what">What is wrong.</param>
    /// <param name="remedy">What would be right.</param>
    public void Note(string key, string what, string remedy) => problems.Add(key.Length == 0 ? path : $"{path}.{key}", what, remedy);

    /// <summary>Whether both members turn and sit on one carrier; else noted.</summary>
    /// <param name="what">What would join them, in the plural: "toothed wheels".</param>
    public bool TwoShafts(string what)
    {
        foreach (var m in (ReadOnlySpan<int>)[driver, driven])
        {
            if (members[m].Joint.Kind != JointKind.Pivot)
            {
                Note("", $"'{NameOf(m)}' {(members[m].Joint.Turns ? "runs in a guide" : "slides")}, but {what} join two members that turn", "Give it a pivot, or another drive");
                return false;
            }
        }

        return SameCarrier(what);
    }

    /// <summary>Whether both members sit on one carrier; else noted.</summary>
    public bool SameCarrier(string what)
    {
        if (members[driver].Carrier == members[driven].Carrier)
        {
            return true;
        }

        Note("", $"'{DriverName}' and '{DrivenName}' sit on different carriers, and {what} can't be worked out between moving carriers", "Set both on the case, or both on the same member");
        return false;
    }

    /// <summary>Whether the two axes are parallel; else noted.</summary>
    /// <param name="what">What joins them: "a belt or chain".</param>
    public bool ParallelShafts(string what)
    {
        if (Math.Abs(AxisCosine) >= 1 - Parallel * Parallel)
        {
            return true;
        }

        Note("", $"the shafts of {what} are not parallel", "Set both along the same direction");
        return false;
    }

    /// <summary>Whether a pin stands where it can turn its member; else noted.</summary>
    public bool PinOffAxis(int m, Point3 pin, string key)
    {
        var joint = members[m].Joint;
        if (joint.Kind == JointKind.Slide || pin.DistanceTo(joint.Foot(pin)) >= OnAxis)
        {
            return true;
        }

        Note(key, FormattableString.Invariant($"the pin [{pin.X}, {pin.Y}, {pin.Z}] stands on the axis of '{NameOf(m)}', where it can't turn it"), "Set the pin off the axis");
        return false;
    }
}
