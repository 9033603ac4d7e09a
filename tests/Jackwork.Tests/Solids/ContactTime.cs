using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>The first touch of two moving parts, and the moment at which they are nearest.</summary>
/// <remarks>
/// At u a slab of width s across the normal n keeps the pieces apart. With V the greatest speed along n over an interval,
///   distance(u') &gt;= s - V |u' - u|,
/// so an interval of half width h about u is clear of a limit when s - V h exceeds it (conservative advancement: B. Mirtich,
/// Impulse-based dynamic simulation of rigid body systems, 1996; with V taken along the normal as in M. Tang, Y. Kim, D. Manocha, C2A:
/// Controlled conservative advancement for continuous collision detection of polygonal models, 2009; both from memory). Intervals
/// that are not clear are halved; for whole parts pairs of balls stand in for the pieces until either the balls or the
/// interval is the coarser, which is then split. Nothing is sampled: what is passed over is proved clear.
/// </remarks>
public static class ContactTime
{
    /// <summary>Width of u below which an interval that cannot be proved clear counts as contact.</summary>
    public const double Resolution = 1e-8;

    /// <summary>Tests after which the search for a touch reports the moment it has come to: parts that keep to the limit within micrometres for long.</summary>
    public const int MostTests = 200_000;

    /// <summary>
    /// The first moment in [<paramref name="from"/>, <paramref name="to"/>] at which the distance is <paramref name="limit"/> mm or less; null when there is none.
    /// </summary>
    /// <remarks>
    /// Before U the parts are proved farther apart than the limit. At U the distance exceeds the limit by at most V * Resolution,
    /// so a pass that only grazes the limit within that is reported too; by more only after <see cref="MostTests"/> tests, and the
    /// result's distance then says so.
    /// </remarks>
    public static Moment? FirstTouch(
        PieceSet first, PieceSet second, IRelativeMotion motion, double limit, double from = 0, double to = 1)
    {
        Check(first, second, motion, from, to);
        var search = new Search(first, second, motion);
        return search.Earliest(limit, from, to);
    }

    /// <summary>
    /// The moment in [<paramref name="from"/>, <paramref name="to"/>] at which the parts are nearest; null when none is nearer than
    /// <paramref name="upperBound"/> mm by more than the tolerance.
    /// </summary>
    /// <remarks>No moment is nearer by more than <paramref name="tolerance"/> mm. Overlapping parts: the moment of the deepest pair.</remarks>
    public static Moment? Nearest(
        PieceSet first,
        PieceSet second,
        IRelativeMotion motion,
        double tolerance,
        double upperBound = double.PositiveInfinity,
        double from = 0,
        double to = 1)
    {
        Check(first, second, motion, from, to);
        if (!(tolerance > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, FormattableString.Invariant($"Tolerance is {tolerance} mm; allowed: above 0 mm."));
        }

        var search = new Search(first, second, motion);
        return search.Least(tolerance, upperBound, from, to);
    }

    private static void Check(PieceSet first, PieceSet second, IRelativeMotion motion, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        ArgumentNullException.ThrowIfNull(motion);
        if (!(from >= 0 && to <= 1 && from <= to))
        {
            throw new ArgumentOutOfRangeException(nameof(from), from, FormattableString.Invariant($"The interval is {from} to {to}; allowed: within 0 to 1, not backwards."));
        }
    }

    // A pair of nodes over an interval, waiting to be proved clear; the guess is the normal found in the interval it was split from.
    private readonly record struct Stretch(int A, int B, double From, double To, Vec3 Guess)
    {
        public double Middle => 0.5 * (From + To);

        public double Half => 0.5 * (To - From);
    }

    /// <summary>What is known of a stretch that is not clear.</summary>
    /// <param name="Parts">Separation at the middle; null while balls stand in for pieces.</param>
    /// <param name="ByInterval">Whether the interval rather than the balls is the coarser.</param>
    /// <param name="Safe">Half the width about the middle that is proved clear.</param>
    private readonly record struct Doubt(PartSeparation? Parts, bool ByInterval, double Safe);

