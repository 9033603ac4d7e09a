using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>Finds the circles and pitches of an intermittent pin wheel from what it shall do.</summary>
/// <remarks>
/// <para>Wanted: n pins on the driven, how many of them it goes on by for each turn of the driver (the steps), the share S of the driver's turn in which it moves, and
/// the room: parallel shafts their distance C, crossed shafts the driven's circle r2.</para>
/// <para>The two circles roll on each other, r1 p = r2 t: parallel r1 = C t/(p + t), r2 = C p/(p + t); crossed r1 = r2 t/p. On crossed shafts the
/// driver's pins are cut so long that a pair reaches to <see cref="CrossedReach"/> of a pitch. N = steps + 1 - m.</para>
/// <para>What is left is the pitch p from the angle of drive, X - x0 - e + (N - 1) p = S: one smooth equation. A first pin set in is set back by e such that it
/// has brought the driven as far as any other would have when the second takes over.</para>
/// </remarks>
internal static class IntermittentMaker
{
    /// <summary>Share of the driven's pitch to which crossed pins push on: nine tenths would all but graze the pin behind, three quarters pick up earlier and harder.</summary>
    public const double CrossedReach = 0.85;

    /// <summary>Most pins of the driven that may lie within the first pin's reach: with more the pins are too thick for their circle.</summary>
    private const int MostSpaces = 3;

    /// <summary>Pitches tried before the root is closed in on.</summary>
    private const int Tried = 80;

    /// <summary>The law; null where there is none.</summary>
    /// <param name="crossed">Whether the shafts are at right angles.</param>
    /// <param name="size">Centre distance of parallel shafts, the driven's circle of crossed ones, mm.</param>
    /// <param name="pins">n.</param>
    /// <param name="steps">Pins by which the driven goes on for each turn of the driver.</param>
    /// <param name="share">S, rad.</param>
    /// <param name="pin">Diameter of a pin, mm.</param>
    /// <param name="setIn">How far the first pin is set in, mm.</param>
    public static IntermittentLaw? Law(bool crossed, double size, int pins, int steps, double share, double pin, double setIn)
    {
        for (var spaces = 1; spaces <= Math.Min(MostSpaces, steps - 1); spaces++)
        {
            var m = spaces;
            IntermittentLaw? At(double pitch) => Of(crossed, size, pins, steps + 1 - m, pitch, pin, setIn);
            (double Pitch, double Off)? before = null;
            for (var i = 1; i <= Tried; i++)
            {
                var pitch = share / steps * (0.5 + 2.0 * i / Tried);
                if (At(pitch) is not { } law || law.Spaces != m)
                {
                    before = null;
                    continue;
                }

                var off = law.Drives - share;
                if (before is { } b && b.Off <= 0 != off <= 0)
                {
                    return At(Roots.Between(b.Pitch, b.Off, pitch, off, p => (At(p)?.Drives ?? double.NaN) - share));
                }

                before = (pitch, off);
            }
        }

        return null;
    }

    /// <summary>The law of given pitches; null where the pins don't meet or the first lets go before the second takes over.</summary>
    public static IntermittentLaw? Of(bool crossed, double size, int pins, int driverPins, double pitch, double pin, double setIn)
    {
        var t = Math.Tau / pins;
        var (r1, r2) = crossed ? (size * t / pitch, size) : (size * t / (pitch + t), size * pitch / (pitch + t));
        PinPair Pair(double circle) => crossed
            ? new CrossedPins(circle, r2, pin / 2, pin / 2, r2 * (1 - Math.Cos(CrossedReach * t)) - pin / 2)
            : new ParallelPins(size, circle, r2, pin);
        var (first, others) = (Pair(r1 - setIn), Pair(r1));
        if (driverPins < 2 || !(others.Reach > t / 2) || !(first.Reach > 0) || !double.IsFinite(others.ReachAt + others.WedgeAt + first.ReachAt + first.WedgeAt))
        {
            return null;
        }

        if (setIn == 0)
        {
            return new(first, others, driverPins, pitch, pins, 0);
        }

        return Handover(others, pitch, t) is { } x && others.Driven(Jet.Constant(x)).Value is var y && y < first.Reach
            ? new(first, others, driverPins, pitch, pins, x - first.Driver(Jet.Constant(y)).Value)
            : null;
    }

    // The x at which a pin hands over to the next like it; null where it lets go before.
    private static double? Handover(PinPair pair, double pitch, double t)
    {
        double Ahead(double x) => pair.Driven(Jet.Constant(x - pitch)).Value + t - pair.Driven(Jet.Constant(x)).Value;
        var (from, to) = (pair.WedgeAt + pitch, pair.ReachAt);
        return from < to && Ahead(from) < 0 && Ahead(to) > 0 ? Roots.Between(from, Ahead(from), to, Ahead(to), Ahead) : null;
    }
}
