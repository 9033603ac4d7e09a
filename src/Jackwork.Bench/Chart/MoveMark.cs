using Jackwork.Bench.Sessions;
using Jackwork.Design;
using Jackwork.Motion;
using Jackwork.Timing;

namespace Jackwork.Bench.Chart;

/// <summary>One move of an acted member as the chart shows it, in degrees of its shaft and the member's unit.</summary>
/// <param name="Index">Its number in the design, from 0.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends; above 360 where it runs on into the next turn.</param>
/// <param name="Start">Position before it.</param>
/// <param name="Target">Position it goes to.</param>
/// <param name="Move">As written.</param>
internal sealed record MoveMark(int Index, double From, double To, double Start, double Target, MoveText Move)
{
    /// <summary>Whether the position it goes to is its own to set, and not the chart's rest.</summary>
    public bool HasHeight => Move.Reach is { Word: null } || Move.By is not null;

    /// <summary>The moves of an acted member, in the order of the design.</summary>
    public static IReadOnlyList<MoveMark> Of(Machine machine, Acted acted)
    {
        var member = machine.Members[acted.Member];
        var moves = machine.Design.Timing!.First(t => t.Key == member.Name).Value.Moves;
        return
        [
            .. moves.Select((m, i) => acted.Chart.Pieces.FirstOrDefault(p => p.Kind == PieceKind.Move && p.MoveIndex == i) is { } first
                ? new MoveMark(i, m.From, m.To, first.Start / member.UnitSize, first.End / member.UnitSize, m)
                : null).OfType<MoveMark>(),
        ];
    }
}
