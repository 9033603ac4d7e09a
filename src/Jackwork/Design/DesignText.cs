using System.Globalization;

namespace Jackwork.Design;

/// <summary>Edits of a design's text that leave everything else as the maker wrote it: comments, order, spacing, blocks and brackets, the spelling of numbers.</summary>
/// <remarks>
/// A path is keys, names and list positions (from 1) parted by points, as in <see cref="Problem.Path"/>: <c>timing.head.moves.2.reach</c>.
/// An edit is made only where the text, read again, says what was meant and nothing else, and has all its comments; otherwise it is
/// refused with a reason. Any text at all gives an answer, never an exception. The text need not be a whole or right design; it has to be YAML with keys.
/// </remarks>
public static class DesignText
{
    /// <summary>Most decimals that <see cref="Number"/> writes.</summary>
    public const int MaxDecimals = 15;

    /// <summary>Replaces the value at <paramref name="path"/>, or adds it, and the keys that lead to it, where there is none yet. Comments inside the old value stay.</summary>
    /// <param name="text">The design.</param>
    /// <param name="path">Where.</param>
    /// <param name="value">A scalar or flow text, one line: <c>14</c>, <c>[1, 2, 3]</c>, <c>{from: 10, to: 20, reach: 5}</c>.</param>
    public static TextEdit Set(string text, string path, string value)
    {
        if (!Start(text, path, out var source, out var at, out var reason) || ValueText.Read(value, out reason) is not { } given)
        {
            return TextEdit.Refused(text, reason);
        }

        if (at.Rest.Count > 0)
        {
            return Put(source, at, given);
        }

        if (at.Places.Count == 0)
        {
            return TextEdit.Refused(text, "the path is empty; name a key");
        }

        if (at.Last is ScalarNode { Extent: { Form: Form.Plain, IsEmpty: false } extent, Anchor: null } old && given.IsPlainWord && !TextLines.IsBroken(text.AsSpan(extent.Start, extent.End - extent.Start)) && !HasTag(text, extent))
        {
            // One plain word for another is read the same wherever it stands: nothing is left to prove.
            var change = Splice.Between(extent.Start, extent.End, given.Text);
            if (text.Length + change.Growth <= NodeLimits.MaxCharacters)
            {
                source.With(old, change);
                return TextEdit.Done(text, change);
            }
        }

        return new EditPlan([Replacement.Of(source, at.Nodes[^2], at.Places[^1], given.Text)], NodePath.Changed(source.Root, [.. at.Places], _ => given.Node)).Proved(source);
    }

    /// <summary>
    /// Takes out a key with its value, or a list item, and the comments that belong to it. A map or list left empty goes too where
    /// the format lets its key be left out; otherwise it stays as <c>{}</c> or <c>[]</c>.
    /// </summary>
    /// <param name="text">The design.</param>
    /// <param name="path">Which.</param>
    public static TextEdit Remove(string text, string path)
    {
        if (!Start(text, path, out var source, out var at, out var reason))
        {
            return TextEdit.Refused(text, reason);
        }

        if (at.Rest.Count > 0 || at.Places.Count == 0)
        {
            return TextEdit.Refused(text, at.Places.Count == 0 && at.Rest.Count == 0 ? "the path is empty; name a key" : $"there is no '{path}'");
        }

        var depth = at.Places.Count;
        while (depth > 1 && Size(at.Nodes[depth - 1]) == 1 && MayGo(path.Split('.')[..(depth - 1)]))
        {
            depth--;
        }

        var (container, place, places) = (at.Nodes[depth - 1], at.Places[depth - 1], at.Places.Take(depth).ToArray());
        if (Size(container) > 1)
        {
            var changes = Removal.Of(source, container, place);
            return new EditPlan(changes, NodePath.Changed(source.Root, places, _ => null)) { Dropped = [.. changes.Select(c => (c.Start, c.End))] }.Proved(source);
        }

        if (depth == 1)
        {
            return TextEdit.Refused(text, "it is all that the design says; write another key first");
        }

        var (empty, none) = container is MapNode map ? ("{}", (Node)(map with { Entries = [] })) : ("[]", ((ListNode)container) with { Items = [] });
        var kept = source.Lines.End(TextItems.ValueStart(text, at.Nodes[depth - 2], places[^2]));
        return new EditPlan([Replacement.Of(source, at.Nodes[depth - 2], places[^2], empty, kept)], NodePath.Changed(source.Root, places[..^1], _ => none)) { Dropped = [(kept, container.Extent.End)] }.Proved(source);
    }

