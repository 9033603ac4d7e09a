using Jackwork.Design;
using Jackwork.Meshes;
using Jackwork.Motion;

namespace Jackwork.Bench.Sessions;

/// <summary>A mesh to be put into a design: what the maker chose.</summary>
internal sealed record MeshChoice
{
    /// <summary>Name of the new part.</summary>
    public string Part { get; init; } = "";

    /// <summary>The member that it sits on, or the case.</summary>
    public string On { get; init; } = Names.Case;

    /// <summary>Unit of the file's numbers: mm, cm, m or in.</summary>
    public string Unit { get; init; } = "mm";

    /// <summary>How many times larger than in the file.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>Where the origin of the file stands: x, y, z, mm.</summary>
    public IReadOnlyList<double> At { get; init; } = [0, 0, 0];

    /// <summary>Turned about x, then y, then z, deg.</summary>
    public IReadOnlyList<double> Turn { get; init; } = [0, 0, 0];

    /// <summary>Its material.</summary>
    public string Material { get; init; } = "limewood";
}

/// <summary>Puts a mesh file into a design: held against all that the design and the mesh must keep before anything is written.</summary>
internal static class MeshImport
{
    /// <summary>Folder of the meshes within a design's folder.</summary>
    public const string Folder = "meshes";

    /// <summary>Kinds of file that are taken, by the ends of their names; each holds all that it needs.</summary>
    public static IReadOnlyList<string> Endings { get; } = [".stl", ".obj", ".glb"];

    /// <summary>Reads an uploaded file; a name with another ending is refused.</summary>
    public static MeshReading Read(string name, byte[] bytes) => Endings.Contains(MeshFile.Ending(name))
        ? MeshFile.Read(name, bytes, _ => null)
        : new(null, [new(MeshFault.Unreadable, $"'{name}' is none of {string.Join(", ", Endings)}", "Export it as one of these")]);

    /// <summary>A file's name as a part may be called: lower-case letters, digits and hyphens.</summary>
    public static string NameFor(string file)
    {
        var letters = file[..^MeshFile.Ending(file).Length].ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-');
        var name = string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
        name = (name.Length > 0 && char.IsAsciiLetter(name[0]) ? name : "mesh-" + name).Trim('-');
        return name.Length > 36 ? name[..36].Trim('-') : name;
    }

    /// <summary>The design's text with the mesh in it as a part, or what is against it, in sentences.</summary>
    /// <param name="text">The design's text.</param>
    /// <param name="files">Gives the files beside it.</param>
    /// <param name="file">Path that the mesh will have in the design's folder.</param>
    /// <param name="bytes">The mesh file.</param>
    /// <param name="choice">What the maker chose.</param>
    public static (string? Text, IReadOnlyList<string> Troubles) Into(string text, Func<string, byte[]?> files, string file, byte[] bytes, MeshChoice choice)
    {
        if (!Names.IsName(choice.Part) || choice.Part == Names.Case)
        {
            return (null, [$"'{choice.Part}' can't be the name of a part: it needs lower-case letters, digits and single hyphens, a letter first, at most 40."]);
        }

        var before = MachineBuilder.Build(text, files);
        if (before.Machine is null)
        {
            return (null, [FormattableString.Invariant($"The design's text doesn't read as it is (line {before.Problems[0].At.Line}: {before.Problems[0].What}). Mend that first.")]);
        }

        if (choice.At.Concat(choice.Turn).Append(choice.Scale).Any(n => !double.IsFinite(n)))
        {
            return (null, ["Scale, place and turn must be numbers."]);
        }

        var edit = DesignText.Add(text, "parts", choice.Part, Entry(file, choice));
        if (!edit.IsDone)
        {
            return (null, [$"The part '{choice.Part}' can't be added: {edit.Refusal}."]);
        }

        var after = MachineBuilder.Build(edit.Text, name => name == file ? bytes : files(name));
        return after.Machine is null ? (null, [.. after.Problems.Select(p => $"{p.What}. {p.Remedy}.")]) : (edit.Text, []);
    }

    private static string Entry(string file, MeshChoice c)
    {
        string Number(double v) => DesignText.Number(v, 4);
        string Three(IReadOnlyList<double> v) => $"[{string.Join(", ", v.Select(Number))}]";
        var on = c.On == Names.Case ? "" : $"on: {c.On}, ";
        var turn = c.Turn.All(t => t == 0) ? "" : $", turn: {Three(c.Turn)}";
        var scale = c.Scale == 1 ? "" : $", scale: {Number(c.Scale)}";
        return $"{{{on}mesh: {{file: {DesignText.Words(file)}, unit: {c.Unit}, at: {Three(c.At)}{turn}{scale}}}, material: {c.Material}}}";
    }
}
