using System.Text;
using System.Text.RegularExpressions;
using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Shop.Package;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The package's lists of what is drawn flat.</summary>
public sealed partial class PatternListTests
{
    // Nothing drawn to be cut or worked by is missing from the lists, but for turned parts, which the list of parts has; nothing is listed that is not there.
    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void EverySheetIsListedAndEveryListedSheetIsThere(string example)
    {
        var proof = Proof.Of(MachineBuilder.Build(ExampleFiles.Text(example)).Machine!);
        var files = ShopPackage.Files(proof, Verdict.OfMotion(proof), () => "", 1);
        var listed = Names("profiles.csv").Concat(Names("patterns.csv")).ToList();
        var turned = proof.Mechanisms.SelectMany(m => m.Turnings).Select(t => t.Name.Replace(' ', '-'));
        var drawn = files.Where(f => f.Path.EndsWith(".dxf", StringComparison.Ordinal)).Select(f => System.IO.Path.GetFileNameWithoutExtension(f.Path));
        Assert.Equal(drawn.Except(turned).Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));

        IEnumerable<string> Names(string path) => files.Where(f => f.Path == path).SelectMany(f => Encoding.UTF8.GetString(f.Make()).Split('\n').Skip(1)).Where(l => l.Length > 0).Select(l => l.Split(',')[0]);
    }

    // The sheet that goes round a cylinder is pi D wide, as its drawing says.
    [Fact]
    [Trait("Proof", "closed form")]
    public void APatternGoesOnceRoundItsCylinder()
    {
        var proof = Proof.Of(MachineBuilder.Build(ExampleFiles.Text("weaver")).Machine!);
        var rows = PatternList.Write(proof, 3).Split("\r\n").Skip(1).Where(l => l.Length > 0).Select(l => l.Split(',')).ToList();
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            double[] n = [.. row.Skip(3).Where(c => Number().IsMatch(c)).Select(c => double.Parse(c, System.Globalization.CultureInfo.InvariantCulture))];
            Assert.Equal(Math.PI * n[2], n[0], 0.01);
            Assert.Equal(3, n[3]);
        }
    }

    [GeneratedRegex("^[0-9.]+$")]
    private static partial Regex Number();
}
