using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Jackwork.Design;

/// <summary>Reads YAML text into nodes within fixed limits, so that a hostile file can neither hang nor exhaust the reader.</summary>
internal static class NodeReader
{
    /// <summary>The root of the file, or null with the reason added to <paramref name="problems"/>.</summary>
    public static Node? Read(string text, ProblemList problems)
    {
        if (text.Length > NodeLimits.MaxCharacters)
        {
            problems.Add(new Mark(1, 1), "", $"the file has {text.Length} characters", $"At most {NodeLimits.MaxCharacters} are read; move meshes and notes out of it");
            return null;
        }

        try
        {
            return BadCharacter(text, problems) ? null : new Run(text, problems).Document();
        }
        catch (Refused r)
        {
            problems.Add(r.At, "", r.Message, r.Remedy);
        }
        catch (YamlException e)
        {
            problems.Add(new Mark(Math.Max(1, (int)e.Start.Line), Math.Max(1, (int)e.Start.Column)), "", $"this is not YAML: {FirstLine(e.InnerException?.Message ?? e.Message)}", "Check quotes, brackets, colons and indentation (spaces, no tabs) here");
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or IndexOutOfRangeException or OverflowException or InvalidCastException or KeyNotFoundException or NullReferenceException)
        {
            // The scanner gives up on some byte salads with exceptions of its own; the file is still only a wrong file.
            problems.Add(new Mark(1, 1), "", "this is not YAML: the text can't be split into keys and values", "Write plain UTF-8 text, one 'key: value' a line");
        }

        return null;
    }

    private static string FirstLine(string s) => s.Split('\n')[0].Trim().TrimEnd('.');

    private sealed class Refused(Mark at, string what, string remedy) : Exception(what)
    {
        public Mark At { get; } = at;

        public string Remedy { get; } = remedy;
    }

    // YAML takes a NUL for the end of the text, and half a surrogate pair can't be saved: nothing of such a file is read.
    private static bool BadCharacter(string text, ProblemList problems)
    {
        var (line, start) = (1, 0);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(c) || (char.IsControl(c) && c is not ('\n' or '\r' or '\t' or '\u0085')))
            {
                problems.Add(new Mark(line, i - start + 1), "", FormattableString.Invariant($"the character U+{(int)c:X4} can't stand in a design file"), "Save the file as plain UTF-8 text, or write the character as an escape in double quotes");
                return true;
            }

