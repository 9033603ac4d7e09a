using System.Reflection;
using System.Xml.Linq;
using Jackwork.Design;
using Xunit;

namespace Jackwork.Tests.Conventions;

/// <summary>What the built libraries promise: value types that can't change, documented types, sealed or abstract classes.</summary>
[Trait("Proof", "property")]
public sealed class TypeTests
{
    private static readonly Assembly Core = typeof(DesignSpec).Assembly;

    private static readonly Type[] Public = [.. Core.GetExportedTypes()];

    private static readonly Dictionary<string, XElement> Docs = XDocument.Load(Path.ChangeExtension(Core.Location, ".xml"))
        .Descendants("member").ToDictionary(m => (string)m.Attribute("name")!);

    // Scratch of an iterative solver may change while it lives on the stack; what others see may not.
    [Fact]
    public void StructsAreReadonly() => Assert.All(
        Core.GetTypes().Where(t => t is { IsValueType: true, IsEnum: false } && !IsCompilers(t) && (t.IsVisible || t.Namespace != "Jackwork.Solids")),
        t => Assert.True(t.GetCustomAttributes().Any(a => a.GetType().Name == "IsReadOnlyAttribute"), t.FullName));

    [Fact]
    public void PublicClassesAreSealedOrMeantToBeDerived() => Assert.All(
        Public.Where(t => t.IsClass),
        t => Assert.True(t.IsSealed || t.IsAbstract || Core.GetTypes().Any(d => d.BaseType == t), t.FullName));

    [Fact]
    public void PublicTypesAreDocumented() => Assert.All(Public, t =>
    {
        var name = "T:" + t.FullName!.Replace('+', '.');
        Assert.True(Docs.TryGetValue(name, out var doc) && doc.Element("summary")?.Value.Trim().Length > 10, name);
    });

    [Fact]
    public void SummariesAreSentences() => Assert.All(
        Docs.Where(d => d.Key.StartsWith("T:", StringComparison.Ordinal)).Select(d => (d.Key, Text: d.Value.Element("summary")?.Value.Trim() ?? "")).Where(d => d.Text.Length > 0),
        d => Assert.True(d.Text.EndsWith('.') || d.Text.EndsWith(':'), $"{d.Key}: {d.Text}"));

    [Fact]
    public void PublicFieldsAreConstant() => Assert.All(
        Public.Where(t => !t.IsEnum).SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)),
        f => Assert.True(f.IsLiteral || f.IsInitOnly, $"{f.DeclaringType}.{f.Name}"));

    /// <summary>Every key of the design file says its unit where it is a number with one: rates and counts aside, a bare number is a slip.</summary>
    [Fact]
    public void NumbersOfTheFileSayTheirUnit()
    {
        string[] bare = ["Jackwork", "Planet", "Planets", "Teeth", "Slots", "Pins", "Steps", "Shift", "Beats", "ContactRatio", "Friction", "Points", "Scale"];
        var keys = FormatPage.Sections.SelectMany(s => s.GetProperties()).Select(p => (p, Key: p.GetCustomAttribute<KeyAttribute>())).Where(x => x.Key is not null);
        Assert.All(keys.Where(x => IsNumber(x.p.PropertyType) && !bare.Contains(x.p.Name)), x => Assert.True(x.Key!.Unit.Length > 0, $"{x.p.DeclaringType!.Name}.{x.p.Name}"));
    }

    private static bool IsNumber(Type t) => t.IsGenericType ? IsNumber(t.GetGenericArguments()[0]) : t == typeof(double) || t == typeof(int) || t == typeof(NumberOrWord);

    private static bool IsCompilers(Type t) => t.Name.Contains('<', StringComparison.Ordinal) || t.GetCustomAttribute<System.Runtime.CompilerServices.CompilerGeneratedAttribute>() is not null || (t.DeclaringType is { } d && IsCompilers(d));
}
