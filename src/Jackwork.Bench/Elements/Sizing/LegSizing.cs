using Jackwork.Bench.Sessions;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Linkages;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.Sizing;

/// <summary>What is asked of a leg that is the coupler of a crank and a slide, and the sizes that give it: see <see cref="LegSizes"/>.</summary>
/// <param name="Stride">The foot's step, square to the slide, mm.</param>
/// <param name="Lift">How far the foot rises and falls, mm.</param>
/// <param name="Length">From the crank's pin to the foot, mm.</param>
internal readonly record struct LegSizing(double Stride, double Lift, double Length)
{
    /// <summary>The crank and slide of a coupler; null where that is none of such.</summary>
    public static CrankSlide? Site(Work work, int coupler) => work.Machine.Drives[coupler] is CouplerDrive c ? CrankSlide.Of(work, c.Of) : null;

    /// <summary>What the leg does as drawn, its line taken through the axis; with no point yet, a foot half as far beyond the slide as the crank is before it.</summary>
    /// <param name="at">Its crank and slide.</param>
    /// <param name="point">The coupler's point, if it has one.</param>
    public static LegSizing Of(CrankSlide at, Point3? point)
    {
        var (r, b) = (at.Crank.Length, at.Length);
        var e = point is { } p ? (at.Flat(p) - at.Pin).Length : b / 2;
        return new(2 * r * e / b, 2 * r, b + e);
    }

    /// <summary>The sizes; null where no leg of that length does it.</summary>
    public LegSizes? Sizes => LegSizes.For(Stride, Lift, Length);

    /// <summary>The design with these sizes: crank, guided pin in line with the shaft, and foot in line with both pins.</summary>
    public TextEdit Put(CrankSlide at, string text) => Sizes is { } s
        ? at.Put(text, s.Throw, s.Upper, 0, (crank, pin) => pin + s.Lower / s.Upper * (pin - crank))
        : TextEdit.Refused(text, FormattableString.Invariant($"no leg of {Length} mm steps {Stride} mm far and lifts its foot by {Lift} mm"));
}
