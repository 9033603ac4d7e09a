using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>A point fixed on a member.</summary>
/// <param name="Body">Index of the member, or the case.</param>
/// <param name="Drawn">Where it stands as drawn, mm.</param>
internal readonly record struct BodyPoint(int Body, Point3 Drawn);

/// <summary>What a line of the skeleton stands for.</summary>
internal enum StrokeKind
{
    /// <summary>The inside of the case.</summary>
    Case,

    /// <summary>The circle on which a wheel or pulley rolls.</summary>
    Wheel,

    /// <summary>The outline of a cam.</summary>
    Cam,

    /// <summary>The outline of a mechanism's plate.</summary>
    Plate,

    /// <summary>The axis of a pivot.</summary>
    Axis,

    /// <summary>The line of a slide.</summary>
    Slide,

    /// <summary>The sides of a slot.</summary>
    Slot,

    /// <summary>A lever's arm, from axis to pin.</summary>
    Lever,

    /// <summary>A rod, pin to pin.</summary>
    Rod,

    /// <summary>A roller, round end or flat face.</summary>
    Roller,
}

/// <summary>A line of the skeleton through points of one or more members.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Owner">Index of the member whose joint or drive it belongs to, or the case.</param>
/// <param name="Member">Index of the member that it is a line of, or the case.</param>
/// <param name="Points">Its points in order.</param>
/// <param name="Closed">Whether the last is joined to the first.</param>
internal sealed record Stroke(StrokeKind Kind, int Owner, int Member, ImmutableArray<BodyPoint> Points, bool Closed = false)
{
    /// <summary>Index of the member that is meant when it is pointed at: a cam goes by its follower.</summary>
    public int Meant => Kind == StrokeKind.Cam ? Owner : Member;
}

/// <summary>A point of the design that can be moved.</summary>
/// <param name="Path">Where its three coordinates stand in the design.</param>
/// <param name="Owner">Index of the member under which the design has it.</param>
/// <param name="At">The point as the design has it, and the member that it is fixed on.</param>
/// <param name="Label">What it is, in words.</param>
/// <param name="Holds">Index of the member that turns or slides on it, where it is a joint's; else null.</param>
internal sealed record Handle(string Path, int Owner, BodyPoint At, string Label, int? Holds = null);

/// <summary>A length worth a dimension: a rod between its pins, or an arm between axis and pin.</summary>
/// <param name="Owner">Index of the member whose drive it belongs to.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="Mm">The true length, mm, in whatever view.</param>
/// <param name="What">What it is, in words.</param>
internal sealed record Length(int Owner, BodyPoint From, BodyPoint To, double Mm, string What);
