using System.Collections.Concurrent;
using Jackwork.Shop.Timing;
using Jackwork.Shop.Writers;

namespace Jackwork.Bench.Sessions;

/// <summary>The turn rings of the designs in the folder, for the start page; drawn anew when a file has changed.</summary>
internal sealed class RingPictures(OpenedFolder folder)
{
    private readonly ConcurrentDictionary<string, (DateTime Changed, string? Svg)> drawn = [];

    /// <summary>The ring of a design as SVG; null where there is none to draw.</summary>
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

    private string? Draw(string file)
    {
        try
        {
            return Work.Of(0, DesignFile.Open(file).Known, folder.FilesBeside(file)).Work?.Chart is { } chart ? SvgWriter.Write(TurnRing.Draw(chart)) : null;
        }
        catch (IOException)
        {
            return null;
        }
    }
}
