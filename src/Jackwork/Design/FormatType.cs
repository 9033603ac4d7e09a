using System.Globalization;

namespace Jackwork.Design;

/// <summary>What the format says of one place of a design.</summary>
/// <param name="Type">Type of the value.</param>
/// <param name="Key">What its key means; null for the whole design and for what stands under a name.</param>
internal sealed record FormatType(Type Type, KeyAttribute? Key = null)
{
    /// <summary>The whole design.</summary>
    public static FormatType Design { get; } = new(typeof(DesignSpec));

    /// <summary>What the items of a list are; null where this is no list of the format's own.</summary>
    public FormatType? Item => KeyInfo.ItemOf(Type, typeof(IReadOnlyList<>)) is { } item ? new(item, Key) : null;

    /// <summary>What stands under each name; null where this is no map of names.</summary>
    public FormatType? Named => KeyInfo.ItemOf(Type, typeof(NamedMap<>)) is { } named ? new(named) : null;

    /// <summary>The keys in their order; none where this is no part with keys.</summary>
    public IReadOnlyList<KeyInfo> Keys => Item is null && Named is null ? KeyInfo.Of(Type) : [];

    /// <summary>What stands one step further.</summary>
    public FormatType? Of(string step) => Item ?? Named ?? (Keys.FirstOrDefault(k => k.Name == step) is { } key ? new(key.Type, key.Key) : null);

    /// <summary>Where a key comes in the format's order; below 0 where it has none.</summary>
    public int Order(string key) => Keys.TakeWhile(k => k.Name != key).Count() is var i && i < Keys.Count ? i : -1;

    /// <summary>Why the steps can't be put here; null when they can.</summary>
    public string? Refusal(IReadOnlyList<string> steps, string at)
    {
        var type = this;
        foreach (var step in steps)
        {
            var here = at.Length == 0 ? "the design" : $"'{at}'";
            if (type.Named is not null && (!Names.IsName(step) || step == Names.Case))
            {
                return $"'{step}' is not a name: lower-case letters, digits and single hyphens, a letter first, at most 40; not '{Names.Case}'";
            }

            if (type.Item is not null && !int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out _))
            {
                return $"{here} is a list; it has no '{step}'";
            }

            if (type.Keys.Count > 0 && type.Order(step) < 0)
            {
                return $"{here} has no key '{step}'. {Names.Suggest(step, [.. type.Keys.Select(k => k.Name)])}";
            }

            at = at.Length == 0 ? step : $"{at}.{step}";
            if (type.Of(step) is not { } next)
            {
                return null;
            }

            type = next;
        }

        return null;
    }
}
