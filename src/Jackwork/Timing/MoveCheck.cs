using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>What is sound about a move taken by itself, so that later checks know what they may rely on.</summary>
/// <param name="Angles">It begins and ends at usable shaft angles.</param>
/// <param name="Target">It says once where it goes.</param>
/// <param name="Shape">Its law, beats, points and speeds fit together.</param>
internal readonly record struct MoveCheck(bool Angles, bool Target, bool Shape)
{
    private const double Turn = 360;

    /// <summary>Checks the move with index <paramref name="i"/> and reports all that is wrong with it.</summary>
    public static MoveCheck Of(int i, MoveSpec m, ProblemSink problems)
    {
        bool Sound(Action<int, MoveSpec, ProblemSink> check)
        {
            var before = problems.Count;
            check(i, m, problems);
            return problems.Count == before;
        }

        if (!Sound(CheckFigures))
        {
            return default;
        }

        var (angles, target) = (Sound(CheckAngles), Sound(CheckTarget));
        var shape = Sound(CheckLaw) & Sound(CheckSpeeds) & Sound(BeatsCheck.Check) & Sound(CheckPointsUse);
        if (angles)
        {
            shape &= Sound(BeatsCheck.CheckRoom) & Sound(CheckPointsPlace);
        }

        return new(angles, target, shape);
    }

    private static void CheckFigures(int i, MoveSpec m, ProblemSink problems)
    {
        void Check(string key, double? value, string unit) => problems.CheckFigure(i, $"Move {i + 1} has {key}", key, value ?? 0, unit);

        Check("from", m.From, "deg");
        Check("to", m.To, "deg");
        Check("reach", m.Reach, problems.Unit);
        Check("by", m.By, problems.Unit);
        Check("hold", m.Hold, "deg");
        Check("pause", m.Pause, "deg");
        Check("speed-in", m.SpeedIn, problems.SpeedUnit);
        Check("speed-out", m.SpeedOut, problems.SpeedUnit);
        foreach (var (deg, value) in m.Points)
        {
            Check("a point's angle", deg, "deg");
            Check("a point's position", value, problems.Unit);
        }
    }

    private static void CheckAngles(int i, MoveSpec m, ProblemSink problems)
    {
        if (m.From is < 0 or >= Turn)
        {
            var inside = m.From - Turn * Math.Floor(m.From / Turn);
            problems.Add(i, $"Move {i + 1} begins at {ProblemSink.N(m.From)} deg, outside 0 to 360 deg.", $"Write from {ProblemSink.N(inside)}, the same angle within the turn.");
        }

        var length = m.To - m.From;
        if (length <= 0)
        {
            problems.Add(i, $"Move {i + 1} ends at {ProblemSink.N(m.To)} deg, not after its beginning at {ProblemSink.N(m.From)} deg.", $"Give to above {ProblemSink.N(m.From)}; a move that runs on into the next turn ends past 360, here at {ProblemSink.N(m.To + Turn)}.");
        }
        else if (length <= ChartCompiler.ShortestStroke)
        {
            problems.Add(i, $"Move {i + 1} lasts {ProblemSink.N(length)} deg, too short to follow.", $"Let it last more than {ProblemSink.N(ChartCompiler.ShortestStroke)} deg.");
        }
        else if (length > Turn + ChartCompiler.SameAngle)
        {
            problems.Add(i, $"Move {i + 1} lasts {ProblemSink.N(length)} deg, more than a turn of 360 deg.", $"Let it end by {ProblemSink.N(m.From + Turn)} deg.");
        }
    }

    private static void CheckTarget(int i, MoveSpec m, ProblemSink problems)
    {
        var given = (m.Reach is null ? 0 : 1) + (m.By is null ? 0 : 1) + (m.ToRest ? 1 : 0);
        if (given == 0)
        {
            problems.Add(i, $"Move {i + 1} does not say where it goes.", $"Give reach (a position, or rest) or by (a distance), in {problems.Unit}.");
        }
        else if (given > 1)
        {
            problems.Add(i, $"Move {i + 1} says in {given} ways where it goes.", "Keep one of reach and by.");
        }
    }

    private static void CheckLaw(int i, MoveSpec m, ProblemSink problems)
    {
        if (!MotionLaws.Names.Contains(m.Law))
        {
            problems.Add(i, $"Move {i + 1} has the unknown law '{m.Law}'.", (Spelling.Nearest(m.Law, MotionLaws.Names) is { } near ? $"Did you mean '{near}'? " : "") + $"The laws are {string.Join(", ", MotionLaws.Names)}.");
        }
    }

    private static void CheckSpeeds(int i, MoveSpec m, ProblemSink problems)
    {
        if (MotionLaws.Find(m.Law) is not null && (m.SpeedIn ?? m.SpeedOut) is { } speed)
        {
            problems.Add(i, $"Move {i + 1} gives an end speed of {ProblemSink.N(speed)} {problems.SpeedUnit}, which the law '{m.Law}' cannot follow.", "Give it the law 'quintic', or leave the speed out.");
        }
    }

    private static void CheckPointsUse(int i, MoveSpec m, ProblemSink problems)
    {
        if (m.Law == MotionLaws.Curve && m.Points.Count == 0)
        {
            problems.Add(i, $"Move {i + 1} has the law 'curve' but 0 points.", "Give at least 1 point [shaft angle, position] for it to run through, or the law 'quintic'.");
        }
        else if (m.Law != MotionLaws.Curve && m.Points.Count > 0 && MotionLaws.Names.Contains(m.Law))
        {
            problems.Add(i, $"Move {i + 1} has {m.Points.Count} points, which the law '{m.Law}' does not use.", "Give it the law 'curve', or leave the points out.");
        }
    }

    private static void CheckPointsPlace(int i, MoveSpec m, ProblemSink problems)
    {
        var previous = m.From;
        foreach (var (deg, _) in m.Points)
        {
            if (deg <= m.From + ChartCompiler.SameAngle || deg >= m.To - ChartCompiler.SameAngle)
            {
                problems.Add(i, $"Move {i + 1} has a point at {ProblemSink.N(deg)} deg, not between its ends.", $"Put it above {ProblemSink.N(m.From)} and below {ProblemSink.N(m.To)} deg; past 360 the count goes on.");
            }
            else if (deg <= previous + ChartCompiler.SameAngle)
            {
                problems.Add(i, $"Move {i + 1} has a point at {ProblemSink.N(deg)} deg after one at {ProblemSink.N(previous)} deg.", "Give the points in rising order of the shaft angle, each angle once.");
            }

            previous = Math.Max(previous, deg);
        }
    }
}
