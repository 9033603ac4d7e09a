using System.Text.Json;

namespace Jackwork.Meshes;

/// <summary>Reads mesh files: any bytes at all give a reading, never an exception.</summary>
public static class MeshFile
{
    /// <summary>The kinds of file that are read, by the end of their names.</summary>
    public static IReadOnlyList<string> Endings { get; } = [".stl", ".obj", ".glb", ".gltf"];

    /// <summary>Whether files with that name say their unit: glTF is in metres by its standard.</summary>
    public static bool SaysUnit(string name) => Ending(name) is ".glb" or ".gltf";

    /// <summary>Millimetres in a unit of <see cref="Design.MeshSpec.Unit"/>: mm, cm, m or in.</summary>
    public static double Millimetres(string unit) => unit switch
    {
        "mm" => 1,
        "cm" => 10,
        "m" => 1000,
        "in" => 25.4,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "A mesh is drawn in mm, cm, m or in."),
    };

    /// <summary>The end of a file's name, from its last dot, in lower case.</summary>
    public static string Ending(string name) => name.LastIndexOf('.') is var dot and >= 0 ? name[dot..].ToLowerInvariant() : "";

    /// <summary>The mesh of a file, in the file's own unit, not yet checked; or why it can't be read.</summary>
    /// <param name="name">The file's name; its end says what kind it is.</param>
    /// <param name="bytes">The file.</param>
    /// <param name="beside">Gives the bytes of a file that this one names, null for none.</param>
    public static MeshReading Read(string name, ReadOnlyMemory<byte> bytes, Func<string, byte[]?> beside)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(beside);
        try
        {
            if (bytes.Length > MeshLimits.MostBytes)
            {
                throw new MeshRefusal(FormattableString.Invariant($"the file has {bytes.Length} bytes; at most {MeshLimits.MostBytes} are read"), "Make it coarser (decimate it) in the modelling program");
            }

            return new(
                Ending(name) switch
                {
                    ".stl" => StlReader.Read(bytes.Span),
                    ".obj" => ObjReader.Read(bytes.Span),
                    ".glb" or ".gltf" => GltfReader.Read(bytes, beside),
                    var other => throw new MeshRefusal($"files ending in '{other}' are not read", $"Export it as one of {string.Join(", ", Endings)}"),
                },
                []);
        }
        catch (MeshRefusal refusal)
        {
            return MeshReading.Refused(refusal.Problem);
        }
        catch (InvalidOperationException)
        {
            // A JSON text whose escapes are no characters.
            return MeshReading.Refused(new MeshProblem(MeshFault.Unreadable, "its JSON holds text that is none", GltfJson.Damaged));
        }
        catch (JsonException e)
        {
            return MeshReading.Refused(new MeshProblem(MeshFault.Unreadable, FormattableString.Invariant($"its JSON breaks off at line {e.LineNumber + 1}"), GltfJson.Damaged));
        }
    }
}
