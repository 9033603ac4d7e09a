namespace Jackwork.Motion;

/// <summary>The angle of a shaft for that of the crank and back, through the drives between the two.</summary>
public static class ShaftTurn
{
    /// <summary>Whether a shaft turns at a fixed ratio to the crank, and not a step at a time.</summary>
    public static bool IsEven(IReadOnlyList<Drive> drives, int shaft) => drives[shaft] switch
    {
        CrankDrive => true,
        Relation { TurnsOfDriven: not null, IsEven: true } or DifferentialDrive => drives[shaft].Drivers.All(d => IsEven(drives, d)),
        _ => false,
    };

    /// <summary>Whether a shaft never stands still while the crank turns, and each of its turns takes the same angle of the crank: then a cam on it is asked the same turn after turn.</summary>
    /// <remarks>What drives it unevenly may repeat with its driver's turn only, so its driver is to turn evenly, or the two once for once.</remarks>
    internal static bool TurnsAlike(IReadOnlyList<Drive> drives, int shaft) =>
        IsEven(drives, shaft) || (drives[shaft] is Relation { TurnsOfDriven: { } turns } r && (r.IsEven || !r.Stands)
            && (IsEven(drives, r.Driver) || (turns.Abs() == new Rational(1, 1) && TurnsAlike(drives, r.Driver))));

    /// <summary>Whether the speed of a shaft jumps while the crank turns.</summary>
    internal static bool Jumps(IReadOnlyList<Drive> drives, int shaft) => !IsEven(drives, shaft) && drives[shaft] is Relation r && (r.Jumps || r.Drivers.Any(d => Jumps(drives, d)));

    /// <summary>The shaft's coordinate at a crank angle, rad of any number of turns.</summary>
    public static double At(Machine machine, int shaft, double crank) => machine.Drives[shaft] switch
    {
        Relation r => r.TurnedAt(machine, crank),
        _ => crank,
    };

    /// <summary>The crank angle at which the shaft's coordinate is <paramref name="angle"/>, rad; where it stands there, that at which it comes to stand.</summary>
    public static double Crank(Machine machine, int shaft, double angle) => machine.Drives[shaft] switch
    {
        Relation r => r.CrankAt(machine, angle),
        _ => angle,
    };
}
