namespace Jackwork.Design;

/// <summary>What must go with a member that is taken out: whatever names it.</summary>
internal sealed class Severing
{
    // Lists and maps of the design whose entries stand or fall by the names in them.
    private static readonly string[] Owners = ["members", "timing", "rules", "parts", "joined", "touching", "apart"];

    private readonly MapNode root;
    private readonly HashSet<string> members = [];
    private readonly HashSet<string> parts = [];

    private Severing(MapNode root) => this.root = root;

    /// <summary>The members that hang on <paramref name="name"/>: driven by it, on it, or by or on one that is; in the order written.</summary>
    public static IReadOnlyList<string> Hanging(MapNode root, string name)
    {
        var severing = new Severing(root);
        severing.Take(name);
        return [.. severing.Entries("members").Select(e => e.Name).Where(n => n != name && severing.members.Contains(n))];
    }

    /// <summary>The paths that go with a member and all that hangs on it, each list's last first.</summary>
    public static IReadOnlyList<string> Paths(MapNode root, string name)
    {
        var severing = new Severing(root);
        severing.Take(name);
        return [.. Owners.SelectMany(o => severing.Entries(o).Where(e => severing.Goes(o, e)).Select(e => $"{o}.{e.Name}").Reverse())];
    }

    private void Take(string name)
    {
        members.Add(name);
        for (var before = 0; before < members.Count;)
        {
            before = members.Count;
            members.UnionWith(Entries("members").Where(e => Names(e)).Select(e => e.Name).ToList());
        }

        parts.UnionWith(Entries("parts").Where(e => Names(e)).Select(e => e.Name));
    }

    private bool Goes(string owner, Entry entry) => owner switch
    {
        "members" => members.Contains(entry.Name),
        "parts" => parts.Contains(entry.Name),
        "timing" => members.Contains(entry.Name) || Names(entry),
        _ => Names(entry),
    };

    private IEnumerable<Entry> Entries(string owner)
    {
        var type = FormatType.Design.Of(owner)!;
        return root.Entries.FirstOrDefault(e => e.Key.Text == owner).Value switch
        {
            MapNode map => map.Entries.Select(e => new Entry(e.Key.Text, e.Value, type.Named!)),
            ListNode list => list.Items.Select((item, i) => new Entry(FormattableString.Invariant($"{i + 1}"), item, type.Item!)),
            _ => [],
        };
    }

    private bool Names(Entry entry) => Names(entry.Node, entry.Type);

    private bool Names(Node node, FormatType? type) => type is not null && node switch
    {
        MapNode m => m.Entries.Any(e => Names(e.Value, type.Of(e.Key.Text))),
        ListNode l when type.Item is { } item => l.Items.Any(i => Names(i, item)),
        ScalarNode s when type.Type == typeof(string) => type.Key?.Refers switch
        {
            Refers.Member => members.Contains(s.Text),

            // A member's own parts are called by its name, a space and what they are.
            Refers.Part => parts.Contains(s.Text) || members.Contains(s.Text.Split(' ')[0]),
            _ => false,
        },
        _ => false,
    };

    private sealed record Entry(string Name, Node Node, FormatType Type);
}
