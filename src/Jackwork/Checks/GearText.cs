using Jackwork.Gears;

namespace Jackwork.Checks;

/// <summary>What every check of a gear pair says of it: names and subject.</summary>
internal static class GearText
{
    /// <summary>The driven member: the pair goes by its name.</summary>
    public static string Subject(this GearWork work, Proof proof) => proof.Machine.NameOf(work.Drive.Driven);

    /// <summary>The pair as a maker calls it.</summary>
    public static string Pair(this GearWork work, Proof proof) => FormattableString.Invariant($"the wheels of {work.Drive.Spec.Teeth[0]} ('{proof.Machine.NameOf(work.Drive.Driver)}') and {work.Drive.Spec.Teeth[1]} teeth ('{proof.Machine.NameOf(work.Drive.Driven)}')");

    /// <summary>The member that carries one of the pair's wheels.</summary>
    public static string Carrier(this GearWork work, Proof proof, SpurGear gear) => proof.Machine.NameOf(ReferenceEquals(gear, work.DriverGear) ? work.Drive.Driver : work.Drive.Driven);
}
