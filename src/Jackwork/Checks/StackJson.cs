using System.Text.Json.Nodes;
using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>A stack as JSON. Stations in mm along its axis from the point that the design gives for it.</summary>
internal static class StackJson
{
    /// <summary>The stack with its things, its gaps and its grub screws.</summary>
    public static JsonObject Of(Proof proof, Stack s) => new()
    {
        ["name"] = s.Name,
        ["carrier"] = proof.Machine.NameOf(s.Carrier),
        ["through"] = new JsonArray(s.Axis.Through.X, s.Axis.Through.Y, s.Axis.Through.Z),
        ["along"] = new JsonArray(s.Axis.Along.X, s.Axis.Along.Y, s.Axis.Along.Z),
        ["rods"] = new JsonArray([.. s.Cores.Select(Item)]),
        ["items"] = new JsonArray([.. s.Items.Select(Item)]),
        ["gaps"] = new JsonArray([.. s.Runs.Select(Run)]),
        ["endFloatMm"] = s.Float,
        ["grubScrews"] = new JsonArray([.. s.Grubs.Select(Grub)]),
    };

    private static JsonObject Item(StackItem i) => new()
    {
        ["name"] = i.Name,
        ["role"] = i.Role.ToString().ToLowerInvariant(),
        ["fromMm"] = i.From,
        ["toMm"] = i.To,
        ["boreMm"] = i.Bore,
        ["outsideMm"] = i.Outside,
    };

    private static JsonObject Run(StackRun r) => new()
    {
        ["from"] = r.First?.Name,
        ["between"] = new JsonArray([.. r.Between.Select(i => JsonValue.Create(i.Name))]),
        ["to"] = r.Last?.Name,
        ["gapMm"] = Of(r, g => g.Nominal),
        ["worstMinMm"] = Of(r, g => g.Least),
        ["worstMaxMm"] = Of(r, g => g.Most),
        ["likelyMinMm"] = Of(r, g => g.LikelyLeast),
        ["likelyMaxMm"] = Of(r, g => g.LikelyMost),
    };

    private static JsonNode? Of(StackRun r, Func<GapRange, double> value) => r.IsOpen ? null : JsonValue.Create(value(r.Range));

    private static JsonObject Grub(GrubAccess g) => new()
    {
        ["hub"] = g.Hub.Name,
        ["size"] = g.Hub.Grub!.Name,
        ["keyMm"] = g.Hub.Grub.Key,
        ["openCrankDeg"] = new JsonArray([.. g.Open.Select(o => new JsonArray(Proof.Deg(o.From), Proof.Deg(o.To)))]),
        ["inTheWay"] = g.InTheWay,
    };
}
