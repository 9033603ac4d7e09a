using System.Globalization;
using Jackwork.Bench.Sessions;
using Jackwork.Motion;

namespace Jackwork.Bench.Chart;

/// <summary>Where the moves of one acted member can be taken hold of in the chart of the whole performance: once for each turn of its shaft; nowhere on a shaft that turns a step at a time, over which no drag is even.</summary>
/// <param name="Rounds">Turns of its shaft in the performance.</param>
/// <param name="Marks">Its moves.</param>
internal sealed record RowGrips(int Rounds, IReadOnlyList<MoveMark> Marks)
{
    /// <summary>Degrees of the shaft in the whole performance.</summary>
    public double Degrees => 360.0 * Rounds;

    /// <summary>The grips of a row.</summary>
    /// <param name="work">What was worked out.</param>
    /// <param name="name">Name of the acted member.</param>
    /// <param name="crankTurns">Turns of the crank in the chart.</param>
    public static RowGrips Of(Work work, string name, double crankTurns)
    {
        var acted = work.Machine.Acted.First(a => work.Machine.NameOf(a.Member) == name);
        var rate = Math.Abs(work.Machine.Turns[acted.Shaft]!.Value.Value);
        return new((int)Math.Round(crankTurns * rate), ShaftTurn.IsEven(work.Machine.Drives, acted.Shaft) ? MoveMark.Of(work.Machine, acted) : []);
    }

    /// <summary>Each move in each round, as shares of the performance; what runs past its end is cut off there.</summary>
    public IEnumerable<(MoveMark Mark, double From, double To)> All() => Enumerable.Range(0, Rounds).SelectMany(round => Marks.Select(mark =>
        (mark, (mark.From + 360.0 * round) / Degrees, Math.Min(1, (mark.To + 360.0 * round) / Degrees))));

    /// <summary>Degrees of the shaft for a share of the performance divided by <paramref name="parts"/>, as attributes hold it.</summary>
    public string Per(double parts) => (Degrees / parts).ToString("0.#####", CultureInfo.InvariantCulture);
}
