namespace Jackwork.Parts;

/// <summary>Parts that are made into one for good.</summary>
/// <param name="Name">Name of the whole.</param>
/// <param name="By">How: glue, braze, solder, pin or screw.</param>
/// <param name="Parts">What it is joined of.</param>
public sealed record Joined(string Name, string By, IReadOnlyList<Part> Parts)
{
    /// <summary>Mass of the whole, g; glue, filler and pins are not counted.</summary>
    public double Mass => Parts.Sum(p => p.Mass);
}
