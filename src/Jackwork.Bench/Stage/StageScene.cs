using System.Text.Json;
using System.Text.Json.Nodes;
using Jackwork.Bench.Sessions;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Model;

namespace Jackwork.Bench.Stage;

/// <summary>The list of what stands on the stage: parts with their looks, bodies, the crank's axis, the room the piece takes. Lengths mm.</summary>
internal static class StageScene
{
    /// <summary>The list as JSON.</summary>
    public static string Write(Shapes solids)
    {
        var work = solids.Work;
        var machine = work.Machine;
        var bodies = StagePoses.Bodies(work);
        var at = bodies.Select((b, i) => (b, i)).ToDictionary(x => x.b, x => x.i);
        var crank = machine.Members[machine.Crank].Joint;
        var scene = new JsonObject
        {
            ["version"] = solids.Version,
            ["turns"] = machine.Performance.CrankTurns,
            ["rpm"] = machine.Design.Crank.Rpm,
            ["crank"] = new JsonObject { ["body"] = at[new(machine.Crank)], ["through"] = Of(crank.Through), ["along"] = Of(crank.Along) },
            ["bodies"] = bodies.Count,
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
