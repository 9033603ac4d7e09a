using System.Text;
using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Package;

namespace Jackwork.Shop.Model;

/// <summary>The piece as one binary glTF file: every part in its material, every body a node, the whole performance as an animation.</summary>
/// <remarks>
/// Khronos Group, glTF 2.0 Specification (ISO/IEC 12113:2022): metres, y up, z to the viewer, seconds; rotations as x, y, z, w. Node 0 is
/// the case and carries the members and rods; a member carries those that sit on it; a part is a child of its body, without motion of its own.
/// </remarks>
internal sealed class GlbWriter
{
    /// <summary>Metres in a millimetre.</summary>
    private const double Metre = 0.001;

    private const uint Magic = 0x46546C67, Json = 0x4E4F534A, Binary = 0x004E4942;

    private readonly BinaryChunk numbers = new();
    private readonly JsonArray nodes = [], meshes = [], materials = [], samplers = [], channels = [];
    private readonly double seconds;

    private GlbWriter(double seconds) => this.seconds = seconds;

    /// <summary>The file's bytes.</summary>
    /// <param name="proof">What was worked out.</param>
    /// <param name="profiles">The profiles of the cams and wheels.</param>
    public static byte[] Write(Proof proof, IReadOnlyList<Profile> profiles)
    {
        var machine = proof.Machine;
        var writer = new GlbWriter(machine.Performance.Length / machine.CrankSpeed);
        writer.AddBodies(BodyNode.All(proof), proof.Assembly.Parts, PartMeshes.Of(proof, profiles));
        return writer.File(machine.Design.Title);
    }

    private void AddBodies(IReadOnlyList<BodyNode> bodies, IReadOnlyList<Part> parts, IReadOnlyList<Mesh> shapes)
    {
        var index = bodies.Select((b, i) => (b.Body, i)).ToDictionary(x => x.Body, x => x.i);
        var children = bodies.Select(_ => new JsonArray()).ToList();
        foreach (var body in bodies)
        {
            nodes.Add((JsonNode)new JsonObject
            {
                ["name"] = body.Name,
                ["translation"] = Numbers(Scaled(body.Place.Start)),
                ["rotation"] = Numbers(body.Rotation.Start),
            });
            if (body.Carrier is { } carrier)
            {
                children[index[carrier]].Add(index[body.Body]);
            }

            Animate(index[body.Body], "translation", body.Place, keys => numbers.Places(keys.Select(Scaled)));
            Animate(index[body.Body], "rotation", body.Rotation, keys => numbers.Rotations(Continuous(keys)));
        }

        var used = parts.Select(p => (p.Material, p.Colour)).Distinct().ToList();
        foreach (var (material, colour) in used)
        {
            materials.Add((JsonNode)Look(material, colour));
        }

        for (var i = 0; i < parts.Count; i++)
        {
            var at = index[parts[i].Body];
            meshes.Add((JsonNode)Shape(parts[i].Name, shapes[i], bodies[at].Origin, used.IndexOf((parts[i].Material, parts[i].Colour))));
            children[at].Add(nodes.Count);
            nodes.Add((JsonNode)new JsonObject { ["name"] = parts[i].Name, ["mesh"] = i });
        }

        for (var i = 0; i < bodies.Count; i++)
        {
            if (children[i].Count > 0)
            {
                nodes[i]!["children"] = children[i];
            }
        }
    }

    private JsonObject Shape(string name, Mesh mesh, Point3 origin, int material) => new()
    {
        ["name"] = name,
        ["primitives"] = new JsonArray((JsonNode)new JsonObject
        {
            ["attributes"] = new JsonObject
            {
                ["POSITION"] = numbers.Corners(mesh.Corners.Select(p => Scaled(p - origin))),
                ["NORMAL"] = numbers.Corners(mesh.Normals),
            },
            ["indices"] = numbers.Triangles(mesh.Triangles),
            ["material"] = material,
        }),
    };

