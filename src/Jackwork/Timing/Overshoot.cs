using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>Finds quintic moves whose end speeds carry them past their end positions.</summary>
/// <remarks>
/// A move with an end speed against its own direction, or with no lift at all, has to go past its ends: there the maker
/// asked for it (a turn at the end of a steady sweep), and it is left alone. Otherwise it is a fault of the figures, which
/// shows when an end speed exceeds <see cref="Quintic.MonotoneEndSpeed"/> times the mean speed.
/// </remarks>
internal static class Overshoot
{
    // Share of the lift that a move may swing past its ends unreported: a hundredth is not seen in a moving figure.
    private const double Allowed = 0.01;

    /// <summary>Reports the move if it swings past its ends by more than a hundredth of its lift.</summary>
    public static void Check(PlacedMove placed, EndSpeeds speeds, ProblemSink problems)
    {
        if (placed.Move is not { Law: MotionLaws.Quintic, Beats: null } || speeds is not { In: { } speedIn, Out: { } speedOut })
        {
            return;
        }

        var (start, end, lift) = (placed.Start, placed.End, placed.Lift);
        if (lift == 0 || speedIn * lift < 0 || speedOut * lift < 0)
        {
            return;
        }

        var (min, max) = Quintic.Hermite(new(start, speedIn * placed.Length, 0), new(end, speedOut * placed.Length, 0)).Range();
        var (below, above) = (Math.Min(start, end) - min, max - Math.Max(start, end));
        if (Math.Max(below, above) <= Allowed * Math.Abs(lift))
        {
            return;
        }

        var (past, limit) = above >= below ? (above, Math.Max(start, end)) : (below, Math.Min(start, end));
        var fastest = Math.Max(Math.Abs(speedIn), Math.Abs(speedOut));
        var longest = Quintic.MonotoneEndSpeed * Math.Abs(lift) / fastest;
        problems.Add(
            placed.Index,
            $"Move {placed.Index + 1} swings {ProblemSink.N(past)} {problems.Unit} past {ProblemSink.N(limit)} {problems.Unit}, since its end speed of {ProblemSink.N(fastest)} {problems.SpeedUnit} is too high for its mean speed of {ProblemSink.N(Math.Abs(placed.Slope))}.",
            $"Let it last {ProblemSink.N(longest)} deg or less, or keep its end speeds to {ProblemSink.N(Quintic.MonotoneEndSpeed * Math.Abs(placed.Slope))} {problems.SpeedUnit}.");
    }
}
