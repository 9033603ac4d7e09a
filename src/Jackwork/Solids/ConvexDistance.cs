using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Distance of two convex pieces, or the depth of their overlap.</summary>
/// <remarks>
/// The distance is |v| for the point v of A - B nearest the origin. Each step takes the support point w of A - B against v:
///   v . w / |v| &lt;= distance &lt;= |v|,
/// then replaces v by the nearest point of the hull of w and the few points kept (E. G. Gilbert, D. W. Johnson, S. S. Keerthi,
/// A fast procedure for computing the distance between complex objects in three-dimensional space, IEEE Journal of Robotics and
/// Automation 4 (1988)). It ends when the two bounds meet or rounding forbids a better v. Overlapping cores go on to
/// <see cref="Expansion"/>. Errors: polytopes to rounding (1e-9 mm at sizes of 1 m), curved faces to 1e-6 mm; each result says
/// the bound it reached.
/// </remarks>
public static class ConvexDistance
{
    /// <summary>The two bounds of polytopes have met when they differ by no more than this, mm: rounding at sizes of 1 m.</summary>
    private const double FlatMetMm = 1e-10;

    /// <summary>The same where a face is curved, mm: a hundredth of the error allowed.</summary>
    private const double CurvedMetMm = 1e-8;

    /// <summary>Cores nearer than this, mm, count as touching: v is then too short to have a direction, and the expansion finds the normal.</summary>
    private const double TouchMm = 1e-9;

    /// <summary>Steps before the search gives the bounds it has; curved faces need 10 to 30, polytopes up to 15.</summary>
    private const int MostSteps = 100;

    /// <summary>A depth whose bound, mm, is above this has its direction improved: the error allowed on curved faces.</summary>
    private const double SharpMm = 1e-6;

    /// <summary>Share of the depth by which pieces are moved farther apart than to touch, to improve the direction of the depth.</summary>
    private const double ApartShare = 0.01;

    /// <summary>Distance or depth of <paramref name="first"/> and <paramref name="second"/>, each carried by its frame; seen from outside the frames.</summary>
    public static Separation Between(ConvexPiece first, in Frame firstFrame, ConvexPiece second, in Frame secondFrame) =>
        Between(first, second, firstFrame.See(secondFrame)).In(firstFrame);

    /// <summary>Distance or depth, all seen from the first piece's frame.</summary>
    /// <param name="first">First piece.</param>
    /// <param name="second">Second piece.</param>
    /// <param name="secondInFirst">Frame of the second as seen from the frame of the first.</param>
    /// <param name="guess">The normal expected, such as the last one found nearby; any length; zero for none. It only saves time.</param>
    public static Separation Between(ConvexPiece first, ConvexPiece second, in Frame secondInFirst, Vec3 guess = default)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return Search(first, second, secondInFirst, guess, double.PositiveInfinity, out _);
    }

    /// <summary>Whether the pieces are more than <paramref name="limit"/> mm apart; cheaper than the distance.</summary>
    public static bool IsFartherThan(double limit, ConvexPiece first, ConvexPiece second, in Frame secondInFirst, Vec3 guess = default)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return first.Ball.GapTo(second.Ball.In(secondInFirst)) > limit
            || Search(first, second, secondInFirst, guess, limit, out var farther).Signed > limit
            || farther;
    }

    /// <summary>As Between, but gives up as soon as the distance is proved to exceed <paramref name="limit"/> mm.</summary>
    /// <remarks>When it gave up, <c>farther</c> is true and the rest of the result is unfinished.</remarks>
    internal static Separation Search(
        ConvexPiece first, ConvexPiece second, in Frame secondInFirst, Vec3 guess, double limit, out bool farther)
    {
        var margin = first.Margin + second.Margin;
        var difference = new Difference(first, second, in secondInFirst);
        var direction = guess == default ? secondInFirst.Apply(second.Ball.Centre) - first.Ball.Centre : guess;
        if (direction == default)
        {
            direction = new(0, 1, 0);
        }

        direction = direction.Unit();
        var simplex = default(Simplex);
        var met = difference.IsPolytope ? FlatMetMm : CurvedMetMm;
        var (lower, upper) = (double.NegativeInfinity, double.PositiveInfinity);
        farther = false;
        for (var step = 0; ; step++)
        {
            var w = difference.Support(direction, out var onA);
            lower = -direction.Dot(w);
            if (lower - margin > limit)
            {
                farther = true;
                break;
            }

            if (upper - lower <= met || step == MostSteps || simplex.Holds(w))
            {
                break;
            }

            var before = simplex;
            simplex.Add(w, onA);
            var holds = simplex.Reduce();
            var length = simplex.Nearest.Length;
            if (holds || length <= TouchMm)
            {
                return Overlap(difference, simplex, first, second, secondInFirst);
            }

            if (length >= upper)
            {
                // Rounding: the new point brings nothing nearer.
                simplex = before;
                break;
            }

            upper = length;
            direction = (-1 / length) * simplex.Nearest;
        }

        if (simplex.Count == 0)
        {
            // Given up on the first support point already.
            return new(lower - margin, direction, first.Ball.Centre, secondInFirst.Apply(second.Ball.Centre), lower - margin, 0);
        }

        direction = (-1 / upper) * simplex.Nearest;
        var a = simplex.NearestOnA();
        var b = a - simplex.Nearest;
        return new(
            upper - margin,
            direction,
            default(Point3) + (a + first.Margin * direction),
            default(Point3) + (b - second.Margin * direction),
            lower - margin,
            Math.Max(0, upper - lower));
    }

    private static Separation Overlap(
        in Difference difference, in Simplex simplex, ConvexPiece first, ConvexPiece second, in Frame secondInFirst)
    {
        var deep = Expansion.Of(difference, simplex);
        if (deep.Gap > SharpMm)
        {
            deep = Sharpened(deep, difference, first, second, secondInFirst);
        }

        return new(
            -deep.Height - first.Margin - second.Margin,
            deep.Normal,
            default(Point3) + (deep.OnA + first.Margin * deep.Normal),
            default(Point3) + (deep.OnA - (deep.Height + second.Margin) * deep.Normal),
            -deep.Height - first.Margin - second.Margin,
            deep.Gap);
    }

    /// <summary>Improves the direction of a depth where the expansion ran out of points, as it does on wide curved faces.</summary>
    /// <remarks>
    /// Moved apart by s = (h(n) + e) n, the pieces are at least e apart; let the distance be d with the normal n'. Then
    /// h(n') = n' . s - d &lt;= |s| - e = h(n), so the depth can only get less, until n' = n. Over a face with the radius of curvature R
    /// the error of n shrinks by (h + e)/(R + e) each time.
    /// </remarks>
    private static Expansion.Depth Sharpened(
        Expansion.Depth deep, in Difference difference, ConvexPiece first, ConvexPiece second, in Frame secondInFirst)
    {
        for (var step = 0; step < MostSteps; step++)
        {
            var apart = (deep.Height + ApartShare * deep.Height + SharpMm) * deep.Normal;
            var s = Search(first, second, secondInFirst with { Origin = secondInFirst.Origin + apart }, deep.Normal, double.PositiveInfinity, out _);
            var height = s.Normal.Dot(difference.Support(s.Normal, out _));
            var gain = deep.Height - height;
            if (gain <= 0)
            {
                break;
            }

            var onA = s.OnFirst - default(Point3) - first.Margin * s.Normal;
            deep = new(height, s.Normal, onA, Math.Max(0, deep.Gap - gain));
            if (gain < CurvedMetMm)
            {
                break;
            }
        }

        return deep;
    }
}
