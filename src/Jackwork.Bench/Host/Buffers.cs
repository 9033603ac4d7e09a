using Jackwork.Bench.Sessions;
using Jackwork.Bench.Stage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Jackwork.Bench.Host;

/// <summary>What the stage fetches of an open design: the list of parts with the meshes that it lacks, and the poses.</summary>
internal static class Buffers
{
    private const string Binary = "application/octet-stream";

    /// <summary>Serves them.</summary>
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/ring", (string path, RingPictures rings) => rings.Of(path) is { } svg ? Results.Text(svg, "image/svg+xml") : Results.NotFound());
        app.MapGet("/example", (string name, ExamplePictures pictures) => pictures.Of(name) is { } svg ? Results.Text(svg, "image/svg+xml") : Results.NotFound());
        app.MapPost("/open/{id}/scene", async (string id, HttpRequest request, OpenSessions sessions) =>
        {
            using var reader = new StreamReader(request.Body);
            var known = await reader.ReadToEndAsync();
            return sessions.Find(id)?.Now.Solids is { } solids ? Results.Bytes(StageScene.Write(solids, known.Split('.').ToHashSet()), Binary) : Results.NotFound();
        });
        app.MapGet("/open/{id}/poses", (string id, OpenSessions sessions) =>
            sessions.Find(id)?.Now.Work is { } work ? Results.Bytes(work.Poses, Binary) : Results.NotFound());
        app.MapGet("/open/{id}/package.zip", (string id, OpenSessions sessions) =>
            sessions.Find(id)?.Package is { } zip ? Results.File(zip.Bytes, "application/zip", zip.Name) : Results.NotFound());
    }
}
