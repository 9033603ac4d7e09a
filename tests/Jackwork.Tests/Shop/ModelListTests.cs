using System.Text.Json;
using Jackwork.Shop.Package;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The list of parts, read by Python's csv module.</summary>
[Trait("Proof", "independent")]
public sealed class ModelListTests
{
    private const string Reader = """
        import csv, json, sys
        print(json.dumps(list(csv.DictReader(open(sys.argv[1], newline="")))))
        """;

    [Fact]
    public void The_list_holds_every_part_once_its_masses_add_up_and_known_parts_weigh_what_they_should()
    {
        var proof = ModelFiles.Of("keeper").Proof;
        var rows = OutsideReader.Read(Reader, PartList.Write(proof, 7)).EnumerateArray().ToList();
        var (parts, total) = (rows[..^1].FindAll(r => Text(r, "kind") != "joined"), rows[^1]);
        Assert.Equal(proof.Assembly.Parts.Select(p => p.Name), parts.Select(r => Text(r, "part")));
        Assert.True(parts.Count > 60);
        Assert.Equal("total", Text(total, "part"));
        Assert.Equal(parts.Sum(r => Number(r, "mass in one piece [g]")), Number(total, "mass in one piece [g]"), 0.1);
        Assert.Equal(7 * Number(total, "mass in one piece [g]"), Number(total, "mass in all pieces [g]"), 0.01);
        Assert.Equal(7 * parts.Count, Number(total, "count"));

        // The main shaft: steel of 7.85 g/cm3, 8 mm round, from -187 to 31 mm along its axis.
        var shaft = parts.Single(r => Text(r, "part") == "main shaft");
        Assert.Equal(("main", "steel", "shaft", "7"), (Text(shaft, "on"), Text(shaft, "material"), Text(shaft, "kind"), Text(shaft, "count")));
        Assert.Equal(Math.PI * 16 * 218 * 7.85 / 1000, Number(shaft, "mass in one piece [g]"), 0.001);
        Assert.Equal((218, 8, 8), (Number(shaft, "size x [mm]"), Number(shaft, "size y [mm]"), Number(shaft, "size z [mm]")));

        // A rod is listed along itself: its pins stand at (-80, 97.9, 27.8) and (-80, 126, 20), and half a diameter more at each end.
        var rod = parts.Single(r => Text(r, "part") == "gull rod");
        Assert.Equal("gull rod", Text(rod, "on"));
        Assert.Equal(Math.Sqrt(28.1 * 28.1 + 7.8 * 7.8) + 2, Number(rod, "size x [mm]"), 0.01);
    }

    private static string Text(JsonElement row, string column) => row.GetProperty(column).GetString()!;

    private static double Number(JsonElement row, string column) => double.Parse(Text(row, column), System.Globalization.CultureInfo.InvariantCulture);
}
