using System.Collections.Immutable;
using static System.FormattableString;

namespace Jackwork.Shop.Timing;

/// <summary>What a whole performance shows, ready to be drawn: positions of the acted members and the rules between them.</summary>
public sealed record PerformanceChart
{
    /// <summary>A chart of at least one row.</summary>
    /// <param name="title">Title of the piece.</param>
    /// <param name="shaftName">The shaft whose degrees the chart is read in.</param>
    /// <param name="crankTurns">Turns of the crank in the performance, more than zero.</param>
    /// <param name="shaftTurns">Turns of the named shaft in the performance, more than zero.</param>
    /// <param name="rows">One a member, from top to bottom and from the middle outwards.</param>
    /// <param name="bands">When rules bind. Bands with the same text share one lane.</param>
    public PerformanceChart(string title, string shaftName, double crankTurns, double shaftTurns, ImmutableArray<ChartRow> rows, ImmutableArray<RuleBand> bands)
    {
        foreach (var (name, turns) in new[] { (nameof(crankTurns), crankTurns), (nameof(shaftTurns), shaftTurns) })
        {
            if (!(turns > 0 && double.IsFinite(turns)))
            {
                throw new ArgumentOutOfRangeException(name, Invariant($"A performance of {turns} turns cannot be drawn; it must have more than 0 turns."));
            }
        }

        if (rows.IsEmpty)
        {
            throw new ArgumentException("A chart needs at least 1 row; it was given 0.", nameof(rows));
        }

        (Title, ShaftName, CrankTurns, ShaftTurns, Rows, Bands) = (title, shaftName, crankTurns, shaftTurns, rows, bands);
    }

    /// <summary>Title of the piece.</summary>
    public string Title { get; }

    /// <summary>The shaft whose degrees the chart is read in.</summary>
    public string ShaftName { get; }

    /// <summary>Turns of the crank in the performance.</summary>
    public double CrankTurns { get; }

    /// <summary>Turns of the named shaft in the performance.</summary>
    public double ShaftTurns { get; }

    /// <summary>One row a member.</summary>
    public ImmutableArray<ChartRow> Rows { get; }

    /// <summary>When rules bind.</summary>
    public ImmutableArray<RuleBand> Bands { get; }

    /// <summary>The performance in words: turns of the crank, and of the named shaft.</summary>
    public string Extent => $"{Turns(CrankTurns)} of the crank · {Turns(ShaftTurns)} of {ShaftName}";

    /// <summary>A number of turns in words.</summary>
    internal static string Turns(double turns) => Invariant($"{turns:0.##} {(turns == 1 ? "turn" : "turns")}");

    /// <summary>The bands gathered into lanes, one a text.</summary>
    internal IReadOnlyList<IGrouping<string, RuleBand>> Lanes => [.. Bands.GroupBy(b => b.Text, StringComparer.Ordinal)];
}

/// <summary>A stretch of the performance, in turns of the crank from its start. One that ends before it begins runs on over the end.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public readonly record struct TurnSpan(double From, double To)
{
    /// <summary>The stretch as shares of a performance of <paramref name="turns"/> turns: it begins in 0 to 1 and is at most 1 long, so it may end beyond 1.</summary>
    public (double From, double To) Share(double turns)
    {
        var length = To < From ? To - From + turns : To - From;
        var from = From / turns - Math.Floor(From / turns);
        return (from, from + Math.Min(1, length / turns));
    }

    /// <summary>The same, cut in two where it runs over the end, so that all shares lie in 0 to 1.</summary>
    public IEnumerable<(double From, double To)> Shares(double turns)
    {
        var (from, to) = Share(turns);
        return to <= 1 ? [(from, to)] : [(from, 1), (0, to - 1)];
    }
}

/// <summary>A stretch in which a rule binds.</summary>
/// <param name="Span">The stretch.</param>
/// <param name="Text">What the rule asks.</param>
/// <param name="Broken">Whether the rule is broken somewhere in the stretch.</param>
public sealed record RuleBand(TurnSpan Span, string Text, bool Broken);
