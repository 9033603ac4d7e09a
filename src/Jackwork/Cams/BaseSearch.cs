using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>Finds the smallest base circle that keeps a cam within its limits.</summary>
/// <remarks>
/// Pressure angle and curvature ease as the base circle grows, though not without exception; so the radius is raised in
/// steps until all limits hold, then halved back to the limit. The answer is the edge of the first good stretch.
/// </remarks>
internal static class BaseSearch
{
    /// <summary>Step by which the radius is raised, mm.</summary>
    private const double Coarse = 0.5;

    /// <summary>How near to the limit the answer lies, mm: a tenth of what a router holds.</summary>
    private const double Fine = 0.01;

    /// <summary>Largest base circle that is tried, as a multiple of the smallest allowed, and in mm besides.</summary>
    private const double LargestFactor = 10, LargestExtra = 100;

    /// <summary>The smallest radius (mm) and the follower set to it; null where none up to ten hubs and 100 mm more is good.</summary>
    /// <param name="smallest">Radius below which the hub would show, mm.</param>
    /// <param name="setTo">The follower set to a base radius, or null where it can't reach.</param>
    /// <param name="isGood">Whether a follower's profile keeps the limits.</param>
    public static Follower? Find(double smallest, Func<double, Follower?> setTo, Func<Follower, bool> isGood)
    {
        bool Good(double r) => setTo(r) is { } f && isGood(f);
        var largest = LargestFactor * smallest + LargestExtra;
        for (var r = smallest; r <= largest; r += Coarse)
        {
            if (!Good(r))
            {
                continue;
            }

            var (bad, good) = (Math.Max(smallest, r - Coarse), r);
            while (good - bad > Fine)
            {
                var middle = (bad + good) / 2;
                (bad, good) = Good(middle) ? (bad, middle) : (middle, good);
            }

            // Rounded up to the hundredth, so that the drawing's number is the one that was tried.
            var rounded = Math.Ceiling(good / Fine) * Fine;
            return setTo(Good(rounded) ? rounded : good);
        }

        return null;
    }
}
