using System.Collections;

namespace Jackwork.Design;

/// <summary>Named values in the order written.</summary>
public sealed class NamedMap<T>(IReadOnlyList<KeyValuePair<string, T>> entries) : IReadOnlyCollection<KeyValuePair<string, T>>, INamedMap
{
    private readonly Dictionary<string, T> byName = entries.ToDictionary(e => e.Key, e => e.Value);

    /// <summary>No values.</summary>
    public static NamedMap<T> Empty { get; } = new([]);

    /// <summary>Number of values.</summary>
    public int Count => entries.Count;

    /// <summary>The names in order.</summary>
    public IEnumerable<string> Names => entries.Select(e => e.Key);

    /// <summary>The value under a name that is known to be there.</summary>
    public T this[string name] => byName[name];

    IEnumerable<(string Name, object Value)> INamedMap.Items => entries.Select(e => (e.Key, (object)e.Value!));

    /// <summary>Whether the name is there.</summary>
    public bool Contains(string name) => byName.ContainsKey(name);

    /// <summary>The same values with one replaced or added.</summary>
    public NamedMap<T> With(string name, T value) => new(
        byName.ContainsKey(name)
            ? [.. entries.Select(e => e.Key == name ? KeyValuePair.Create(name, value) : e)]
            : [.. entries, KeyValuePair.Create(name, value)]);

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => entries.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>A <see cref="NamedMap{T}"/> seen without its type, for the writer.</summary>
internal interface INamedMap
{
    IEnumerable<(string Name, object Value)> Items { get; }
}
