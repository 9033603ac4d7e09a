namespace Jackwork.Solids;

/// <summary>The first touch of two moving parts, and the moment at which they are nearest.</summary>
/// <remarks>
/// At u the pieces are s apart along the normal n. With V the greatest speed along n over an interval,
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
    public const double Resolution = 1e-6;

    /// <summary>
    /// The first moment in [<paramref name="from"/>, <paramref name="to"/>] at which the distance is <paramref name="limit"/> mm or less; null when there is none.
    /// </summary>
    /// <remarks>
    /// Before U the parts are proved farther apart than the limit. At U the distance exceeds the limit by at most V * Resolution / 2,
    /// so a pass that only grazes the limit within that is reported too.
    /// </remarks>
    public static Moment? FirstTouch(
        PieceSet first, PieceSet second, IRelativeMotion motion, double limit, double from = 0, double to = 1)
    {
        Check(first, second, motion, from, to);
        var search = new Search(first, second, motion);
        return search.Earliest(limit, from, to);
    }

    /// <summary>
    /// The moment in [<paramref name="from"/>, <paramref name="to"/>] at which the parts are nearest; null when they stay at
    /// least <paramref name="upperBound"/> mm apart.
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

    /// <summary>A pair of nodes over an interval, waiting to be proved clear.</summary>
    private readonly record struct Task(int A, int B, double From, double To)
    {
        public double Middle => 0.5 * (From + To);

        public double Half => 0.5 * (To - From);
    }

    private readonly ref struct Search(PieceSet first, PieceSet second, IRelativeMotion motion)
    {
        // Earlier halves are taken first; a pair that touches bounds all others from above.
        public Moment? Earliest(double limit, double from, double to)
        {
            Moment? found = null;
            var latest = double.PositiveInfinity;
            var waiting = new Stack<Task>();
            waiting.Push(new(0, 0, from, to));
            while (waiting.TryPop(out var task))
            {
                if (task.From >= latest)
                {
                    continue;
                }

                var frame = motion.At(task.Middle);
                if (Clear(task, frame, limit, out var apart, out var coarse))
                {
                    continue;
                }

                if (apart is { } at && (at.Apart.Signed <= limit || 2 * task.Half <= Resolution) && task.Middle < latest)
                {
                    latest = 2 * task.Half <= Resolution ? task.From : task.Middle;
                    found = new(latest, at);
                }

                if (apart is null || 2 * task.Half > Resolution)
                {
                    Split(waiting, task, coarse && 2 * task.Half > Resolution);
                }
            }

            return found is { } f ? new(f.U, At(f)) : null;
        }

        public Moment? Least(double tolerance, double upperBound, double from, double to)
        {
            Moment? found = null;
            var least = upperBound;
            var waiting = new Stack<Task>();
            waiting.Push(new(0, 0, from, to));
            while (waiting.TryPop(out var task))
            {
                var frame = motion.At(task.Middle);
                var limit = found is null ? least : least - tolerance;
                if (Clear(task, frame, limit, out var apart, out var coarse))
                {
                    continue;
                }

                if (apart is { } at)
                {
                    if (at.Apart.Signed < least)
                    {
                        least = at.Apart.Signed;
                        found = new(task.Middle, at);
                    }

                    if (task.Half == 0)
                    {
                        continue;
                    }
                }

                Split(waiting, task, coarse);
            }

            return found;
        }

        // Whether the pair stays farther apart than the limit over the task; if not, the pieces' separation at its middle (leaves only),
        // and whether the interval rather than the balls is to be split.
        private bool Clear(in Task task, in Frame frame, double limit, out PartSeparation? apart, out bool coarse)
        {
            ref readonly var a = ref first[task.A];
            ref readonly var b = ref second[task.B];
            apart = null;
            var roaming = motion.Speed(b.Ball, task.From, task.To) * task.Half;
            var gap = a.Ball.GapTo(b.Ball.In(frame));
            coarse = a.IsLeaf && b.IsLeaf;
            if (gap - roaming > limit)
            {
                return true;
            }

            if (!coarse)
            {
                coarse = roaming > a.Ball.Radius + b.Ball.Radius;
                return false;
            }

            var s = ConvexDistance.Search(
                first.Pieces[a.Piece], second.Pieces[b.Piece], frame, default, limit + roaming, out var farther);
            if (farther || s.Signed - s.Gap - motion.SpeedAlong(s.Normal, b.Ball, task.From, task.To) * task.Half > limit)
            {
                return true;
            }

            apart = new(s, a.Piece, b.Piece);
            return false;
        }

        private void Split(Stack<Task> waiting, in Task task, bool interval)
        {
            ref readonly var a = ref first[task.A];
            ref readonly var b = ref second[task.B];
            if (interval || (a.IsLeaf && b.IsLeaf))
            {
                waiting.Push(task with { From = task.Middle });
                waiting.Push(task with { To = task.Middle });
            }
            else if (b.IsLeaf || (!a.IsLeaf && a.Ball.Radius >= b.Ball.Radius))
            {
                waiting.Push(task with { A = a.Left });
                waiting.Push(task with { A = a.Left + 1 });
            }
            else
            {
                waiting.Push(task with { B = b.Left });
                waiting.Push(task with { B = b.Left + 1 });
            }
        }

        // The separation at the moment itself, not at the middle of its interval.
        private PartSeparation At(in Moment m)
        {
            var s = ConvexDistance.Between(first.Pieces[m.Parts.FirstPiece], second.Pieces[m.Parts.SecondPiece], motion.At(m.U));
            return m.Parts with { Apart = s };
        }
    }
}
