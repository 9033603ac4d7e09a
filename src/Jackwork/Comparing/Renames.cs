using System.Text.RegularExpressions;
using Jackwork.Design;

namespace Jackwork.Comparing;

/// <summary>A member that has another name now, and of which everything else is the same.</summary>
/// <param name="From">Its name before.</param>
/// <param name="To">Its name now.</param>
public readonly record struct Rename(string From, string To);

/// <summary>The members of which only the name is another.</summary>
/// <remarks>
/// A member is renamed where one name is gone and another is new, and the earlier design, with the one put for the other in every
/// place that names members, says of it and of its timing word for word what the later design says. Where a carrier or driver was
/// renamed as well, that one is found first.
/// </remarks>
internal sealed class Renames
{
    private readonly List<Rename> all = [];

    /// <summary>The renamed members, in the order in which they were found.</summary>
    public IReadOnlyList<Rename> All => all;

    /// <summary>Compares two designs.</summary>
    public static Renames Of(DesignSpec before, DesignSpec after)
    {
        var renames = new Renames();
        var gone = Names(before).Except(Names(after)).ToList();
        var added = Names(after).Except(Names(before)).ToList();
        if (gone.Count == 0 || added.Count == 0)
        {
            return renames;
        }

        var (text, target) = (DesignWriter.Write(before), Root(DesignWriter.Write(after)));
        for (var found = true; found;)
        {
            found = false;
            foreach (var (from, to) in gone.SelectMany(g => added.Select(a => (g, a))))
            {
                if (DesignText.RenameMember(text, from, to) is { Refusal: null } edit && IsSame(Root(edit.Text), target, to))
                {
                    renames.all.Add(new(from, to));
                    (text, found) = (edit.Text, gone.Remove(from) && added.Remove(to));
                    break;
                }
            }
        }

        return renames;
    }

    /// <summary>A name or sentence of the earlier version as the later one would say it.</summary>
    public string Now(string words) => all.Aggregate(words, (w, r) => Regex.Replace(w, $"(?<![a-z0-9-]){Regex.Escape(r.From)}(?![a-z0-9-])", r.To));

    private static IEnumerable<string> Names(DesignSpec spec) => spec.Members.Select(m => m.Key);

    private static MapNode Root(string text) => DesignSource.Read(text, out _)!.Root;

    private static bool IsSame(MapNode before, MapNode after, string name) =>
        Part(before, "members", name) is { } a && Part(after, "members", name) is { } b && NodePath.Same(a, b)
        && (Part(before, "timing", name), Part(after, "timing", name)) switch
        {
            (null, null) => true,
            ({ } x, { } y) => NodePath.Same(x, y),
            _ => false,
        };

    private static Node? Part(MapNode root, string map, string name) =>
        NodePath.Follow(root, $"{map}.{name}") is { Refusal: null, Rest.Count: 0 } found ? found.Last : null;
}
