using System.Collections.Immutable;
using Jackwork.Geometry;
using static System.FormattableString;

namespace Jackwork.Shop.Drawings;

/// <summary>A finished drawing at full size: marks on named layers over one sheet. Lengths mm, x to the right, y up.</summary>
/// <remarks>Painted layer by layer, in the order in which the layers first appear; within a layer, later marks cover earlier ones.</remarks>
public sealed record Drawing
{
    /// <summary>A drawing of <paramref name="primitives"/> on a sheet.</summary>
    /// <param name="title">What the drawing shows, for a person.</param>
    /// <param name="sheet">The part of the plane that is shown; both sides more than zero mm.</param>
    /// <param name="ground">Colour of the sheet; none leaves it clear.</param>
    /// <param name="primitives">The marks. A layer's name is an ASCII letter followed by letters, digits, '-' or '_'.</param>
    public Drawing(string title, Box sheet, Colour? ground, ImmutableArray<Primitive> primitives)
    {
        if (!(sheet.Width > 0 && sheet.Height > 0 && double.IsFinite(sheet.Width * sheet.Height)))
        {
            throw new ArgumentException(Invariant($"The sheet is {sheet.Width} by {sheet.Height} mm; both sides must be more than 0 mm and finite."), nameof(sheet));
        }

        foreach (var p in primitives)
        {
            if (!IsName(p.Layer))
            {
                throw new ArgumentException(Invariant($"The layer name '{p.Layer}' must be a letter followed by letters, digits, '-' or '_'."), nameof(primitives));
            }
        }

        (Title, Sheet, Ground, Primitives) = (title, sheet, ground, primitives);
    }

    /// <summary>What the drawing shows.</summary>
    public string Title { get; }

    /// <summary>The part of the plane that is shown.</summary>
    public Box Sheet { get; }

    /// <summary>Colour of the sheet, or none.</summary>
    public Colour? Ground { get; }

    /// <summary>The marks, in the order they were made.</summary>
    public ImmutableArray<Primitive> Primitives { get; }

    /// <summary>The marks gathered by layer, in painting order.</summary>
    public IEnumerable<IGrouping<string, Primitive>> ByLayer => Primitives.GroupBy(p => p.Layer, StringComparer.Ordinal);

    /// <summary>A drawing whose sheet is the box about all marks and <paramref name="margin"/> mm more on each side.</summary>
    public static Drawing Fitted(string title, double margin, ImmutableArray<Primitive> primitives) =>
        new(title, primitives.Select(p => p.Bounds).Aggregate((a, b) => a.Union(b)).Grown(margin), null, primitives);

    private static bool IsName(string layer) =>
        layer.Length > 0 && char.IsAsciiLetter(layer[0]) && layer.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
}
