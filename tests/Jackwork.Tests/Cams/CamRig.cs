using System.Globalization;
using Xunit;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Tests.Cams;

/// <summary>A design of one cam and its follower, written in the plane of the cam and put anywhere in space.</summary>
internal sealed record CamRig
{
    /// <summary>Direction of every shaft's axis.</summary>
    public Vec3 Axis { get; init; } = new(1, 0, 0);

    /// <summary>"roller", "round" or "flat".</summary>
    public string Touch { get; init; } = "roller";

    /// <summary>Diameter or width, mm.</summary>
    public double Size { get; init; } = 10;

    /// <summary>Middle of the roller or face, from the cam's shaft.</summary>
    public Point2 At { get; init; } = new(0, 40);

    /// <summary>The lever's axis from the cam's shaft; null for a stem.</summary>
    public Point2? Pivot { get; init; }

    /// <summary>Direction of the stem's travel.</summary>
    public Vec2 Travel { get; init; } = new(0, 1);

    /// <summary>Whether the lever's axis or the travel points the other way, so that outward is negative.</summary>
    public bool Mirrored { get; init; }

    /// <summary>Text after the follower, as ", base: 30".</summary>
    public string CamKeys { get; init; } = "";

    /// <summary>Teeth of the crank's wheel and of the cam shaft's, which then turns backward; null where the crank carries the cam.</summary>
    public (int, int)? Teeth { get; init; }

    /// <summary>The moves, each as in a design, with outward positive.</summary>
    public IReadOnlyList<Move> Moves { get; init; } = [];

    public double Cutter { get; init; } = 0.1;

    public string Limits { get; init; } = "";

    /// <summary>One move: where it begins and ends (deg), where it goes (deg or mm outward), and its law.</summary>
    public sealed record Move(double From, double To, double Reach, string Law, string More = "");

    /// <summary>Direction of the lever's arm turning outward, or the travel, as the sign of the coordinate.</summary>
    private double Outward
    {
        get
        {
            if (Pivot is not { } p)
            {
                return (Mirrored ? -1 : 1) * (Travel.Dot(At.FromOrigin) < 0 ? -1 : 1);
            }

            return (Mirrored ? -1 : 1) * ((At - p).Left.Dot(At.FromOrigin) < 0 ? -1 : 1);
        }
    }

    private Vec3 Up => Axis.AnyPerpendicular();

    private Vec3 Right => Up.Cross(Axis);

    private Point3 Shaft => Teeth is null ? Origin : Origin + 300 * Right;

    private static readonly Point3 Origin = new(3, -7, 11);

    /// <summary>The middle of the roller or face as drawn, in space.</summary>
    public Point3 Middle => Shaft + At.X * Right + At.Y * Up + 2 * Axis;

    /// <summary>Another point of a flat face as drawn, in space: square to the travel, or along the lever.</summary>
    public Point3 AlongFace
    {
        get
        {
            var d = Pivot is { } p ? At - p : Travel.Left;
            return Middle + d.X * Right + d.Y * Up;
        }
    }

    public string Text()
    {
        var mirror = Mirrored ? -1.0 : 1.0;
        var on = Teeth is null ? "main" : "second";
        var lines = new List<string>
        {
            "jackwork: 1",
            "title: rig",
            "crank: {turns: main, rpm: 30}",
            $"cutter: {N(Cutter)}",
            $"limits: {{{Limits}}}",
            "members:",
            "  main:",
            $"    pivot: {{through: {V(Origin)}, along: {V(Axis)}}}",
        };
        if (Teeth is var (a, b))
        {
            lines.Add("  second:");
            lines.Add($"    pivot: {{through: {V(Shaft)}, along: {V(Axis)}}}");
            lines.Add($"    gear: {{with: main, teeth: [{a}, {b}], module: {N(600.0 / (a + b))}}}");
        }

        lines.Add("  follower:");
        lines.Add(Pivot is { } p
            ? $"    pivot: {{through: {V(Shaft + p.X * Right + p.Y * Up + 4 * Axis)}, along: {V(mirror * Axis)}}}"
            : $"    slide: {{along: {V(mirror * (Travel.X * Right + Travel.Y * Up))}}}");
        lines.Add($"    cam: {{on: {on}, follower: {{{Touch}: {N(Size)}, at: {V(Middle)}}}{CamKeys}}}");
        lines.Add("timing:");
        lines.Add("  follower:");
        lines.Add($"    over: {on}");
        lines.Add("    moves:");
        lines.AddRange(Moves.Select(m => $"      - {{from: {N(m.From)}, to: {N(m.To)}, reach: {N(Outward * m.Reach)}, law: {m.Law}{m.More}}}"));
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Points of a curve move, outward positive.</summary>
    public string Through(params (double Deg, double Reach)[] points) =>
        ", points: [" + string.Join(", ", points.Select(p => FormattableString.Invariant($"[{p.Deg:R}, {Outward * p.Reach:R}]"))) + "]";

    public override string ToString() => Text();

    public Machine Build()
    {
        var result = MachineBuilder.Build(Text());
        Assert.True(result.Machine is not null, string.Join("\n", result.Problems) + "\n" + Text());
        return result.Machine!;
    }

    public Proof Prove() => Proof.Of(Build());

    private static string V(Point3 p) => $"[{N(p.X)}, {N(p.Y)}, {N(p.Z)}]";

    private static string V(Vec3 v) => $"[{N(v.X)}, {N(v.Y)}, {N(v.Z)}]";

    private static string N(double x) => x.ToString("R", CultureInfo.InvariantCulture);
}
