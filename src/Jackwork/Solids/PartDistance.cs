namespace Jackwork.Solids;

/// <summary>Distance of two parts made of many pieces.</summary>
/// <remarks>
/// Pairs of nodes are taken nearest first, depth first; a pair whose balls are farther apart than the best found is passed over,
/// and a piece distance is given up once proved greater. Exactly the least over all pairs of pieces is found.
/// </remarks>
public static class PartDistance
{
    /// <summary>Pairs that can wait at once: each step down adds one, and no tree of 2^31 pieces is deeper than 32 a side.</summary>
    private const int Waiting = 66;

    /// <summary>The nearest pair, seen from outside the frames; null when the parts are at least <paramref name="upperBound"/> mm apart.</summary>
    public static PartSeparation? Between(
        PieceSet first, in Frame firstFrame, PieceSet second, in Frame secondFrame, double upperBound = double.PositiveInfinity) =>
        Between(first, second, firstFrame.See(secondFrame), upperBound) is { } found
            ? found with { Apart = found.Apart.In(firstFrame) }
            : null;

    /// <summary>The nearest pair, seen from the first part's frame; null when the parts are at least <paramref name="upperBound"/> mm apart.</summary>
    public static PartSeparation? Between(
        PieceSet first, PieceSet second, in Frame secondInFirst, double upperBound = double.PositiveInfinity)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        PartSeparation? best = null;
        var least = upperBound;
        Span<(int A, int B, double Gap)> waiting = stackalloc (int, int, double)[Waiting];
        waiting[0] = (0, 0, double.NegativeInfinity);
        for (var count = 1; count > 0;)
        {
            var (i, j, gap) = waiting[--count];
            if (gap >= least)
            {
                continue;
            }

            ref readonly var a = ref first[i];
            ref readonly var b = ref second[j];
            if (a.IsLeaf && b.IsLeaf)
            {
                var apart = ConvexDistance.Search(
                    first.Pieces[a.Piece], second.Pieces[b.Piece], secondInFirst, default, least, out var farther);
                if (!farther && apart.Signed < least)
                {
                    least = apart.Signed;
                    best = new(apart, a.Piece, b.Piece);
                }

                continue;
            }

            var splitA = b.IsLeaf || (!a.IsLeaf && a.Ball.Radius >= b.Ball.Radius);
            var (left, right) = splitA ? ((a.Left, j), (a.Left + 1, j)) : ((i, b.Left), (i, b.Left + 1));
            var near = (left.Item1, left.Item2, Gap: first[left.Item1].Ball.GapTo(second[left.Item2].Ball.In(secondInFirst)));
            var far = (right.Item1, right.Item2, Gap: first[right.Item1].Ball.GapTo(second[right.Item2].Ball.In(secondInFirst)));
            if (far.Gap < near.Gap)
            {
                (near, far) = (far, near);
            }

            waiting[count++] = far;
            waiting[count++] = near;
        }

        return best;
    }
}