    private static JsonObject Look(Material material, int? colour)
    {
        var finish = Finish.Of(material, colour);
        return new()
        {
            ["name"] = colour is { } c ? $"{material.Name} #{c:X6}" : material.Name,
            ["pbrMetallicRoughness"] = new JsonObject
            {
                ["baseColorFactor"] = new JsonArray(finish.Red, finish.Green, finish.Blue, 1),
                ["metallicFactor"] = finish.Metallic,
                ["roughnessFactor"] = finish.Roughness,
            },
        };
    }

    private void Animate<T>(int node, string path, Track<T> track, Func<IEnumerable<T>, int> values)
    {
        // Of keys that single precision puts at the same time the first stays; a performance of more than a day has such.
        var keys = track.Keys.DistinctBy(k => (float)(k.At * seconds)).ToList();
        if (keys.Count == 0)
        {
            return;
        }

        channels.Add((JsonNode)new JsonObject { ["sampler"] = samplers.Count, ["target"] = new JsonObject { ["node"] = node, ["path"] = path } });
        samplers.Add((JsonNode)new JsonObject
        {
            ["input"] = numbers.Times(keys.Select(k => (float)(k.At * seconds))),
            ["output"] = values(keys.Select(k => k.Value)),
            ["interpolation"] = "LINEAR",
        });
    }

    // Of the two quaternions of each rotation the one nearer to the key before.
    private static IEnumerable<Turn> Continuous(IEnumerable<Turn> turns)
    {
        Turn? before = null;
        foreach (var turn in turns)
        {
            before = before?.Near(turn) ?? turn;
            yield return before.Value;
        }
    }

    private byte[] File(string title)
    {
        var binary = numbers.Bytes;
        var document = new JsonObject
        {
            ["asset"] = new JsonObject { ["version"] = "2.0", ["generator"] = "Jackwork" },
            ["scene"] = 0,
            ["scenes"] = new JsonArray((JsonNode)new JsonObject { ["name"] = title, ["nodes"] = new JsonArray(0) }),
            ["nodes"] = nodes,
            ["accessors"] = numbers.Accessors,
            ["bufferViews"] = numbers.Views,
            ["buffers"] = new JsonArray((JsonNode)new JsonObject { ["byteLength"] = binary.Length }),
        };
        if (meshes.Count > 0)
        {
            document["meshes"] = meshes;
            document["materials"] = materials;
        }

        if (channels.Count > 0)
        {
            document["animations"] = new JsonArray((JsonNode)new JsonObject { ["name"] = "performance", ["samplers"] = samplers, ["channels"] = channels });
        }

        return Pack(Encoding.UTF8.GetBytes(document.ToJsonString()), binary);
    }

    // Header of 12 bytes, then each chunk: length, kind, bytes padded to fours (text with spaces).
    private static byte[] Pack(byte[] text, byte[] binary)
    {
        var padded = (text.Length + 3) / 4 * 4;
        var file = new MemoryStream();
        foreach (var word in (ReadOnlySpan<uint>)[Magic, 2, (uint)(28 + padded + binary.Length), (uint)padded, Json])
        {
            file.Write(BitConverter.GetBytes(word));
        }

        file.Write(text);
        file.Write(Enumerable.Repeat((byte)' ', padded - text.Length).ToArray());
        file.Write(BitConverter.GetBytes((uint)binary.Length));
        file.Write(BitConverter.GetBytes(Binary));
        file.Write(binary);
        return file.ToArray();
    }

    private static Vec3 Scaled(Vec3 mm) => Metre * mm;

    private static Vec3 Scaled(Point3 mm) => Metre * (mm - default(Point3));

    private static JsonArray Numbers(Vec3 v) => new(v.X, v.Y, v.Z);

    private static JsonArray Numbers(Turn t) => new(t.X, t.Y, t.Z, t.W);
}
