namespace Jackwork.Shop.Lettering;

/// <summary>Breaks lettering into lines that fit a width.</summary>
public static class Wrapping
{
    /// <summary>The fewest lines, filled from the first, none wider than <paramref name="width"/> mm at capitals of <paramref name="height"/> mm.</summary>
    /// <remarks>Lines break at spaces; a single word that is too wide is broken between letters. A letter wider than the width stands alone.</remarks>
    public static IReadOnlyList<string> Lines(string text, double height, double width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (Letters.Width(longer, height) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (Letters.Width(line, height) > width && line.Length > 1)
            {
                var n = line.Length - 1;
                while (n > 1 && Letters.Width(line[..n], height) > width)
                {
                    n--;
                }

                lines.Add(line[..n]);
                line = line[n..];
            }
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>The tallest of <paramref name="heights"/> (mm, tallest first) at which <paramref name="text"/> needs no more than <paramref name="maxLines"/> lines, and those lines.</summary>
    /// <remarks>When none is small enough the last height is used, with as many lines as it takes.</remarks>
    public static (double Height, IReadOnlyList<string> Lines) Fit(string text, double width, int maxLines, params IReadOnlyList<double> heights)
    {
        foreach (var h in heights)
        {
            var lines = Lines(text, h, width);
            if (lines.Count <= maxLines)
            {
                return (h, lines);
            }
        }

        return (heights[^1], Lines(text, heights[^1], width));
    }
}
