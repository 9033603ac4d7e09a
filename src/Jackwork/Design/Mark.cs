namespace Jackwork.Design;

/// <summary>A place in the design file. Lines and columns count from one; <c>default</c> (0, 0) means "no place".</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public readonly record struct Mark(int Line, int Column)
{
    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Line}:{Column}");
}
