using System.Globalization;
using Jackwork.Design;

namespace Jackwork.Bench.Elements.Forms;

/// <summary>What a maker enters in a field, as a change to the design's text.</summary>
internal static class FieldEdit
{
    /// <summary>The text with what was entered; nothing entered takes a key out that is given and may go.</summary>
    /// <param name="text">The design.</param>
    /// <param name="field">The field.</param>
    /// <param name="entered">What was entered.</param>
    /// <param name="isOptional">Whether it may be left out.</param>
    public static TextEdit Put(string text, FormField field, string entered, bool isOptional)
    {
        var word = entered.Trim();
        if (word.Length == 0)
        {
            return isOptional ? DesignText.Remove(text, field.Path) : TextEdit.Refused(text, "this must be given");
        }

        return field.Kind switch
        {
            FieldKind.Number or FieldKind.Whole => Number(text, field, word),
            FieldKind.Text when field.Key.Refers is Refers.Nothing or Refers.Part => DesignText.Set(text, field.Path, DesignText.Words(word)),
            _ => DesignText.Set(text, field.Path, word),
        };
    }

    /// <summary>The limits of a number with their unit, for reading; empty where there are none.</summary>
    public static string Limits(KeyAttribute key)
    {
        var unit = key.Unit == "deg" ? "\u00b0" : key.Unit.Length > 0 ? " " + key.Unit : "";
        return double.IsFinite(key.Min) && double.IsFinite(key.Max) ? FormattableString.Invariant($"{key.Min} to {key.Max}{unit}")
            : double.IsFinite(key.Min) ? FormattableString.Invariant($"{key.Min}{unit} or more") : "";
    }

    private static TextEdit Number(string text, FormField field, string word)
    {
        if (field.Key.OrWord.Length > 0 && word == field.Key.OrWord)
        {
            return DesignText.Set(text, field.Path, word);
        }

        if (!double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var v) || !double.IsFinite(v))
        {
            return TextEdit.Refused(text, word.Contains(',', StringComparison.Ordinal) ? $"'{word}': decimals are written with a point" : $"'{word}' is not a number{(field.Key.OrWord.Length > 0 ? $" or '{field.Key.OrWord}'" : "")}");
        }

        return v < field.Key.Min || v > field.Key.Max ? TextEdit.Refused(text, $"'{word}' is out of bounds: {Limits(field.Key)}")
            : field.Kind == FieldKind.Whole && v != Math.Round(v) ? TextEdit.Refused(text, $"'{word}' is not a whole number")
            : DesignText.Set(text, field.Path, DesignText.Number(v, 6));
    }
}
