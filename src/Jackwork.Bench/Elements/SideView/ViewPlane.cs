using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>A plane that the piece is seen in, square to one of its three directions, nothing foreshortened but what leans out of it.</summary>
/// <remarks>Along x it is seen from the right, along y from above with the back at the top, along z from the front.</remarks>
/// <param name="Along">The direction looked along: x, y or z; also the name of the coordinate that the view doesn't show.</param>
/// <param name="Right">What points to the right in the view, unit vector.</param>
/// <param name="Up">What points up in the view, unit vector.</param>
internal sealed record ViewPlane(string Along, Vec3 Right, Vec3 Up)
{
    /// <summary>Sine of the angle up to which an axis counts as seen end on; it is then a point within a line's breadth.</summary>
    private const double EndOn = 0.01;

    /// <summary>The three views.</summary>
    public static IReadOnlyList<ViewPlane> All { get; } =
    [
        new("x", new(0, 0, -1), new(0, 1, 0)),
        new("y", new(1, 0, 0), new(0, 0, -1)),
        new("z", new(1, 0, 0), new(0, 1, 0)),
    ];

    /// <summary>What points to the viewer, unit vector.</summary>
    public Vec3 Towards => Right.Cross(Up);

    /// <summary>The view along which most pivots of a machine run; the first of those alike.</summary>
    public static ViewPlane Of(Machine machine) =>
        All.MaxBy(v => machine.Members.Count(m => m.Joint.Turns && v.IsEndOn(m.Joint.Along)))!;

    /// <summary>Whether a unit direction runs straight to the viewer or away.</summary>
    public bool IsEndOn(Vec3 along) => along.Across(Towards).Length < EndOn;

    /// <summary>Where a point is seen, mm: to the right and up.</summary>
    public Point2 Place(Point3 p) => new((p - default(Point3)).Dot(Right), (p - default(Point3)).Dot(Up));

    /// <summary>How far to the viewer a point stands, mm: its coordinate along the direction looked along.</summary>
    public double Depth(Point3 p) => (p - default(Point3)).Dot(Towards);

    /// <summary>The way of a point that is moved in the view, mm. Its depth stays.</summary>
    /// <param name="from">Where it stood.</param>
    /// <param name="right">How far to the right, mm.</param>
    /// <param name="up">How far up, mm.</param>
    /// <param name="step">Each of its two coordinates that moves by half of this or more comes to a whole multiple of it, mm; 0 to go exactly.</param>
    public Vec3 Way(Point3 from, double right, double up, double step)
    {
        var at = Place(from);
        return Snapped(at.X, right, step) * Right + Snapped(at.Y, up, step) * Up;
    }

    private static double Snapped(double from, double by, double step) =>
        step == 0 ? by : Math.Abs(by) < step / 2 ? 0 : step * Math.Round((from + by) / step) - from;
}
