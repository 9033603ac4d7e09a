using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A point that a member's drive is given by.</summary>
/// <param name="Path">Where it stands in the design, as <see cref="DesignText"/> takes it.</param>
/// <param name="Drive">Key of the drive.</param>
/// <param name="At">The point as drawn, mm.</param>
/// <param name="What">What is there, in words.</param>
/// <param name="Key">What the format says of it; its <see cref="KeyAttribute.Place"/> is not empty.</param>
public readonly record struct DrivePoint(string Path, string Drive, Point3 At, string What, KeyAttribute Key)
{
    /// <summary>The points that the design gives for what drives a member, found by what the format says of its keys.</summary>
    /// <param name="name">The member.</param>
    /// <param name="member">What the design says of it.</param>
    public static IEnumerable<DrivePoint> Of(string name, MemberSpec member) =>
        from drive in KeyInfo.Of(typeof(MemberSpec))
        let spec = drive.Property.GetValue(member)
        where spec is not null and not string
        from point in In(spec, $"members.{name}.{drive.Name}", drive.Name, "")
        select point;

    private static IEnumerable<DrivePoint> In(object part, string path, string drive, string which)
    {
        foreach (var key in KeyInfo.Of(part.GetType()))
        {
            var (value, at) = (key.Property.GetValue(part), $"{path}.{key.Name}");
            IEnumerable<DrivePoint> inner = (value, key.Key.Place) switch
            {
                (Point3 p, not "") => [new(at, drive, p, which + key.Key.Place, key.Key)],
                (IReadOnlyList<Point3> points, not "") => points.Select((p, i) => new DrivePoint(FormattableString.Invariant($"{at}.{i + 1}"), drive, p, which + key.Key.Place, key.Key)),
                (not null, _) when key.Type.GetConstructor(Type.EmptyTypes) is not null => In(value, at, drive, key.Type == typeof(SecondSpec) ? "second " : which),
                _ => [],
            };
            foreach (var point in inner)
            {
                yield return point;
            }
        }
    }
}
