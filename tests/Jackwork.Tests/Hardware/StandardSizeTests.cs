using Jackwork.Hardware;
using Xunit;

namespace Jackwork.Tests.Hardware;

/// <summary>Sizes and masses of screws and washers against the tables of their standards.</summary>
[Trait("Proof", "published")]
public sealed class StandardSizeTests
{
    // ISO 7089:2000, Plain washers, normal series: d1 min, d2 max, h nominal; M2 to M4 seen in makers' tables, the rest from memory.
    [Theory]
    [InlineData("M2", 2.2, 5, 0.3)]
    [InlineData("M2.5", 2.7, 6, 0.5)]
    [InlineData("M3", 3.2, 7, 0.5)]
    [InlineData("M4", 4.3, 9, 0.8)]
    [InlineData("M5", 5.3, 10, 1)]
    [InlineData("M6", 6.4, 12, 1.6)]
    [InlineData("M8", 8.4, 16, 1.6)]
    [InlineData("M10", 10.5, 20, 2)]
    public void Plain_washers_are_those_of_ISO_7089(string size, double bore, double outside, double thickness) =>
        Assert.Equal(new WasherSize(bore, outside, thickness), WasherSize.Plain[size]);

    // dk and k, the greatest: ISO 1207, ISO 7045, and the countersunk heads of ISO 7721 as ISO 7046-2 prints them, all seen in
    // makers' tables; ISO 4762 from memory.
    [Theory]
    [InlineData("cheese", "M2", 3.8, 1.4)]
    [InlineData("cheese", "M2.5", 4.5, 1.8)]
    [InlineData("cheese", "M3", 5.5, 2.0)]
    [InlineData("cheese", "M4", 7.0, 2.6)]
    [InlineData("pan", "M2", 4.0, 1.6)]
    [InlineData("pan", "M2.5", 5.0, 2.1)]
    [InlineData("pan", "M3", 5.6, 2.4)]
    [InlineData("pan", "M4", 8.0, 3.1)]
    [InlineData("countersunk", "M2", 3.8, 1.2)]
    [InlineData("countersunk", "M2.5", 4.7, 1.5)]
    [InlineData("countersunk", "M3", 5.5, 1.65)]
    [InlineData("countersunk", "M4", 8.4, 2.7)]
    [InlineData("socket", "M3", 5.5, 3)]
    [InlineData("socket", "M4", 7, 4)]
    public void Heads_are_those_of_their_standards(string kind, string size, double diameter, double height)
    {
        var head = ScrewHead.Of(kind, size)!.Value;
        Assert.Equal((diameter, height), (head.Diameter, head.Height));
    }

    // Stress areas, mm^2: ISO 898-1.
    [Theory]
    [InlineData("M3", 5.03)]
    [InlineData("M4", 8.78)]
    [InlineData("M5", 14.2)]
    [InlineData("M6", 20.1)]
    [InlineData("M8", 36.6)]
    [InlineData("M10", 58.0)]
    public void Stress_areas_are_those_of_ISO_898_1(string size, double area) =>
        Assert.Equal(area, MetricThread.All.Single(t => t.Name == size).StressArea, area < 10 ? 0.005 : 0.05);

    // Approximate masses beside ISO 4026, kg per 1000 at 7.85 kg/dm^3, of a maker's table.
    [Theory]
    [InlineData("M2", 2, 0.029)]
    [InlineData("M2", 2.5, 0.037)]
    [InlineData("M2", 3, 0.044)]
    [InlineData("M2", 4, 0.059)]
    [InlineData("M2.5", 2.5, 0.063)]
    [InlineData("M2.5", 3, 0.075)]
    [InlineData("M2.5", 4, 0.1)]
    [InlineData("M3", 3, 0.1)]
    [InlineData("M3", 4, 0.14)]
    [InlineData("M4", 4, 0.22)]
    public void Grub_screws_weigh_what_is_printed_beside_ISO_4026(string size, double length, double gram)
    {
        var mass = GrubSize.All.Single(g => g.Name == size).Volume(length) * 7.85 / 1000;
        
        // The row of M2.5 rises from nought by 0.025 a mm: it leaves the socket out.
        Assert.InRange(mass / gram, size == "M2.5" ? 0.83 : 0.92, 1.08);
    }

    [Theory]
    [InlineData("M3", 5, 5)]
    [InlineData("M3", 4.9, 4)]
    [InlineData("M3", 2, 3)]
    [InlineData("M4", 3, 4)]
    [InlineData("M2", 2.5, 2.5)]
    public void A_grub_screw_is_flush_or_the_shortest_made(string size, double wall, double length) =>
        Assert.Equal(length, GrubSize.All.Single(g => g.Name == size).LengthIn(wall));
}
