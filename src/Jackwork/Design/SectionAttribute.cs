namespace Jackwork.Design;

/// <summary>Says what a part of the design file is for; its section in the format page is made from it.</summary>
/// <remarks>
/// The example is a few whole top-level keys. Put in place of the same keys of the first section's example, which is a
/// whole design, it makes a design that reads without problem; an example that gives <c>members</c> replaces the timing
/// and the rules too.
/// </remarks>
[AttributeUsage(AttributeTargets.Class)]
public sealed class SectionAttribute(string title, string text, string example) : Attribute
{
    /// <summary>Heading.</summary>
    public string Title { get; } = title;

    /// <summary>What it is for, in a sentence or two.</summary>
    public string Text { get; } = text;

    /// <summary>A short worked example, YAML.</summary>
    public string Example { get; } = example;
}
