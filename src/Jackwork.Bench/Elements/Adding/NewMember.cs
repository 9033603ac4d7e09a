using Jackwork.Bench.Elements.Adding.Starters;
using Jackwork.Bench.Sessions;
using Jackwork.Design;

namespace Jackwork.Bench.Elements.Adding;

/// <summary>A member to begin with: its joint and drive laid out by plain rules where the driver is and where there is room; the maker goes on from there.</summary>
/// <remarks>The sizes are a start, common practice, no source: levers of some 40 mm, cams with a base circle of 24 mm, wheels of module 2, or of what the design has or its cutter asks.</remarks>
internal static class NewMember
{
    /// <summary>What a member can be driven by.</summary>
    public static readonly IReadOnlyList<Starter> Starters =
    [
        CamStarter.Plate,
        CamStarter.Groove,
        CamStarter.Conjugate,
        CamStarter.Drop,
        new YokeStarter(),
        new BarrelStarter(),
        new EccentricStarter(),
        new RodStarter(),
        new CordStarter(),
        new CouplerStarter(),
        new SlotStarter(),
        new GuideStarter(),
        new SumStarter(),
        new GearStarter(),
        new SectorStarter(),
        new BevelStarter(),
        new WormStarter(),
        new BeltStarter(),
        new RackStarter(),
        new LanternStarter(),
        new PinWheelStarter(),
        new PegWheelStarter(),
        new IntermittentStarter(),
        new PartialGearStarter(),
        new GenevaStarter(),
        new RatchetStarter(),
        new DifferentialStarter(),
        new UniversalStarter(),
    ];

    /// <summary>The design's text with a new member in it; an acted one comes with a chart of two moves.</summary>
    /// <param name="work">The design as worked out.</param>
    /// <param name="text">Its text.</param>
    /// <param name="name">Name of the new member.</param>
    /// <param name="drive">What it shall be driven by: a key of <see cref="Starters"/>.</param>
    /// <param name="driver">Name of the driving member.</param>
    /// <param name="slides">Whether it slides instead of turning.</param>
    public static TextEdit Add(Work work, string text, string name, string drive, string driver, bool slides)
    {
        if (!Names.IsName(name))
        {
            return DesignText.Add(text, "members", name, "{}");
        }

        var (starter, site) = (Starters.First(s => s.Key == drive), new StartSite(work, driver) { Added = name });
        if (Refusal(starter, site, slides) is { } refusal)
        {
            return TextEdit.Refused(text, refusal);
        }

        var added = DesignText.Add(text, "members", name, starter.Text(site, slides));
        return added.IsDone ? starter.Finish(added, name, site, slides) : added;
    }

    /// <summary>The design's text with a chart for a member: out by a little and back, to begin with.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">The member.</param>
    /// <param name="shaft">The shaft whose turn it covers.</param>
    /// <param name="slides">Whether the member slides: then 8 mm out, else 10 degrees.</param>
    /// <param name="law">Law of the move back; null for the usual one.</param>
    public static TextEdit Chart(string text, string name, string shaft, bool slides, string? law = null) => DesignText.Add(
        text, "timing", name, $"{{over: {shaft}, moves: [{{from: 60, to: 150, reach: {(slides ? 8 : 10)}}}, {{from: 210, to: 300, reach: rest{(law is null ? "" : $", law: {law}")}}}]}}");

    private static string? Refusal(Starter starter, StartSite site, bool slides) =>
        starter.NeedsShaft && !site.IsShaft ? $"'{site.Name}' doesn't go round; {starter.Words} {(starter.Key == "gear" ? "need" : "needs")} a driver that wheels tie to the crank"
        : starter.NeedsEvenShaft && !site.IsEven ? $"'{site.Name}' does not turn evenly; {starter.Words} {(starter.Key == "gear" ? "need" : "needs")} a shaft that turns evenly"
        : starter.OnlyTurns && slides ? $"{starter.Words} {(starter.Key == "gear" ? "turn" : "turns")} the member; let it turn, or choose another drive"
        : starter.OnlySlides && !slides ? $"{starter.Words} {(starter.Key == "gear" ? "move" : "moves")} the member along; let it slide, or choose another drive"
        : starter.Refusal(site, slides);
}
