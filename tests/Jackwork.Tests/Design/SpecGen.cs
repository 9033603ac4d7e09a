using System.Reflection;
using CsCheck;
using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Tests.Design;

/// <summary>Random designs: every key present or absent, every number within its key's range, and text of the kind that breaks writers.</summary>
internal static class SpecGen
{
    private static readonly object Absent = new();

    private static readonly string[] Odd =
    [
        "", " ", "yes", "no", "true", "null", "~", "1e3", "0x10", ".nan", "- a", "a: b", "a #b", "#b", "&a", "*a", "!t", "|", ">", "%", "@", "`", "'", "\"", "\\", "[", "]", "{", "}", ",", "?",
        " leading", "trailing ", "two\nlines", "\n", "\r\n", "\ttab", "\u0085", "\u00a0", "\u2028", "\ufeff", "\u0001", "\0", "\u007f", "\u009f", "œ", "\ud83d\ude00", "\ud83d\ude00: \"q\"", "---", "...", "<<", "key:", "\ufffe", "\uffff", "2024-01-01", "12:30", "é\u0301",
    ];

    private static readonly Gen<string> AnyText = Gen.OneOf(Gen.OneOf<string>(Odd), Gen.OneOf<string>(Odd).Array[1, 5].Select(string.Concat), Gen.String[Gen.Char[' ', '~'], 0, 300]);

    private static readonly Gen<string> AnyName = Gen.String[Gen.Char['a', 'z'], 1, 12].Array[1, 3].Select(words => string.Join('-', words));

    /// <summary>A random design.</summary>
    public static Gen<DesignSpec> Design { get; } = Part(typeof(DesignSpec)).Select(o => (DesignSpec)o);

    private static Gen<object> Part(Type type)
    {
        var keys = type.GetProperties().Select(p => (p, key: p.GetCustomAttribute<KeyAttribute>())).Where(x => x.key is not null).ToArray();
        var values = keys.Select(k => IsOptional(k.p) ? Gen.OneOf(Gen.Const(Absent), Value(k.p.PropertyType, k.key!)) : Value(k.p.PropertyType, k.key!));
        return values.Aggregate(Gen.Const(Array.Empty<object>()), (all, next) => Gen.Select(all, next, (a, v) => (object[])[.. a, v])).Select(all =>
        {
            var part = Activator.CreateInstance(type)!;
            for (var i = 0; i < keys.Length; i++)
            {
                keys[i].p.SetValue(part, all[i] == Absent ? null : all[i]);
            }

            return part;
        });
    }

    private static bool IsOptional(PropertyInfo p) => new NullabilityInfoContext().Create(p).WriteState == NullabilityState.Nullable;

    private static Gen<object> Value(Type declared, KeyAttribute key)
    {
        var type = Nullable.GetUnderlyingType(declared) ?? declared;
        if (type == typeof(string))
        {
            return key.Words.Length > 0 ? Gen.OneOf(key.Words.Split(' ')).Select(s => (object)s) : AnyText.Select(s => (object)s);
        }

        if (type == typeof(bool))
        {
            return Gen.Bool.Select(b => (object)b);
        }

        if (type == typeof(int))
        {
            return Gen.Int[(int)key.Min, (int)key.Max].Select(i => (object)i);
        }

        if (type == typeof(double))
        {
            return Number(key).Select(d => (object)d);
        }

        if (type == typeof(NumberOrWord))
        {
            return Gen.OneOf(Number(key).Select(d => (object)new NumberOrWord(d)), Gen.Const((object)new NumberOrWord(0, key.OrWord)));
        }

        var coordinate = Number(new KeyAttribute(""));
        if (type == typeof(Point3))
        {
            return Gen.Select(coordinate, coordinate, coordinate).Select((x, y, z) => (object)new Point3(x, y, z));
        }

        if (type == typeof(Vec3))
        {
            return Gen.OneOf(Gen.OneOf(new Vec3(1, 0, 0), new Vec3(0, -1, 0), new Vec3(0, 0, 2)), Gen.Select(coordinate, coordinate, coordinate).Select((x, y, z) => new Vec3(x, y, z)).Where(v => v.Length > 1e-6)).Select(v => (object)v);
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            var item = type.GetGenericArguments()[0];
            return (key.Count > 0 ? Value(item, key).Array[key.Count] : Value(item, key).Array[0, 4]).Select(items => Items(item, items));
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(NamedMap<>))
        {
            var item = type.GetGenericArguments()[0];
            return Gen.Select(AnyName, Part(item)).Array[0, 4].Select(pairs => Named(item, pairs));
        }

        return Part(type);
    }

    // Plain figures, figures with all their digits, tiny ones and the ends of the range.
    private static Gen<double> Number(KeyAttribute key)
    {
        var (min, max) = (Math.Max(key.Min, -1e6), Math.Min(key.Max, 1e6));
        return Gen.OneOf(Gen.Double[min, max], Gen.Double[min, max].Select(d => Math.Clamp(Math.Round(d, 2), min, max)), Gen.Double[-1e-300, 1e-5].Select(d => Math.Clamp(d, min, max)), Gen.OneOf(min, max));
    }

    private static object Items(Type item, object[] items)
    {
        var list = Array.CreateInstance(item, items.Length);
        items.CopyTo(list, 0);
        return list;
    }

    private static object Named(Type item, (string Name, object Value)[] pairs)
    {
        var pair = typeof(KeyValuePair<,>).MakeGenericType(typeof(string), item);
        var distinct = pairs.DistinctBy(p => p.Name).ToArray();
        var list = Array.CreateInstance(pair, distinct.Length);
        for (var i = 0; i < distinct.Length; i++)
        {
            list.SetValue(Activator.CreateInstance(pair, distinct[i].Name, distinct[i].Value), i);
        }

        return Activator.CreateInstance(typeof(NamedMap<>).MakeGenericType(item), list)!;
    }
}
