using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Shop.Views;

/// <summary>Joins straight lines that follow on each other into runs, leaving out points that lie straight between their neighbours.</summary>
internal sealed class LineRuns
{
    /// <summary>Ends nearer to each other than this, mm, are joined.</summary>
    private const double Joined = 0.01;

    /// <summary>A point nearer than this, mm, to the line past it is left out.</summary>
    private const double Straight = 1e-5;

    private readonly List<ImmutableArray<Point2>> done = [];
    private readonly List<Point2> run = [];

    /// <summary>Adds a line.</summary>
    public void Add(Point2 from, Point2 to)
    {
        if (run.Count == 0 || run[^1].DistanceTo(from) > Joined)
        {
            End();
            run.Add(from);
        }
        else if (run.Count > 1 && GoesOn(run[^2], run[^1], to))
        {
            run.RemoveAt(run.Count - 1);
        }

        run.Add(to);
    }

    /// <summary>All runs, in the order of their first lines.</summary>
    public IReadOnlyList<ImmutableArray<Point2>> Done()
    {
        End();
        return done;
    }

    private void End()
    {
        if (run.Count > 0)
        {
            done.Add([.. run]);
            run.Clear();
        }
    }

    private static bool GoesOn(Point2 a, Point2 b, Point2 c)
    {
        var (along, next) = (c - a, c - b);
        return Math.Abs(along.Cross(next)) < Straight * along.Length && next.Dot(b - a) > 0;
    }
}
