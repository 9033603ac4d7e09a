using Jackwork.Design;
using Jackwork.Motion;

namespace Jackwork.Bench.Chart;

/// <summary>What of a move is taken hold of.</summary>
internal enum Hold
{
    /// <summary>Its beginning.</summary>
    From,

    /// <summary>Its end.</summary>
    To,

    /// <summary>The whole move, earlier or later.</summary>
    Along,

    /// <summary>The position it goes to.</summary>
    Height,
}

/// <summary>Changes to a move, as changes to the design's text.</summary>
internal static class MoveEdit
{
    /// <summary>Shortest move that a drag leaves, degrees.</summary>
    private const double Shortest = 1;

    /// <summary>The text after a drag of a move; null where the move can't be found in the text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="machine">The machine it makes, or that it made before the last steps of the drag.</param>
    /// <param name="member">Name of the acted member.</param>
    /// <param name="index">The move, from 0.</param>
    /// <param name="hold">What was dragged.</param>
    /// <param name="to">Where to: degrees of the shaft, or the member's unit for a height. Held back by the moves before and after.</param>
    public static string? Drag(string text, Machine machine, string member, int index, Hold hold, double to)
    {
        var acted = machine.Acted.First(a => machine.NameOf(a.Member) == member);
        var marks = MoveMark.Of(machine, acted);
        if (marks.FirstOrDefault(m => m.Index == index) is not { } mark)
        {
            return null;
        }

        if (hold == Hold.Height)
        {
            return mark.Move.By is not null ? Set(text, member, index, "by", to - mark.Start) : Set(text, member, index, "reach", to);
        }

        var (least, most) = Room(marks, mark);
        var length = mark.To - mark.From;
        var (from, end) = hold switch
        {
            Hold.From => (Math.Clamp(to, Math.Max(0, least), mark.To - Shortest), mark.To),
            Hold.To => (mark.From, Math.Clamp(to, mark.From + Shortest, Math.Min(most, mark.From + 360))),
            _ => (Math.Clamp(to, Math.Max(0, least), Math.Max(Math.Max(0, least), Math.Min(359, most - length))), 0),
        };
        if (hold == Hold.Along)
        {
            end = from + length;
        }

        // Written also where the machine has it so: during a drag the text is often ahead of the machine.
        var moved = hold == Hold.To ? text : Set(text, member, index, "from", from);
        return moved is null || hold == Hold.From ? moved : Set(moved, member, index, "to", end);
    }

    /// <summary>Where a key of a move stands in the design; the move counts from 0.</summary>
    public static string PathOf(string member, int index, string key) => FormattableString.Invariant($"timing.{member}.moves.{index + 1}.{key}");

    /// <summary>A number as the text writes it: at most three decimals.</summary>
    public static string Number(double value) => DesignText.Number(value, 3);

    private static string? Set(string text, string member, int index, string key, double value)
    {
        var edit = DesignText.Set(text, PathOf(member, index, key), Number(value));
        return edit.IsDone ? edit.Text : null;
    }

    // From the end of the move before to the beginning of the move after, once round.
    private static (double Least, double Most) Room(IReadOnlyList<MoveMark> marks, MoveMark mark)
    {
        if (marks.Count == 1)
        {
            return (mark.From - 360, mark.From + 360);
        }

        var order = marks.OrderBy(m => m.From).ToList();
        var i = order.IndexOf(mark);
        var before = i > 0 ? order[i - 1].To : order[^1].To - 360;
        var after = i < order.Count - 1 ? order[i + 1].From : order[0].From + 360;
        return (before, after);
    }
}
