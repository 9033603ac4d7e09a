using System.Collections.Immutable;
using Jackwork.Cams;
using Jackwork.Gears;
using Jackwork.Mechanisms;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>A piece as lines and points: axes, arms, rods, cams, wheels, and the points of the design that can be moved. All as drawn; in the view of nobody yet.</summary>
/// <param name="Strokes">The lines.</param>
/// <param name="Handles">The points that can be moved.</param>
/// <param name="Lengths">Rods and arms.</param>
internal sealed record Skeleton(ImmutableArray<Stroke> Strokes, ImmutableArray<Handle> Handles, ImmutableArray<Length> Lengths)
{
    /// <summary>Sine of the angle up to which two axes count as one: what a bored hole can be trusted to.</summary>
    private const double Parallel = 1e-5;

    /// <summary>How far apart two axes may be and still be one axle, mm: the rounding of the last decimal that is written.</summary>
    private const double SameLine = 0.001;

    /// <summary>The skeleton of a machine.</summary>
    /// <param name="motion">Its motion.</param>
    /// <param name="cams">The cams as far as they are worked out; their outlines are shown, and followers stand as set over to touch them.</param>
    /// <param name="mechanisms">Its mechanisms.</param>
    /// <param name="gears">Its spur wheels; of those that are cut as sectors the plates are shown.</param>
    public static Skeleton Of(Motion.Motion motion, IReadOnlyList<Cam> cams, IEnumerable<Mechanism> mechanisms, IReadOnlyList<GearWork> gears) => new SkeletonBuilder(motion, cams, mechanisms, gears).Build();

    /// <summary>What lies, wholly or in part, between two depths of a view, mm; the case always.</summary>
    public Skeleton Between(ViewPlane view, double from, double to)
    {
        bool Touches(IEnumerable<BodyPoint> points)
        {
            var depths = points.Select(p => view.Depth(p.Drawn)).ToList();
            return depths.Min() <= to && depths.Max() >= from;
        }

        return new(
            [.. Strokes.Where(s => s.Kind == StrokeKind.Case || Touches(s.Points))],
            [.. Handles.Where(h => Touches([h.At]))],
            [.. Lengths.Where(l => Touches([l.From, l.To]))]);
    }

    /// <summary>What belongs to some of the members; the case always.</summary>
    public Skeleton Among(IReadOnlySet<int> members) => new(
        [.. Strokes.Where(s => s.Kind == StrokeKind.Case || members.Contains(s.Owner))],
        [.. Handles.Where(h => members.Contains(h.Owner))],
        [.. Lengths.Where(l => members.Contains(l.Owner))]);

    /// <summary>The pivots of the other members that turn on the same line as a pivot, on the same carrier: what one axle holds.</summary>
    public IReadOnlyList<Handle> OnAxleOf(Handle pivot, Machine machine) =>
        pivot.Holds is { } held && machine.Members[held] is { Joint: { Kind: JointKind.Pivot } joint } one
            ? [.. Handles.Where(h => h.Holds is { } m && m != held && machine.Members[m] is { Joint.Kind: JointKind.Pivot } other && other.Carrier == one.Carrier
                && other.Joint.Along.Cross(joint.Along).Length < Parallel && joint.Foot(other.Joint.Through).DistanceTo(other.Joint.Through) < SameLine)]
            : [];

    /// <summary>What goes along when a joint is moved with what it carries: the points on the member that it holds, and of the members that sit on that.</summary>
    public IReadOnlyList<Handle> CarriedBy(Handle joint, Machine machine)
    {
        if (joint.Holds is not { } held)
        {
            return [];
        }

        bool OnIt(int body)
        {
            for (var m = body; m != Member.Case; m = machine.Members[m].Carrier)
            {
                if (m == held)
                {
                    return true;
                }
            }

            return false;
        }

        return [.. Handles.Where(h => OnIt(h.At.Body))];
    }
}
