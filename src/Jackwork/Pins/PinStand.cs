namespace Jackwork.Pins;

/// <summary>How the pins of two wheels stand: along their shafts, or out of the rim as pegs.</summary>
/// <param name="Crossed">Whether the shafts are at right angles; else they are parallel.</param>
/// <param name="DriverPegs">Whether the driver's are pegs.</param>
/// <param name="DrivenPegs">Whether the driven's are pegs.</param>
public readonly record struct PinStand(bool Crossed, bool DriverPegs, bool DrivenPegs)
{
    /// <summary>Whether no pin is a peg.</summary>
    public bool IsAlong => !DriverPegs && !DrivenPegs;

    /// <summary>Why such pins do not push each other with their sides, a sentence without a full stop; null where they do.</summary>
    /// <remarks>On parallel shafts pegs on both would lie in one plane; at right angles a peg and a pin along the other shaft would lie in planes square to the driver's axis, side by side.</remarks>
    public string? Refused => (Crossed, DriverPegs, DrivenPegs) switch
    {
        (false, true, true) => "pegs on both wheels of parallel shafts lie in one plane and meet end to end",
        (true, true, false) or (true, false, true) => "on shafts at right angles the pegs of one wheel and pins along the shaft of the other lie side by side and meet with their ends only",
        _ => null,
    };
}
