using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>The fits that parts are made with: what a washer, bush, guide or support is meant to touch on the line of its bore.</summary>
internal static class Fits
{
    /// <summary>Play of what runs in a bore, mm in diameter (common practice, no source).</summary>
    public const double Running = 0.1;

    /// <summary>Distance (mm) and sine within which two lines are one.</summary>
    private const double SameLine = 1e-6;

    /// <summary>Each pair by name, as the design would give it.</summary>
    public static IEnumerable<IReadOnlyList<string>> Of(Machine machine, IReadOnlyList<Part> parts) =>
        from fit in parts
        where fit.RunsOn is not null
        from other in parts
        where other.Body != fit.Body && Runs(machine, other, fit.RunsOn!.Value)
        select (IReadOnlyList<string>)[fit.Name, other.Name];

    private static bool Runs(Machine machine, Part part, (Point3 Through, Vec3 Along) line) =>
        part.RoundAbout is { } own ? IsSame(own, line)
        : part.Kind == PartKind.Board
            || (part.Kind is PartKind.Lever or PartKind.Cam or PartKind.Plate or PartKind.Handle && machine.Members[part.Body.Member].Joint is { Kind: JointKind.Pivot } j && IsSame((j.Through, j.Along), line));

    private static bool IsSame((Point3 Through, Vec3 Along) a, (Point3 Through, Vec3 Along) b) =>
        a.Along.Cross(b.Along).Length < SameLine && (a.Through - b.Through).Across(b.Along).Length < SameLine;
}
