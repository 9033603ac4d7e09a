using Jackwork.Hardware;
using Jackwork.Parts;

namespace Jackwork.Stacks;

/// <summary>What holds a thing along the line that it stands on.</summary>
public enum StackRole
{
    /// <summary>The rod itself: a shaft that turns, or an axle fixed in what carries it.</summary>
    Core,

    /// <summary>Fixed on the shaft and turning with it.</summary>
    Fixed,

    /// <summary>Turning on the axle, free to shift along it.</summary>
    Loose,

    /// <summary>A tube wider than the rod in it: it only fills a gap.</summary>
    Spacer,

    /// <summary>Part of what carries the rod: a board, a block, a collar set on a fixed axle.</summary>
    Stop,
}

/// <summary>A thing on the line of a shaft or axle. Stations along the stack's axis, mm.</summary>
/// <param name="Name">Its part's name; the member's for a lever of one bar.</param>
/// <param name="Role">What holds it.</param>
/// <param name="Part">Its part; the first of a lever's bars.</param>
/// <param name="From">Where it begins, mm.</param>
/// <param name="To">Where it ends, mm.</param>
/// <param name="Bore">Diameter of its hole, mm; 0 for a rod.</param>
/// <param name="Outside">Diameter round the axis within which another thing meets it, mm.</param>
public sealed record StackItem(string Name, StackRole Role, Part Part, double From, double To, double Bore, double Outside)
{
    /// <summary>Diameter round the axis that it sweeps, mm: what a thing must have for its bore to pass over it.</summary>
    public double Reach { get; init; } = Outside;

    /// <summary>Whether it is a tube on the rod, which bounds what is beside it but does not carry the rod.</summary>
    public bool IsCollar { get; init; }

    /// <summary>For a hub, the plate that it stands out from; else null.</summary>
    public StackItem? Plate { get; init; }

    /// <summary>For a hub, its grub screw; else null.</summary>
    public GrubSize? Grub { get; init; }

    /// <summary>Length along the axis, mm.</summary>
    public double Length => To - From;

    /// <summary>Middle along the axis, mm.</summary>
    public double Middle => (From + To) / 2;

    /// <summary>Tolerance of its length.</summary>
    public Tolerance Tolerance => Tolerance.Of(Part.Material, Length);

    /// <summary>Whether the two would meet if one were shifted along the axis into the other.</summary>
    public bool Meets(StackItem other) => Bore < other.Outside - Stack.Same && other.Bore < Outside - Stack.Same;

    /// <summary>Whether the two are bars and pieces of one lever or figure.</summary>
    public bool IsGluedTo(StackItem other)
    {
        var (a, b) = (Part.Kind, other.Part.Kind);
        return Part.Body == other.Part.Body && Role is StackRole.Fixed or StackRole.Loose && other.Role is StackRole.Fixed or StackRole.Loose
            && (a == PartKind.Lever || b == PartKind.Lever || (a == PartKind.Figure && b == PartKind.Figure));
    }

    /// <summary>Whether nothing can open or close between the two: glued, a hub with its plate, or both part of what carries the rod.</summary>
    public bool IsOneWith(StackItem other) =>
        Plate == other || other.Plate == this || (Role == StackRole.Stop && other.Role == StackRole.Stop) || IsGluedTo(other);
}
