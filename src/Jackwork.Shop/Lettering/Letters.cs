using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Lettering;

/// <summary>Lays out lines of lettering as strokes. Lengths mm; sizes follow from the height h of the capitals over the ink.</summary>
public static class Letters
{
    /// <summary>Width of a stroke as a share of the height of the capitals.</summary>
    public const double StrokeShare = 0.1;

    /// <summary>Height of small letters without tails, as a share of the height of the capitals.</summary>
    public const double SmallShare = 0.7;

    /// <summary>Depth of tails below the foot, as a share of the height of the capitals.</summary>
    public const double TailShare = 0.3;

    /// <summary>Distance from the foot of one line of lettering to the next, as a share of the height of the capitals.</summary>
    /// <remarks>ISO 3098-0:1997, type B, lettering without accents (from memory): 15/10 h.</remarks>
    public const double LineShare = 1.5;

    /// <summary>Whether every letter of <paramref name="text"/> has a shape; the others are drawn as boxes.</summary>
    public static bool CanDraw(string text) => text.All(Alphabet.Has);

    /// <summary>Width over the ink of one straight line of lettering, mm; zero when there is nothing to draw.</summary>
    public static double Width(string text, double height)
    {
        if (text.Length == 0)
        {
            return 0;
        }

        var tenths = text.Sum(c => Alphabet.Of(c).Advance) - Alphabet.Of(text[0]).Left - Alphabet.Of(text[^1]).Right;
        return Math.Max(0, tenths) * height / 10;
    }

    /// <summary>The strokes of <paramref name="text"/> in drawing coordinates: middle lines of a pen one tenth of the height wide.</summary>
    /// <remarks>On a curved line each letter stays upright on its own stretch, turned by curvature times the distance from the anchor to its middle.</remarks>
    public static IEnumerable<ImmutableArray<Segment>> Strokes(Primitive.Text text)
    {
        if (text.Value.Length == 0)
        {
            yield break;
        }

        var unit = text.Height / 10;
        var drop = (text.Level switch { Level.Top => 10.0, Level.Middle => 5.0, _ => 0.0 }) - Glyph.Pen / 2;
        var shift = text.Align switch { Align.Centre => 0.5, Align.Right => 1.0, _ => 0.0 } * Width(text.Value, text.Height);

        // Along the line from the anchor to the glyph's own origin, mm.
        var along = (Glyph.Pen / 2 - Alphabet.Of(text.Value[0]).Left) * unit - shift;
        foreach (var letter in text.Value)
        {
            var glyph = Alphabet.Of(letter);
            var middle = along + (glyph.Left + glyph.Width / 2) * unit;
            foreach (var stroke in glyph.Strokes)
            {
                yield return [.. stroke.Select(s => new Segment(Place(s.Start), Place(s.End), s.Bulge))];
            }

            along += glyph.Advance * unit;

            Point2 Place(Point2 p)
            {
                var local = unit * new Vec2(p.X - glyph.Width / 2, p.Y - drop);
                var turn = text.Curvature * middle;
                var foot = text.Curvature == 0
                    ? new Vec2(middle, 0)
                    : 1 / text.Curvature * new Vec2(Math.Sin(turn), 1 - Math.Cos(turn));
                return text.At + (foot + local.Turned(turn)).Turned(text.Turn);
            }
        }
    }
}
