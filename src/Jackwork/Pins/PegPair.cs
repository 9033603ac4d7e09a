namespace Jackwork.Pins;

/// <summary>The pairs of a wheel with pegs in its rim and its mate, the circles rolling on each other.</summary>
/// <remarks>
/// A peg reaches past the circle by a share of its diameter: farther, and the leaving peg runs ahead of the next; less, and all is done by its round end. A quarter
/// runs most evenly for usual wheels; the other shares are tried where the pins would not take over (found by trying; common practice, no source). Of
/// two wheels of pegs the one with fewer has pegs that end there, the other's are longer.
/// </remarks>
internal static class PegPair
{
    /// <summary>Shares of the pins' diameter by which pegs are tried to reach past the circle.</summary>
    private static readonly double[] Past = [0.25, 0, 0.5];

    /// <summary>The pairs to try, the best first; none where pins would be too thick for their circles.</summary>
    public static IEnumerable<PinPair> Of(PinStand stand, double size, double pitch, double drivenPitch, double pin) => Past.Select<double, PinPair?>(share =>
    {
        var past = share * pin;
        if (stand.Crossed)
        {
            var (h, a) = (size * drivenPitch / pitch, size);
            return Math.Min(h, a) <= 2 * pin ? null : pitch >= drivenPitch ? new CrossedPegs(h, a, pin, h + past) : new SwappedPins(new CrossedPegs(a, h, pin, a + past));
        }

        var (r1, r2) = (size * drivenPitch / (pitch + drivenPitch), size * pitch / (pitch + drivenPitch));
        return stand.DriverPegs ? new PegAndPins(size, r1, r2, pin, r1 + past) : new SwappedPins(new PegAndPins(size, r2, r1, pin, r2 + past));
    }).OfType<PinPair>();
}
