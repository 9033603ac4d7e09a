using System.Globalization;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Motion;

/// <summary>Machines made of design text, as a maker would write it.</summary>
internal static class Machines
{
    /// <summary>The machine of a design that must be right.</summary>
    public static Machine Of(string text)
    {
        var result = MachineBuilder.Build(text);
        Assert.True(result.Machine is not null, string.Join("\n", result.Problems.Select(p => $"{p}")) + "\n" + text);
        return result.Machine!;
    }

    /// <summary>The problems of a design that must be refused.</summary>
    public static IReadOnlyList<Problem> Refused(string text)
    {
        var result = MachineBuilder.Build(text);
        Assert.Null(result.Machine);
        Assert.NotEmpty(result.Problems);
        return result.Problems;
    }

    /// <summary>The solved performance of a design that must be right.</summary>
    public static Jackwork.Motion.Motion Solved(string text) => Jackwork.Motion.Motion.Solve(Of(text));

    /// <summary>The head of a design whose crank turns <paramref name="crank"/>.</summary>
    public static string Head(string crank = "crank", double rpm = 30) => $"jackwork: 1\ntitle: T\ncrank: {{turns: {crank}, rpm: {Num(rpm)}}}\nmembers:\n";

    /// <summary>A pivot member's lines; <paramref name="drive"/> is one of its keys, or empty.</summary>
    public static string Pivot(string name, Point3 through, Vec3 along, string drive = "", string? on = null) =>
        $"  {name}:\n{On(on)}    pivot: {{through: {List(through)}, along: {List(along)}}}\n{Line(drive)}";

    /// <summary>A slide member's lines.</summary>
    public static string Slide(string name, Vec3 along, string drive = "", string? on = null) =>
        $"  {name}:\n{On(on)}    slide: {{along: {List(along)}}}\n{Line(drive)}";

    /// <summary>A rod's line.</summary>
    public static string Rod(string from, Point3 p, Point3 q, double? length = null) =>
        $"rod: {{from: {from}, pins: [{List(p)}, {List(q)}]{(length is { } l ? $", length: {Num(l)}" : "")}}}";

    /// <summary>A slot's line.</summary>
    public static string Slot(string from, Point3 pin, Vec3 along, Vec3? pinAlong = null, bool inFrom = false) =>
        $"slot: {{from: {from}, pin: {List(pin)}, along: {List(along)}{(pinAlong is { } v ? $", pin-along: {List(v)}" : "")}{(inFrom ? ", in: from" : "")}}}";

    /// <summary>A number as a design holds it, to the last bit.</summary>
    public static string Num(double d) => d.ToString("0.0################", CultureInfo.InvariantCulture) is var s && double.Parse(s, CultureInfo.InvariantCulture) == d ? s : d.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A point as a design holds it.</summary>
    public static string List(Point3 p) => $"[{Num(p.X)}, {Num(p.Y)}, {Num(p.Z)}]";

    /// <summary>A direction as a design holds it.</summary>
    public static string List(Vec3 v) => $"[{Num(v.X)}, {Num(v.Y)}, {Num(v.Z)}]";

    public static double Rad(double deg) => deg * Math.PI / 180;

    public static double Deg(double rad) => rad * 180 / Math.PI;

    private static string On(string? on) => on is null ? "" : $"    on: {on}\n";

    private static string Line(string drive) => drive.Length == 0 ? "" : $"    {drive}\n";
}
