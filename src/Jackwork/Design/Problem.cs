namespace Jackwork.Design;

/// <summary>One thing wrong with a design file: where, what, and what would be right.</summary>
/// <param name="At">Line and column.</param>
/// <param name="Path">The place in the design's own words, such as <c>members.bell-arm.rod.pins</c>; empty for the whole file.</param>
/// <param name="What">What is wrong, with the offending value.</param>
/// <param name="Remedy">What would be right.</param>
public sealed record Problem(Mark At, string Path, string What, string Remedy)
{
    /// <inheritdoc/>
    public override string ToString() => $"{At}: {(Path.Length > 0 ? Path + ": " : "")}{What}. {Remedy}{(Remedy.EndsWith('?') ? "" : ".")}";
}