            (line, start) = c == '\n' ? (line + 1, i + 1) : (line, start);
        }

        return false;
    }

    private sealed class Run(string text, ProblemList problems)
    {
        private readonly int skipped = text.Length - text.TrimStart('\ufeff').Length;
        private readonly Parser parser = new(new StringReader(text.TrimStart('\ufeff')));
        private readonly Dictionary<string, (Node Node, int Size)> anchors = [];
        private int nodes;
        private int aliases;

        public Node Document()
        {
            parser.Consume<StreamStart>();
            if (parser.TryConsume<StreamEnd>(out _))
            {
                throw new Refused(new(1, 1), "the file is empty", "Start from 'jackwork new'");
            }

            parser.Consume<DocumentStart>();
            var root = Next(0);
            parser.Consume<DocumentEnd>();
            if (parser.TryConsume<DocumentStart>(out var second))
            {
                throw new Refused(At(second), "a second document begins here", "Keep one design a file; remove the line '---'");
            }

            return root;
        }

        private Node Next(int depth)
        {
            var e = parser.Consume<ParsingEvent>();
            var at = At(e);
            if (depth > NodeLimits.MaxDepth)
            {
                throw new Refused(at, $"values are nested more than {NodeLimits.MaxDepth} deep", "The format needs no more than eight levels");
            }

            Count(at, 1);
            RefuseTag(e, at);
            var before = nodes;
            switch (e)
            {
                case AnchorAlias alias:
                    if (++aliases > NodeLimits.MaxAliases)
                    {
                        throw new Refused(at, $"more than {NodeLimits.MaxAliases} aliases", "Write the values out");
                    }

                    if (!anchors.TryGetValue(alias.Value.Value, out var known))
                    {
                        throw new Refused(at, $"the alias *{alias.Value.Value} names no finished anchor before it", $"Put &{alias.Value.Value} on an earlier value, outside this one");
                    }

                    Count(at, known.Size);
                    return known.Node with { Extent = new(Start(e), End(e), Form.Alias) };
                case Scalar s:
                    return Remember(s.Anchor, new ScalarNode(at, s.Value, s.Style is not (ScalarStyle.Plain or ScalarStyle.Any)) { Extent = ExtentOf(s) }, before);
                case SequenceStart seq:
                    var items = new List<Node>();
                    while (!parser.Accept<SequenceEnd>(out _))
                    {
                        items.Add(Next(depth + 1));
                    }

                    return Remember(seq.Anchor, new ListNode(at, items) { Extent = Around(e, parser.Consume<SequenceEnd>(), seq.Style == SequenceStyle.Flow, items.Count == 0 ? null : items[^1]) }, before);
                case MappingStart map:
                    var entries = new List<(ScalarNode, Node)>();
                    while (!parser.Accept<MappingEnd>(out _))
                    {
                        var key = Next(depth + 1) as ScalarNode ?? throw new Refused(at, "a key that is itself a list or mapping", "A key is a plain word followed by a colon");
                        entries.Add((key, Next(depth + 1)));
                    }

                    return Remember(map.Anchor, new MapNode(at, entries) { Extent = Around(e, parser.Consume<MappingEnd>(), map.Style == MappingStyle.Flow, entries.Count == 0 ? null : entries[^1].Item2) }, before);
                default:
                    throw new Refused(at, "unexpected end of the text", "Close every bracket and quote");
            }
        }

        private void RefuseTag(ParsingEvent e, Mark at)
        {
            if (e is NodeEvent { Tag: { IsEmpty: false } tag })
            {
                problems.Add(at, "", $"the tag '{tag.Value}' is not read", "Leave it out: the key already says what kind of value it has");
            }
        }

        private Node Remember(AnchorName anchor, Node node, int before)
        {
            if (!anchor.IsEmpty)
            {
                node = node with { Anchor = anchor.Value };
                anchors[anchor.Value] = (node, nodes - before + 1);
            }

            return node;
        }

        private void Count(Mark at, int more)
        {
            nodes += more;
            if (nodes > NodeLimits.MaxNodes)
            {
                throw new Refused(at, $"more than {NodeLimits.MaxNodes} values, aliases counted each time", "A design needs a few thousand at most");
            }
        }

        private Extent ExtentOf(Scalar s)
        {
            var (start, end) = (Start(s), End(s));
            if (s.Style is not (ScalarStyle.Literal or ScalarStyle.Folded))
            {
                return new(start, end, s.Style is ScalarStyle.Plain or ScalarStyle.Any ? Form.Plain : Form.Quoted);
            }

            // The scanner stops at the next line that says something. Blank lines up to there belong to the text only after '+'.
            var written = text.AsSpan(start, end - start);
            var header = written[..(written.IndexOfAny('\r', '\n') is var i and >= 0 ? i : written.Length)];
            var comment = header.IndexOf('#');
            var keeps = (comment < 0 ? header : header[..comment]).Contains('+');
            var length = keeps && written.LastIndexOf('\n') is var last and >= 0 ? (last > 0 && written[last - 1] == '\r' ? last - 1 : last) : written.TrimEnd().Length;
            return new(start, start + length, Form.Literal);
        }

        // A block's end event stands where the next thing begins; what was written ends with its last value.
        private Extent Around(ParsingEvent first, ParsingEvent last, bool flow, Node? lastValue)
        {
            var (start, close) = (Start(first), Start(last));
            return flow && close < text.Length && text[close] == (first is SequenceStart ? ']' : '}')
                ? new(start, close + 1, Form.Flow)
                : new(start, lastValue?.Extent.End ?? start, flow ? Form.Pair : Form.Block);
        }

        private int Start(ParsingEvent e) => (int)e.Start.Index + skipped;

        private int End(ParsingEvent e) => (int)e.End.Index + skipped;

        private static Mark At(ParsingEvent e) => new((int)e.Start.Line, (int)e.Start.Column);
    }
}
