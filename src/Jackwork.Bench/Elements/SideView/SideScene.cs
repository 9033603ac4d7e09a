using Jackwork.Bench.Chart;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>A skeleton in a view, as the browser draws it: names, numbers of bodies in the order of the poses, coordinates as drawn in mm after each other.</summary>
internal static class SideScene
{
    /// <summary>The scene.</summary>
    /// <param name="skeleton">What is shown.</param>
    /// <param name="machine">The machine that it is of.</param>
    /// <param name="view">The plane that it is seen in.</param>
    /// <param name="chosen">Name of the member chosen; null for none.</param>
    /// <param name="chain">The members whose lines are strong.</param>
    /// <param name="poses">Where the poses are fetched.</param>
    /// <param name="held">A point that the text has somewhere else than the skeleton, because the text can't be worked out.</param>
    public static object Of(Skeleton skeleton, Machine machine, ViewPlane view, string? chosen, IReadOnlySet<int> chain, string poses, Held? held) => new
    {
        View = view.Along,
        Right = Flat([view.Right]),
        Up = Flat([view.Up]),
        Poses = poses,
        Chosen = chosen,
        Strokes = skeleton.Strokes.Select(s => new
        {
            Kind = KindOf(s, machine, view),
            Member = s.Meant == Member.Case ? null : machine.NameOf(s.Meant),
            Strong = chain.Contains(s.Owner),
            s.Closed,
            Bodies = s.Points.Select(p => p.Body + 1),
            At = Flat(s.Points.Select(p => p.Drawn - default(Point3))),
        }),
        Handles = skeleton.Handles.OrderBy(h => chain.Contains(h.Owner)).ThenBy(h => h.Holds is not null).Select(h => new
        {
            h.Path,
            Body = h.At.Body + 1,
            At = Flat([(held?.Start.Path == h.Path ? held.To : h.At.Drawn) - default(Point3)]),
            h.Label,
            Name = h.Holds is { } m && chain.Contains(m) ? machine.NameOf(m) : null,
            Value = Read(held?.Start.Path == h.Path ? held.To : h.At.Drawn),
            Strong = chain.Contains(h.Owner),
            Joint = h.Holds is not null,
        }),
        Lengths = skeleton.Lengths.Where(l => chain.Contains(l.Owner)).Select(l => new
        {
            Bodies = new[] { l.From.Body + 1, l.To.Body + 1 },
            At = Flat([l.From.Drawn - default(Point3), l.To.Drawn - default(Point3)]),
            Text = Svg.Read(l.Mm),
            Rod = l.From.Body != l.To.Body,
        }),
    };

    /// <summary>A point in words.</summary>
    public static string Read(Point3 p) => $"x {MoveEdit.Number(p.X)}, y {MoveEdit.Number(p.Y)}, z {MoveEdit.Number(p.Z)} mm";

    // An axis seen end on is a centre mark.
    private static string KindOf(Stroke s, Machine machine, ViewPlane view) =>
        s.Kind == StrokeKind.Axis && view.IsEndOn(machine.Members[s.Member].Joint.Along) ? "centre" : s.Kind.ToString().ToLowerInvariant();

    private static IEnumerable<double> Flat(IEnumerable<Vec3> points) => points.SelectMany(p => (double[])[Math.Round(p.X, 3), Math.Round(p.Y, 3), Math.Round(p.Z, 3)]);
}
