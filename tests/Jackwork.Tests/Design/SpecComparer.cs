using System.Collections;
using System.Reflection;
using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Tests.Design;

/// <summary>Compares two designs key by key, through every list and map, and names the first key that differs.</summary>
internal static class SpecComparer
{
    /// <summary>The path and values of the first difference, or null. An optional number or flag that is absent equals its default only where the type has no null.</summary>
    public static string? Difference(object? a, object? b, string path = "")
    {
        switch (a, b)
        {
            case (null, null):
                return null;
            case (null, _) or (_, null):
                return $"{path}: {a ?? "absent"} against {b ?? "absent"}";
            case (string or bool or int or double or NumberOrWord or Point3 or Vec3, _):
                return a.Equals(b) ? null : $"{path}: {a} against {b}";
            case (IEnumerable x, IEnumerable y):
                return Lists([.. x.Cast<object>()], [.. y.Cast<object>()], path);
        }

        if (a!.GetType() is { IsGenericType: true } t && t.GetGenericTypeDefinition() == typeof(KeyValuePair<,>))
        {
            return Property("Key") ?? Property("Value");
        }

        return a.GetType().GetProperties().Where(p => p.GetCustomAttribute<KeyAttribute>() is not null).Select(p => Property(p.Name)).FirstOrDefault(d => d is not null);
        string? Property(string name) => Difference(a.GetType().GetProperty(name)!.GetValue(a), b!.GetType().GetProperty(name)!.GetValue(b), $"{path}.{name}");
    }

    private static string? Lists(object[] a, object[] b, string path) => a.Length != b.Length
        ? $"{path}: {a.Length} items against {b.Length}"
        : a.Select((x, i) => Difference(x, b[i], $"{path}.{i + 1}")).FirstOrDefault(d => d is not null);
}
