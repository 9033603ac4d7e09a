using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>Checks the strokes, holds and pauses of a move.</summary>
internal static class BeatsCheck
{
    /// <summary>What can be told without the move's angles.</summary>
    public static void Check(int i, MoveSpec m, ProblemSink problems)
    {
        CheckDwell(i, "hold", m.Hold, m.Beats, problems);
        CheckDwell(i, "pause", m.Pause, m.Beats, problems);
        if (m.Beats is not { } n)
        {
            return;
        }

        if (n < 1)
        {
            problems.Add(i, $"Move {i + 1} has {n} beats.", "Give 1 or more, or leave beats out for a single move.");
        }

        if (m.Law == MotionLaws.Curve)
        {
            problems.Add(i, $"Move {i + 1} has {n} beats of the law 'curve', whose points fit one single move.", "Leave beats out, or give it a law without points.");
        }

        if (m.Law == MotionLaws.Drop)
        {
            problems.Add(i, $"Move {i + 1} has {n} beats of the law 'drop', but a stroke back can't fall.", "Give each rise and each drop as a move of its own.");
        }

        if (MotionLaws.Find(m.Law) is null && (m.SpeedIn ?? m.SpeedOut) is { } speed)
        {
            problems.Add(i, $"Move {i + 1} has {n} beats and an end speed of {ProblemSink.N(speed)} {problems.SpeedUnit}, but beats begin and end at rest.", "Leave the speed out.");
        }
    }

    /// <summary>Whether holds and pauses leave the strokes any angle to move in; the move's angles are sound.</summary>
    public static void CheckRoom(int i, MoveSpec m, ProblemSink problems)
    {
        if (m.Beats is { } n && n >= 1 && m.Hold >= 0 && m.Pause >= 0 && PlacedMove.StrokeOf(m) <= ChartCompiler.ShortestStroke)
        {
            var dwells = n * m.Hold + (n - 1) * m.Pause;
            problems.Add(i, $"Move {i + 1} spends {ProblemSink.N(dwells)} deg on the holds and pauses of its {n} beats and lasts {ProblemSink.N(m.To - m.From)} deg, so no angle is left to move in.", "Shorten hold or pause, give fewer beats, or let the move last longer.");
        }
    }

    private static void CheckDwell(int i, string name, double value, int? beats, ProblemSink problems)
    {
        if (value < 0)
        {
            problems.Add(i, $"Move {i + 1} has a {name} of {ProblemSink.N(value)} deg.", $"Give a {name} of 0 deg or more.");
        }
        else if (value > 0 && beats is null)
        {
            problems.Add(i, $"Move {i + 1} has a {name} of {ProblemSink.N(value)} deg but no beats.", $"Give beats, or leave {name} out: between moves the member dwells anyway.");
        }
    }
}
