using System.Collections.Concurrent;
using Jackwork.Shop.Timing;
using Jackwork.Shop.Writers;

namespace Jackwork.Bench.Sessions;

/// <summary>The turn rings of the designs in the folder, for the start page; drawn anew when a file has changed.</summary>
internal sealed class RingPictures(OpenedFolder folder)
{
    private readonly ConcurrentDictionary<string, (DateTime Changed, string Svg)> drawn = [];

    /// <summary>An empty ring, for a design that doesn't read or in which nothing is acted.</summary>
    private const string Empty = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-50 -50 100 100\"><circle r=\"36\" fill=\"none\" stroke=\"#a97b22\" stroke-dasharray=\"3 3\"/></svg>";

    /// <summary>The ring of a design as SVG; null where the folder holds no such design.</summary>
    public string? Of(string path)
    {
        if (folder.FileOf(path) is not { } file)
        {
            return null;
        }

        var changed = File.GetLastWriteTimeUtc(file);
        if (!drawn.TryGetValue(file, out var kept) || kept.Changed != changed)
        {
            kept = (changed, Draw(file));
            drawn[file] = kept;
        }

        return kept.Svg;
    }

    private string Draw(string file)
    {
        try
        {
            return Work.Of(0, DesignFile.Open(file).Known, folder.FilesBeside(file)).Work?.Chart is { } chart ? SvgWriter.Write(TurnRing.Draw(chart)) : Empty;
        }
        catch (IOException)
        {
            return Empty;
        }
    }
}
