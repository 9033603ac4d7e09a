using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Stacks;

/// <summary>A line on which rods stand, and where parts lie on it.</summary>
/// <param name="name">The shaft's name, or that of the line's first axle.</param>
/// <param name="axis">The line.</param>
/// <param name="carrier">What carries it.</param>
internal sealed class StackLine(string name, Joint axis, int carrier)
{
    /// <summary>Distance and sine within which two axes are one, mm.</summary>
    private const double SameLine = 1e-6;

    private readonly Frame seen = Frame.Along(axis.Through, axis.Along).Inverse();

    public string Name => name;

    public Joint Axis => axis;

    public int Carrier => carrier;

    public List<Part> Rods { get; } = [];

    /// <summary>Whether a member turns about this line.</summary>
    public bool IsOf(Machine machine, int member) =>
        member != Member.Case && machine.Members[member] is { Joint: { Kind: JointKind.Pivot } j } m && m.Carrier == carrier
        && j.Along.Cross(axis.Along).Length < SameLine && (j.Through - axis.Through).Across(axis.Along).Length < SameLine;

    /// <summary>The box round a part: z along the line, from its point; null where the line passes it by.</summary>
    public Bounds? On(Part part)
    {
        var ball = part.Set.Ball;
        if ((ball.Centre - axis.Through).Across(axis.Along).Length > ball.Radius)
        {
            return null;
        }

        var box = part.Set.BoundsIn(seen);
        box = new(box.Least with { Z = Tidy(box.Least.Z) }, box.Most with { Z = Tidy(box.Most.Z) });
        return box.Least.X < 0 && box.Most.X > 0 && box.Least.Y < 0 && box.Most.Y > 0 ? box : null;
    }

    // Stations to a millionth of a micron, so that rounding makes no -0.
    private static double Tidy(double station) => Math.Round(station, 9) + 0.0;

    /// <summary>
    /// Diameter of the hole that a part has round the line, mm; 0 where the line runs through its solid, infinite where it is not below
    /// <paramref name="most"/>. Of a bore round the line it is exact; flats of other solids take up to 0.1 mm from it.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="box">Its box on the line.</param>
    /// <param name="most">Diameter beyond which a hole is of no interest, mm.</param>
    public double Hole(Part part, in Bounds box, double most)
    {
        foreach (var plate in part.Plates)
        {
            foreach (var hole in plate.Holes)
            {
                if (Bore(plate, hole) is { } bore)
                {
                    return bore < most ? bore : double.PositiveInfinity;
                }
            }
        }

        var thread = new PieceSet(ConvexPiece.Capsule(axis.Through + box.Least.Z * axis.Along, axis.Through + box.Most.Z * axis.Along, 0));
        return PartDistance.Between(thread, part.Set, Frame.Identity, 0.5 * most) is { } found ? 2 * found.Apart.Distance : double.PositiveInfinity;
    }

    // The diameter of a round hole whose axis is the line; null for any other.
    private double? Bore(PlateShape plate, Outline hole)
    {
        var first = hole.Segments[0];
        return !first.IsLine && hole.Segments.All(s => !s.IsLine && s.Centre.DistanceTo(first.Centre) < SameLine && Math.Abs(s.Radius - first.Radius) < SameLine)
            && plate.Frame.Z.Cross(axis.Along).Length < SameLine
            && (plate.Frame.Apply(new Point3(first.Centre.X, first.Centre.Y, 0)) - axis.Through).Across(axis.Along).Length < SameLine
            ? 2 * first.Radius
            : null;
    }

    /// <summary>Whether a part is round about the line.</summary>
    public bool IsRound(in Bounds box) =>
        Math.Abs(box.Most.X + box.Least.X) < Stack.Same && Math.Abs(box.Most.Y + box.Least.Y) < Stack.Same && Math.Abs(box.Most.X - box.Most.Y) < RoundWithin * box.Most.X;

    /// <summary>Share by which the flats of a tube may differ across: those of 32 faces do by 0.5 %.</summary>
    private const double RoundWithin = 0.01;
}
