using Jackwork.Design;
using Jackwork.Linkages;

namespace Jackwork.Bench.Elements.Sizing;

/// <summary>What is asked of a slide on a crank, and the sizes that give it: see <see cref="SliderCrank"/>.</summary>
/// <param name="Stroke">Stroke, mm.</param>
/// <param name="Ratio">Time of the slower stroke over that of the quicker.</param>
/// <param name="Rod">Length of the rod between its pins, mm.</param>
/// <param name="SlowOut">Whether the slower stroke is that away from the shaft; with a ratio of 1 it does not count.</param>
internal readonly record struct SlideSizing(double Stroke, double Ratio, double Rod, bool SlowOut)
{
    /// <summary>What a slide does as drawn; null where its crank can't go round.</summary>
    public static SlideSizing? Of(CrankSlide at) => at.Sizes is { } s
        ? new(s.Stroke, s.TimeRatio, double.Hypot(s.Rod, at.Aside), at.Pin.Y * at.Way < 0)
        : null;

    /// <summary>The sizes; null where such a rod gives none.</summary>
    public SliderCrank? Sizes(CrankSlide at) => Math.Abs(at.Aside) < Rod ? SliderCrank.For(Stroke, Ratio, Math.Sqrt(Rod * Rod - at.Aside * at.Aside)) : null;

    /// <summary>The design with these sizes.</summary>
    /// <remarks>With the line to the left of a shaft that goes counter-clockwise, the longer way of the crank is from the far dead centre to the near one.</remarks>
    public TextEdit Put(CrankSlide at, string text) => Sizes(at) is { } s
        ? at.Put(text, s.Crank, s.Rod, (SlowOut ? -1 : 1) * at.Way * s.Offset)
        : TextEdit.Refused(text, FormattableString.Invariant($"no crank gives a stroke of {Stroke} mm with a quick return of {Ratio} on a rod of {Rod} mm"));
}