    private readonly ref struct Search(PieceSet first, PieceSet second, IRelativeMotion motion)
    {
        // Earlier halves are taken first; any touch found bounds the first one from above.
        public Moment? Earliest(double limit, double from, double to)
        {
            Moment? found = null;
            var waiting = new Stack<Stretch>();
            waiting.Push(new(0, 0, from, to, default));
            for (var tests = 0; waiting.TryPop(out var stretch); tests++)
            {
                if (stretch.From >= found?.U || Doubtful(stretch, limit) is not { } doubt)
                {
                    continue;
                }

                var fine = 2 * stretch.Half <= Resolution || tests >= MostTests;
                if (doubt.Parts is { } parts && (fine || parts.Apart.Signed <= limit))
                {
                    var u = fine ? stretch.From : stretch.Middle;
                    found = found?.U <= u ? found : new(u, parts);
                    if (fine)
                    {
                        continue;
                    }
                }

                Split(waiting, stretch, fine ? doubt with { ByInterval = false } : doubt);
            }

            return found is { } f ? f with { Parts = At(f) } : null;
        }

        public Moment? Least(double tolerance, double upperBound, double from, double to)
        {
            Moment? found = null;
            var least = upperBound;
            var waiting = new Stack<Stretch>();
            waiting.Push(new(0, 0, from, to, default));
            while (waiting.TryPop(out var stretch))
            {
                if (Doubtful(stretch, least - tolerance) is not { } doubt)
                {
                    continue;
                }

                if (doubt.Parts is { } parts && parts.Apart.Signed < least)
                {
                    least = parts.Apart.Signed;
                    found = new(stretch.Middle, parts);
                }

                if (doubt.Parts is null || stretch.Half > 0)
                {
                    Split(waiting, stretch, doubt);
                }
            }

            return found;
        }

        // Null when the pair is proved farther apart than the limit all through the stretch.
        private Doubt? Doubtful(in Stretch stretch, double limit)
        {
            ref readonly var a = ref first[stretch.A];
            ref readonly var b = ref second[stretch.B];
            var frame = motion.At(stretch.Middle);
            var roaming = motion.Speed(b.Ball, stretch.From, stretch.To) * stretch.Half;
            if (a.Ball.GapTo(b.Ball.In(frame)) - roaming > limit)
            {
                return null;
            }

            if (!a.IsLeaf || !b.IsLeaf)
            {
                return new(null, roaming > a.Ball.Radius + b.Ball.Radius, 0);
            }

            var s = ConvexDistance.Search(
                first.Pieces[a.Piece], second.Pieces[b.Piece], frame, stretch.Guess, limit + roaming, out var farther);
            if (farther)
            {
                return null;
            }

            var speed = motion.SpeedAlong(s.Normal, first.Pieces[a.Piece], second.Pieces[b.Piece], stretch.From, stretch.To);
            var over = s.AlongNormal - limit;
            return over > speed * stretch.Half ? null : new(new(s, a.Piece, b.Piece), true, Math.Max(0, over) / Math.Max(speed, double.Epsilon));
        }

        private void Split(Stack<Stretch> waiting, in Stretch stretch, in Doubt doubt)
        {
            ref readonly var a = ref first[stretch.A];
            ref readonly var b = ref second[stretch.B];
            if (doubt.ByInterval)
            {
                var guess = doubt.Parts?.Apart.Normal ?? default;
                waiting.Push(stretch with { From = stretch.Middle + doubt.Safe, Guess = guess });
                waiting.Push(stretch with { To = stretch.Middle - doubt.Safe, Guess = guess });
            }
            else if (b.IsLeaf || (!a.IsLeaf && a.Ball.Radius >= b.Ball.Radius))
            {
                waiting.Push(stretch with { A = a.Left });
                waiting.Push(stretch with { A = a.Left + 1 });
            }
            else
            {
                waiting.Push(stretch with { B = b.Left });
                waiting.Push(stretch with { B = b.Left + 1 });
            }
        }

        // The separation at the moment itself, which need not be the middle of the stretch it was found in.
        private PartSeparation At(in Moment m) => m.Parts with
        {
            Apart = ConvexDistance.Between(first.Pieces[m.Parts.FirstPiece], second.Pieces[m.Parts.SecondPiece], motion.At(m.U)),
        };
    }
}
