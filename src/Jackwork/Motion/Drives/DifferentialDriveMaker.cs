using Jackwork.Design;
using Jackwork.Differentials;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a differential of its spec.</summary>
internal static class DifferentialDriveMaker
{
    /// <summary>Fewest teeth more that a ring has than the wheel within it: two for each of a planet's fewest.</summary>
    private const int RingMore = 10;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static DifferentialDrive? Make(DifferentialSpec s, DriveSite site)
    {
        var law = new DifferentialLaw(Enum.Parse<DifferentialForm>(s.Form ?? "spur", ignoreCase: true), s.Teeth[0], s.Teeth[1]);
        var with = Member.Case;
        if (s.With is { } name)
        {
            with = site.Other(name, "with", "to add to it");
            if (with < 0)
            {
                return null;
            }
        }

        return AboutOneAxis(site.Driver, "from", site) && (with == Member.Case || (IsAnother(with, site) && AboutOneAxis(with, "with", site))) && TeethRight(s, law, site)
            ? new(site.Driver, with, site.Driven, law, (Sense(site.Driver, site), with == Member.Case ? 1 : Sense(with, site)), s)
            : null;
    }

    private static int Sense(int member, DriveSite site) => Math.Sign(site.Members[member].Joint.Along.Dot(site.DrivenJoint.Along));

    private static bool IsAnother(int with, DriveSite site)
    {
        if (with != site.Driver)
        {
            return true;
        }

        site.Note("with", $"'{site.DriverName}' carries both wheels of the differential, which would lock it", "Name another member, or leave 'with' out where the second wheel is fixed");
        return false;
    }

    private static bool AboutOneAxis(int member, string key, DriveSite site)
    {
        var (own, other) = (site.DrivenJoint, site.Members[member].Joint);
        if (site.Members[member].Carrier != site.Members[site.Driven].Carrier)
        {
            site.Note(key, $"'{site.NameOf(member)}' and '{site.DrivenName}' sit on different carriers, and a differential can't be worked out between moving carriers", "Set both on the case, or both on the same member");
            return false;
        }

        if (own.Kind == JointKind.Pivot && other.Kind == JointKind.Pivot && own.Along.Cross(other.Along).Length < DriveSite.Parallel && (other.Through - own.Through).Across(own.Along).Length < DriveSite.OnAxis)
        {
            return true;
        }

        site.Note(key, $"'{site.NameOf(member)}' does not turn about the axis of '{site.DrivenName}', as the wheels of a differential do", "Give both a pivot through the same line");
        return false;
    }

    private static bool TeethRight(DifferentialSpec s, DifferentialLaw law, DriveSite site)
    {
        if (law.Form == DifferentialForm.Bevel)
        {
            if (law.First != law.Second)
            {
                site.Note("teeth", $"bevel wheels of {law.First} and {law.Second} teeth do not face each other with planets square between them", "Give both as many, or take the form 'spur'");
                return false;
            }

            return true;
        }

        if (s.Module is null)
        {
            site.Note("", "the wheels of the differential need a module", "Add 'module: 2', or what your teeth have");
            return false;
        }

        if (law.Form == DifferentialForm.Ring && law.Second - law.First < RingMore)
        {
            site.Note("teeth", $"a ring of {law.Second} teeth leaves no room for planets round a wheel of {law.First}", $"Give the ring at least {RingMore} teeth more");
            return false;
        }

        return true;
    }
}
