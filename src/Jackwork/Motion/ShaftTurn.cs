namespace Jackwork.Motion;

/// <summary>The angle of a shaft for that of the crank and back, through the wheels between the two.</summary>
public static class ShaftTurn
{
    /// <summary>Whether a shaft turns at a fixed ratio to the crank, and not a step at a time.</summary>
    public static bool IsEven(IReadOnlyList<Drive> drives, int shaft) => drives[shaft] switch
    {
        CrankDrive => true,
        RatioDrive r => IsEven(drives, r.Driver),
        DifferentialDrive d => d.Drivers.All(m => IsEven(drives, m)),
        _ => false,
    };

    /// <summary>The shaft's coordinate at a crank angle, rad of any number of turns.</summary>
    public static double At(Machine machine, int shaft, double crank) => machine.Drives[shaft] switch
    {
        RatioDrive r => r.Ratio.Value * At(machine, r.Driver, crank),
        GenevaDrive g => g.DrivenAt(Jet.Constant(At(machine, g.Driver, crank))).Value,
        DifferentialDrive => machine.Turns[shaft]!.Value.Value * crank,
        RatchetDrive { Feed: { } f } w => w.Sense * f.At(crank),
        _ => crank,
    };

    /// <summary>The crank angle at which the shaft's coordinate is <paramref name="angle"/>, rad; where it stands there, that at which it comes to stand.</summary>
    public static double Crank(Machine machine, int shaft, double angle) => machine.Drives[shaft] switch
    {
        RatioDrive r => Crank(machine, r.Driver, angle / r.Ratio.Value),
        GenevaDrive g => Crank(machine, g.Driver, g.DriverAt(Jet.Constant(angle))?.Value ?? g.StandsFrom(angle, machine.Turns[g.Driver]!.Value.Numerator.Sign)),
        DifferentialDrive => angle / machine.Turns[shaft]!.Value.Value,
        RatchetDrive { Feed: { } f } w => f.Crank(w.Sense * angle),
        _ => angle,
    };
}