    /// <summary>Appends an item to a list (no <paramref name="key"/>), or puts a key into a map, and makes the list or map, as a block in the place that the format gives it, where it is missing.</summary>
    /// <param name="text">The design.</param>
    /// <param name="listOrMapPath">The list or map; empty for the design itself.</param>
    /// <param name="key">The new key; null for a list.</param>
    /// <param name="value">Its value, as for <see cref="Set"/>.</param>
    public static TextEdit Add(string text, string listOrMapPath, string? key, string value)
    {
        if (!Start(text, listOrMapPath, out var source, out var at, out var reason) || ValueText.Read(value, out reason) is not { } given)
        {
            return TextEdit.Refused(text, reason);
        }

        var isMap = at.Rest.Count == 0 && at.Last is MapNode;
        if (key is null ? isMap : at.Rest.Count == 0 && at.Last is ListNode)
        {
            return TextEdit.Refused(text, isMap ? $"'{listOrMapPath}' holds keys; give the new one's" : $"'{listOrMapPath}' is a list; give no key");
        }

        if (key is not null && (key.Length == 0 || key.Contains('.', StringComparison.Ordinal) || ValueText.Read(key, out _) is not { IsPlainWord: true } || char.IsAsciiDigit(key[0])))
        {
            return TextEdit.Refused(text, $"'{key}' can't be a key");
        }

        var step = key ?? (at.Rest.Count == 0 && at.Last is ListNode list ? list.Items.Count + 1 : 1).ToString(CultureInfo.InvariantCulture);
        var to = NodePath.Follow(source.Root, listOrMapPath.Length == 0 ? step : $"{listOrMapPath}.{step}");
        return to.Refusal is { } refusal ? TextEdit.Refused(text, refusal)
            : to.Rest.Count == 0 ? TextEdit.Refused(text, $"the key '{step}' is there already")
            : Namesake(source.Root, listOrMapPath, step) is { } other ? TextEdit.Refused(text, $"'{step}' is the name of a {other}; give one that no member and no part has")
            : Put(source, to, given);
    }

    // Members and parts share their names.
    private static string? Namesake(MapNode root, string map, string name)
    {
        var (other, what) = map == "members" ? ("parts", "part") : ("members", "member");
        return map is "members" or "parts" && NodePath.Follow(root, $"{other}.{name}") is { Refusal: null, Rest.Count: 0 } ? what : null;
    }

    /// <summary>Gives a member another name in every place that names it: its key, drives, chart, rules, the parts on it, and the names of its own parts under <c>touching</c> and <c>apart</c>. Titles, notes and comments stay.</summary>
    /// <param name="text">The design.</param>
    /// <param name="from">The name now.</param>
    /// <param name="to">The new name.</param>
    public static TextEdit RenameMember(string text, string from, string to)
    {
        if (!Start(text, "", out var source, out _, out var reason))
        {
            return TextEdit.Refused(text, reason);
        }

        var renaming = new Renaming(text, from, to);
        return renaming.Refusal(source.Root) is { } refusal
            ? TextEdit.Refused(text, refusal)
            : new EditPlan(renaming.Changes(source.Root), renaming.Renamed(source.Root)).Proved(source);
    }

