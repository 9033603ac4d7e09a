using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Jackwork.Bench.Chart;

/// <summary>Changes one value in a design's text and leaves every other character alone.</summary>
internal static class TextValue
{
    /// <summary>The text with the value at a path put in place of the one there; null where there is none. Items of a list count from 0.</summary>
    public static string? Set(string text, string value, params string[] path)
    {
        var parser = new Parser(new StringReader(text));
        parser.Consume<StreamStart>();
        parser.Consume<DocumentStart>();
        foreach (var step in path)
        {
            if (!Enter(parser, step))
            {
                return null;
            }
        }

        return parser.TryConsume<Scalar>(out var scalar) ? string.Concat(text.AsSpan(0, (int)scalar.Start.Index), value, text.AsSpan((int)scalar.End.Index)) : null;
    }

    private static bool Enter(Parser parser, string step)
    {
        if (parser.TryConsume<SequenceStart>(out _))
        {
            for (var i = int.Parse(step, System.Globalization.CultureInfo.InvariantCulture); i > 0; i--)
            {
                if (parser.Accept<SequenceEnd>(out _))
                {
                    return false;
                }

                parser.SkipThisAndNestedEvents();
            }

            return !parser.Accept<SequenceEnd>(out _);
        }

        if (!parser.TryConsume<MappingStart>(out _))
        {
            return false;
        }

        while (parser.TryConsume<Scalar>(out var key))
        {
            if (key.Value == step)
            {
                return true;
            }

            parser.SkipThisAndNestedEvents();
        }

        return false;
    }
}
