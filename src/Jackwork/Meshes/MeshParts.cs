using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Meshes;

/// <summary>Reads the meshes that a design names and sets them in their places.</summary>
internal static class MeshParts
{
    /// <summary>The meshes by the names of their parts, mm, where they stand as drawn; what is wrong with one is noted where the design names it.</summary>
    /// <param name="spec">The design.</param>
    /// <param name="files">Gives the bytes of a file of the design's folder, null for none; null where there is no folder.</param>
    /// <param name="problems">Takes the problems.</param>
    public static IReadOnlyDictionary<string, TriangleMesh> Read(DesignSpec spec, Func<string, byte[]?>? files, ProblemList problems)
    {
        var meshes = new Dictionary<string, TriangleMesh>();
        foreach (var (name, part) in spec.Parts ?? NamedMap<PartSpec>.Empty)
        {
            if (part.Mesh is { } m && Read(m, $"parts.{name}.mesh", files, problems) is { } mesh)
            {
                meshes.Add(name, mesh);
            }
        }

        return meshes;
    }

    private static TriangleMesh? Read(MeshSpec spec, string path, Func<string, byte[]?>? files, ProblemList problems)
    {
        var file = $"{path}.file";
        if (DesignPath.Fault(spec.File) is { } fault)
        {
            problems.Add(file, $"'{spec.File}' is {fault}", "Put the file into the design's folder and name it from there, such as 'head.stl'");
            return null;
        }

        var ending = MeshFile.Ending(spec.File);
        if (!MeshFile.Endings.Contains(ending))
        {
            problems.Add(file, $"'{spec.File}' is no mesh that is read", $"Export it as one of {string.Join(", ", MeshFile.Endings)}");
            return null;
        }

        if (spec.Unit is null && !MeshFile.SaysUnit(spec.File))
        {
            problems.Add(path, $"'{spec.File}' does not say its unit", "Add the unit that it was drawn in, such as 'unit: mm'");
            return null;
        }

        if (Bytes(spec.File, file, files, problems) is not { } bytes)
        {
            return null;
        }

        var unit = spec.Unit ?? "m";
        var asked = new Placing(ending, unit, spec.Scale ?? 1, spec.At, spec.Turn is { } t ? (t[0], t[1], t[2]) : null);
        if (MeshesRead.Find(bytes, asked) is { } known)
        {
            return known;
        }

        var isAlone = true;
        var reading = MeshFile.Read(spec.File, bytes, name =>
        {
            isAlone = false;
            return DesignPath.Fault(name) is null ? files!(DesignPath.Beside(spec.File, name)) : null;
        });
        var factor = MeshFile.Millimetres(unit) * (spec.Scale ?? 1);
        var check = reading.Mesh is { } raw ? MeshCheck.Of(raw.Moved(p => default(Point3) + factor * (p - default(Point3)))) : reading;
        foreach (var p in check.Problems)
        {
            problems.Add(file, $"'{spec.File}': {p.What}", p.Fault is MeshFault.TooLarge or MeshFault.TooSmall ? UnitThatFits(reading.Mesh!, unit, spec.Scale ?? 1) ?? p.Remedy : p.Remedy);
        }

        if (check.Mesh is not { } mesh)
        {
            return null;
        }

        var placed = Placed(mesh, spec);
        if (isAlone && check.Problems.Count == 0)
        {
            MeshesRead.Keep(bytes, asked, placed);
        }

        return placed;
    }

    private static byte[]? Bytes(string name, string path, Func<string, byte[]?>? files, ProblemList problems)
    {
        try
        {
            if (files?.Invoke(name) is { } bytes)
            {
                return bytes;
            }

            problems.Add(path, $"there is no file '{name}'{(files is null ? ": the design was read without its folder" : " in the design's folder")}", "Put it there, or mend its name");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problems.Add(path, $"'{name}' can't be read: {e.Message.TrimEnd('.')}", "See that it is a plain file that you may read");
        }

        return null;
    }

    /// <summary>Sizes that parts of a figure have, mm: a bead and a case.</summary>
    private const double Bead = 5, Case = 1000;

    // The unit, if any other, in which the mesh would have the size of a part.
    private static string? UnitThatFits(TriangleMesh raw, string unit, double scale)
    {
        var box = raw.Bounds;
        var size = Math.Max(box.Most.X - box.Least.X, Math.Max(box.Most.Y - box.Least.Y, box.Most.Z - box.Least.Z)) * scale;
        return ((string[])["mm", "m", "cm", "in"]).FirstOrDefault(u => u != unit && MeshFile.Millimetres(u) * size is > Bead and < Case) is { } fits ? $"Did you mean 'unit: {fits}'?" : null;
    }

    private static TriangleMesh Placed(TriangleMesh mesh, MeshSpec spec)
    {
        var turn = spec.Turn ?? [0, 0, 0];
        Frame About(Vec3 axis, int i) => Frame.Rotation(default, axis, turn[i] * Math.PI / 180);
        var frame = About(new(0, 0, 1), 2).Compose(About(new(0, 1, 0), 1)).Compose(About(new(1, 0, 0), 0)) with { Origin = spec.At ?? default };
        return mesh.Moved(p => frame.Apply(p));
    }
}
