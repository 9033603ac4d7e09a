namespace Jackwork.Design;

/// <summary>A number, or one agreed word in its place. <c>default</c> is the number 0.</summary>
/// <param name="Number">The number; meaningless when <paramref name="Word"/> is given.</param>
/// <param name="Word">The word, or null for a number.</param>
public readonly record struct NumberOrWord(double Number, string? Word = null)
{
    /// <summary>A plain number.</summary>
    public static implicit operator NumberOrWord(double number) => new(number);
}
