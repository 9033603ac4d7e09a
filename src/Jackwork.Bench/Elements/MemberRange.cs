using Jackwork.Bench.Chart;
using Jackwork.Bench.Sessions;

namespace Jackwork.Bench.Elements;

/// <summary>How far a member goes over the performance, and how fast at the design's crank speed.</summary>
internal static class MemberRange
{
    /// <summary>Its range in words, in its unit from the pose as drawn; of a shaft its turns.</summary>
    public static string Words(Work work, int member)
    {
        if (work.Machine.Turns[member] is { } turns)
        {
            var (n, d) = (turns.Abs().Numerator, turns.Denominator);
            return $"round {(n == 1 ? "once" : $"{n} times")} {(d == 1 ? "a turn" : $"in {d} turns")}";
        }

        var (least, most, _) = Of(work, member);
        return $"{Svg.Read(least)} to {Svg.Read(most)}{Unit(work, member)}";
    }

    /// <summary>Its greatest speed in words.</summary>
    public static string Speed(Work work, int member) => $"{Svg.Read(Of(work, member).Speed)}{Unit(work, member)} a second at its fastest";

    private static string Unit(Work work, int member) => work.Machine.Members[member].Unit == "deg" ? "\u00b0" : " mm";

    private static (double Least, double Most, double Speed) Of(Work work, int member)
    {
        var unit = work.Machine.Members[member].UnitSize;
        var (least, most, speed) = (double.MaxValue, double.MinValue, 0.0);
        foreach (var q in work.Proof.Motion.Of(member))
        {
            (least, most, speed) = (Math.Min(least, q.Value), Math.Max(most, q.Value), Math.Max(speed, Math.Abs(q.First)));
        }

        return (least / unit, most / unit, speed * work.Machine.CrankSpeed / unit);
    }
}
