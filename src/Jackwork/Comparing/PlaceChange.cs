using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Comparing;

/// <summary>A place of the design, as drawn, that is another one now: where a pivot stands, where a pin sits.</summary>
/// <param name="Subject">What stands there: "pivot of head", "pin on lever of the rod to head".</param>
/// <param name="Before">Where it was, mm.</param>
/// <param name="After">Where it is, mm.</param>
/// <param name="Tilt">Angle between its direction before and now, rad, 0 to pi; 0 for a pin.</param>
public sealed record PlaceChange(string Subject, Point3 Before, Point3 After, double Tilt)
{
    /// <summary>How far it has moved, mm.</summary>
    public double Distance => Before.DistanceTo(After);

    /// <summary>The places of both versions that have moved by more than <see cref="Sameness.Mm"/> or <see cref="Sameness.Rad"/>.</summary>
    internal static IReadOnlyList<PlaceChange> All(Machine before, Machine after, Renames renames) =>
        [.. Pairing<PlaceChange>.Of(
            Places(before).Select(p => (renames.Now(p.Subject), p)),
            Places(after).Select(p => (p.Subject, p)),
            (subject, a, b) => new(subject, a.At, b.At, AngleBetween(a.Along, b.Along))).Both
            .Where(c => c.Distance > Sameness.Mm || c.Tilt > Sameness.Rad)];

    private static IEnumerable<(string Subject, Point3 At, Vec3? Along)> Places(Machine machine)
    {
        for (var m = 0; m < machine.Members.Count; m++)
        {
            var (member, joint) = (machine.Members[m], machine.Members[m].Joint);
            yield return ($"{joint.Kind.ToString().ToLowerInvariant()} of {member.Name}", joint.Through, joint.Along);
            foreach (var place in machine.Drives[m].Places(machine.NameOf))
            {
                yield return place;
            }
        }
    }

    private static double AngleBetween(Vec3? a, Vec3? b) => a is { } u && b is { } v ? Math.Atan2(u.Cross(v).Length, u.Dot(v)) : 0;
}
