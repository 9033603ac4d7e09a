using System.Reflection;

namespace Jackwork.Design;

/// <summary>One key of a part of the file, as its type declares it.</summary>
internal sealed record KeyInfo(string Name, PropertyInfo Property, KeyAttribute Key, Type Type)
{
    /// <summary>The keys of a part of the file, in the order declared, those of its own before those that it shares with others.</summary>
    public static IReadOnlyList<KeyInfo> Of(Type part)
    {
        lock (Cache)
        {
            if (!Cache.TryGetValue(part, out var keys))
            {
                keys = [.. part.GetProperties()
                    .OrderBy(p => p.DeclaringType != part)
                    .ThenBy(p => p.MetadataToken)
                    .Select(p => (p, key: p.GetCustomAttribute<KeyAttribute>()))
                    .Where(x => x.key is not null)
                    .Select(x => new KeyInfo(Names.Kebab(x.p.Name), x.p, x.key!, Nullable.GetUnderlyingType(x.p.PropertyType) ?? x.p.PropertyType))];
                Cache.Add(part, keys);
            }

            return keys;
        }
    }

    /// <summary>The type inside a list or named map, or null.</summary>
    public static Type? ItemOf(Type type, Type generic) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == generic ? type.GetGenericArguments()[0] : null;

    private static readonly Dictionary<Type, IReadOnlyList<KeyInfo>> Cache = [];
}
