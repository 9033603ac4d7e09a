using Jackwork.Design;

namespace Jackwork.Gears;

/// <summary>A wheel of a machine of which the design asks for a sector only.</summary>
/// <param name="Member">Index of the member that carries it.</param>
/// <param name="Spec">What the design says of it.</param>
/// <param name="Contact">How its teeth touch the mate's.</param>
/// <param name="Least">Least turn over the performance, rad from the pose as drawn.</param>
/// <param name="Most">Greatest turn over the performance, rad.</param>
public sealed record SectorWork(int Member, SectorSpec Spec, ToothContact Contact, double Least, double Most)
{
    /// <summary>By how much more than the hub a boss is thick unless given, mm (common practice, no source).</summary>
    private const double BossBeyondHub = 6;

    /// <summary>Teeth beyond those that touch, at either end (common practice, no source): where the wheels are put together a little off, they serve.</summary>
    private const int RunOut = 1;

    /// <summary>The sector; null where the wheel is cut whole.</summary>
    public GearSector? Sector { get; private init; }

    /// <summary>Why the wheel is cut whole, a sentence without a full stop; null where it is cut as a sector.</summary>
    public string? Whole { get; private init; }

    /// <summary>Diameter of its hub, mm.</summary>
    public double Hub { get; private init; }

    /// <summary>Diameter of its boss, mm.</summary>
    public double Boss { get; private init; }

    /// <summary>Least turn that its teeth are cut for, rad.</summary>
    public double From => Spec.From is { } deg ? deg * Math.PI / 180 : Least;

    /// <summary>Greatest turn that its teeth are cut for, rad.</summary>
    public double To => Spec.To is { } deg ? deg * Math.PI / 180 : Most;

    /// <summary>Teeth that touch the mate's anywhere in the performance.</summary>
    public int Needed => Contact.Touching(Least, Most) is var (first, last) ? last - first + 1 : 0;

    /// <summary>Whether the design's limits leave out turns that the performance makes.</summary>
    public bool IsOverrun => Least < From - Rounding || Most > To + Rounding;

    /// <summary>Turns nearer than this are the same, rad: a thousandth of a degree, far below any backlash.</summary>
    private const double Rounding = 1e-3 * Math.PI / 180;

    /// <summary>How many teeth it is short of at a turn, rad; 0 where its teeth hold the mate, or where it is whole.</summary>
    public int Missing(double q) => Sector is { } s ? Contact.Missing(s.First, s.Last, q) : 0;

    /// <summary>The wheel with its sector, or why it is cut whole.</summary>
    /// <param name="gear">The whole wheel.</param>
    /// <param name="hub">Diameter of its hub, mm.</param>
    /// <param name="cutter">Diameter of the cutter, mm.</param>
    internal SectorWork Cut(SpurGear gear, double hub, double cutter)
    {
        var boss = Spec.Boss ?? hub + BossBeyondHub;
        var (first, last) = Contact.Touching(From, To);
        (first, last) = (first - RunOut, last + RunOut);
        var most = GearSector.MostTeeth(gear, boss / 2);
        var made = this with { Hub = hub, Boss = boss };
        if (most < 1)
        {
            return made with { Whole = FormattableString.Invariant($"its boss of {boss:0.##} mm leaves no plate within the gaps of the teeth, which reach to {2 * gear.RootRadius:0.##} mm") };
        }

        if (last < first || last - first >= most)
        {
            return made with { Whole = FormattableString.Invariant($"it turns over {(To - From) * 180 / Math.PI:0.#}°, which with the run-out takes {last - first + 1} teeth; a sector of this wheel can have {most}") };
        }

        try
        {
            return made with { Sector = GearSector.Of(gear, first, last, boss / 2, Spec.Rim is { } rim ? (rim, Spec.Arm ?? rim) : null, cutter) };
        }
        catch (ArgumentException e)
        {
            // Undercut cuts the teeth through, which the wheel's own sheet says as well.
            return made with { Whole = e.Message.Split(" (Parameter", 2)[0].TrimEnd('.') };
        }
    }
}