    /// <summary>Takes a member out with everything that names it: its chart, rules, the parts on it, and where pairs are told that may touch, keep apart or are joined.</summary>
    /// <param name="text">The design.</param>
    /// <param name="name">The member.</param>
    /// <param name="withHanging">Whether the members that hang on it, driven by it or on it, go too; if not, and there are any, the edit is refused.</param>
    public static TextEdit RemoveMember(string text, string name, bool withHanging)
    {
        if (!Start(text, "members." + name, out var source, out var at, out var reason))
        {
            return TextEdit.Refused(text, reason);
        }

        if (at.Rest.Count > 0)
        {
            return TextEdit.Refused(text, $"there is no member '{name}'");
        }

        if (Severing.Hanging(source.Root, name) is { Count: > 0 } hanging && !withHanging)
        {
            return TextEdit.Refused(text, $"{string.Join(", ", hanging)} {(hanging.Count == 1 ? "hangs" : "hang")} on '{name}'; take {(hanging.Count == 1 ? "it" : "them")} out too, or hang {(hanging.Count == 1 ? "it" : "them")} on another member first");
        }

        var now = text;
        foreach (var path in Severing.Paths(source.Root, name))
        {
            var next = Remove(now, path);
            if (next.Refusal is { } refusal)
            {
                return TextEdit.Refused(text, refusal);
            }

            now = next.Text;
        }

        return TextEdit.Done(text, Splice.Difference(text, now));
    }

    /// <summary>The members that hang on one: driven by it, on it, or by or on one that is; none where the text can't be read.</summary>
    public static IReadOnlyList<string> Hanging(string text, string name) => DesignSource.Read(text, out _) is { } source ? Severing.Hanging(source.Root, name) : [];

    /// <summary>A number as a design file has it: a point for decimals, no exponent, no needless zeros.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Most decimals, 0 to <see cref="MaxDecimals"/>; rounded to the nearest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite, or there are too many decimals.</exception>
    public static string Number(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A design holds finite numbers only.");
        }

        if (decimals is < 0 or > MaxDecimals)
        {
            throw new ArgumentOutOfRangeException(nameof(decimals), decimals, FormattableString.Invariant($"From 0 to {MaxDecimals} decimals can be written."));
        }

        var s = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        s = s.Contains('.', StringComparison.Ordinal) ? s.TrimEnd('0').TrimEnd('.') : s;
        return s == "-0" ? "0" : s;
    }

    /// <summary>Any text as a value: plain where it is a name, in double quotes with escapes where it is not.</summary>
    /// <param name="text">The text, such as a title or a note.</param>
    /// <exception cref="ArgumentException">The text holds half of a surrogate pair, which no file can hold.</exception>
    public static string Words(string text) => DesignWriter.Quote(text);

    private static bool Start(string text, string path, out DesignSource source, out NodePath at, out string reason)
    {
        at = null!;
        source = DesignSource.Read(text, out reason)!;
        if (source is null)
        {
            return false;
        }

        at = NodePath.Follow(source.Root, path);
        reason = at.Refusal ?? "";
        return at.Refusal is null;
    }

    private static TextEdit Put(DesignSource source, NodePath at, ValueText value)
    {
        var place = at.Last is ScalarNode ? -1 : Insertion.After(at.Last, at.Type, at.Rest[0]);
        var laid = place >= 0 ? NodePath.Child(at.Last, place).Extent.Form == Form.Block : at.Type?.Named is not null;
        var entry = new NewEntry(at.Rest, value, laid && at.Rest.Count == 1);
        if (entry.Refusal is { } refusal)
        {
            return TextEdit.Refused(source.Text, refusal);
        }

        if (at.Last is ScalarNode)
        {
            // A key left empty: it gets its list or map here.
            return new EditPlan([Replacement.Of(source, at.Nodes[^2], at.Places[^1], entry.Whole)], NodePath.Changed(source.Root, [.. at.Places], _ => entry.WholeNode)).Proved(source);
        }

        var (changes, after) = Insertion.Into(source, at.Last, place, entry);
        return new EditPlan(changes, at.Places.Count == 0 ? entry.In(source.Root, after) : NodePath.Changed(source.Root, [.. at.Places], n => entry.In(n, after))).Proved(source);
    }

    private static int Size(Node node) => node is MapNode m ? m.Entries.Count : node is ListNode l ? l.Items.Count : 0;

    // Whether the format lets the key at the end of the steps be left out; a name and a list item go only when they are asked for.
    private static bool MayGo(string[] steps)
    {
        FormatType? type = FormatType.Design;
        foreach (var step in steps[..^1])
        {
            type = type?.Of(step);
        }

        return type?.Keys.FirstOrDefault(k => k.Name == steps[^1]) is { Key.Required: false };
    }

    private static bool HasTag(string text, Extent e) => text[e.Start] is '!' or '&';
}
