using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Jackwork.Bench.Sessions;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Model;

namespace Jackwork.Bench.Stage;

/// <summary>
/// What stands on the stage: parts with their looks, bodies, the crank's axis, in mm, and the meshes that the page does not have yet.
/// Little-endian: length of the list as a 32-bit integer, the list as JSON, spaces up to four, then the meshes (see <see cref="StageMeshes"/>).
/// </summary>
internal static class StageScene
{
    /// <summary>The list with its meshes.</summary>
    /// <param name="solids">The parts.</param>
    /// <param name="known">Marks of the meshes that the page has.</param>
    public static byte[] Write(Shapes solids, IReadOnlySet<string> known)
    {
        var lacking = Enumerable.Range(0, solids.Parts.Count).Where(i => !known.Contains(solids.Marks[i])).DistinctBy(i => solids.Marks[i]).ToList();
        var list = Encoding.UTF8.GetBytes(List(solids, lacking));
        var stream = new MemoryStream();
        stream.Write(BitConverter.GetBytes((list.Length + 3) / 4 * 4));
        stream.Write(list);
        stream.Write("   "u8[..((4 - list.Length % 4) % 4)]);
        StageMeshes.Write(stream, solids, lacking);
        return stream.ToArray();
    }

    private static string List(Shapes solids, IReadOnlyList<int> lacking)
    {
        var work = solids.Work;
        var machine = work.Machine;
        var bodies = StagePoses.Bodies(work);
        var at = bodies.Select((b, i) => (b, i)).ToDictionary(x => x.b, x => x.i);
        var crank = machine.Members[machine.Crank].Joint;
        var scene = new JsonObject
        {
            ["version"] = solids.Version,
            ["crank"] = new JsonObject { ["body"] = at[new(machine.Crank)], ["through"] = Of(crank.Through), ["along"] = Of(crank.Along) },
            ["bodies"] = bodies.Count,
            ["meshes"] = new JsonArray([.. lacking.Select(i => (JsonNode)solids.Marks[i])]),
            ["parts"] = new JsonArray([.. solids.Parts.Select((p, i) => (JsonNode)Part(p, at[p.Body], solids.Marks[i]))]),
        };
        return scene.ToJsonString(JsonSerializerOptions.Web);
    }

    private static JsonObject Part(Part part, int body, string mark)
    {
        var finish = Finish.Of(part.Material, part.Colour);
        return new()
        {
            ["name"] = part.Name,
            ["body"] = body,
            ["mark"] = mark,
            ["colour"] = part.Colour ?? part.Material.Colour,
            ["metal"] = finish.Metallic,
            ["rough"] = finish.Roughness,
            ["case"] = part.Kind == PartKind.Board,
        };
    }

    private static JsonArray Of(Point3 p) => [p.X, p.Y, p.Z];

    private static JsonArray Of(Vec3 v) => [v.X, v.Y, v.Z];
}
