namespace Jackwork.Comparing;

/// <summary>How near two versions must be to count as the same.</summary>
public static class Sameness
{
    /// <summary>Outlines of a cam that lie farther apart than this are cut again, mm. Each is fitted within 0.005 mm of the true envelope, so that two fits of one curve may lie 0.01 mm apart; this is twice that, and still below what a router holds.</summary>
    public const double OutlineMm = 0.02;

    /// <summary>Lengths, places and coordinates of slides that differ by no more are the same, mm: half of the last digit that a design usually gives.</summary>
    public const double Mm = 0.005;

    /// <summary>Angles and coordinates of pivots that differ by no more are the same, rad: 0.005 degrees, which at 60 mm from the axis is <see cref="Mm"/>.</summary>
    public const double Rad = 0.005 * Math.PI / 180;

    /// <summary>Numbers without unit, such as a profile shift, that differ by no more are the same: rounding only.</summary>
    public const double Plain = 1e-9;
}
