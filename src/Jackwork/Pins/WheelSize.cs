namespace Jackwork.Pins;

/// <summary>The sizes of a wheel with pins all round, mm.</summary>
/// <param name="Pegs">Whether its pins are pegs, square to its axis; else they stand along it.</param>
/// <param name="Rim">Radius of its plate.</param>
/// <param name="Near">The face of its plate towards the pins of the other wheel, along the axis.</param>
/// <param name="Far">The other face.</param>
/// <param name="PinFrom">Where a pin begins, along the axis; of a peg its distance from the axis.</param>
/// <param name="PinTo">Where it ends; of a peg the distance of the middle of its round end.</param>
public readonly record struct WheelSize(bool Pegs, double Rim, double Near, double Far, double PinFrom, double PinTo)
{
    /// <summary>The middle of its plate along the axis.</summary>
    public double Middle => (Near + Far) / 2;

    /// <summary>The thickness of its plate.</summary>
    public double Thickness => Math.Abs(Far - Near);
}
