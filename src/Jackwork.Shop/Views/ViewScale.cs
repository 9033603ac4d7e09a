using static System.FormattableString;

namespace Jackwork.Shop.Views;

/// <summary>The scale of a drawing: 1 to so many.</summary>
/// <param name="Reduction">How many mm of the piece are 1 mm on paper.</param>
public readonly record struct ViewScale(int Reduction)
{
    /// <summary>mm on paper for 1 mm of the piece.</summary>
    public double Factor => 1.0 / Reduction;

    /// <summary>The largest of 1:1, 1:2, 1:5, 1:10, ... at which something of a size fits into a room, mm (ISO 5455:1979, reduction scales, from memory).</summary>
    public static ViewScale Fitting(double width, double height, double roomWidth, double roomHeight)
    {
        for (var decade = 1; ; decade *= 10)
        {
            foreach (var step in (ReadOnlySpan<int>)[1, 2, 5])
            {
                if (width <= roomWidth * step * decade && height <= roomHeight * step * decade)
                {
                    return new(step * decade);
                }
            }
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Invariant($"1:{Reduction}");
}
