using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Pins;

/// <summary>Sets the plates and pins of two wheels of pins where they stand as drawn.</summary>
/// <remarks>
/// Outlines and holes come as <see cref="PinLock"/> says. Places along the axes are measured on crossed shafts from where the axes meet towards
/// the pins, on parallel ones from the middle of the pins towards the driven's plate.
/// </remarks>
/// <param name="name">Name of the driven member.</param>
/// <param name="members">Indices of the two members.</param>
/// <param name="place">Where the pins meet.</param>
/// <param name="way">+1 where the driver goes forward about its axis, -1 where it goes back.</param>
/// <param name="drawn">How far the two stand on from where their outlines are given, each the way it goes, rad.</param>
/// <param name="behind">On parallel shafts, whether the driven's plate stands on the side of the pins away from the driver's direction.</param>
/// <param name="pin">Diameter of the pins, mm.</param>
internal sealed class PinPlates(string name, (int Driver, int Driven) members, PinPlace place, int way, (double Driver, double Driven) drawn, bool behind, double pin)
{
    private static readonly Material Steel = Material.Named("steel");

    /// <summary>A plate without bore and hub.</summary>
    public Plate OnShaft(string what, bool onDriver, Outline rim, double from, double to)
    {
        var (a, b) = (from * Towards(onDriver), to * Towards(onDriver));
        return new($"{name} {what}", onDriver ? members.Driver : members.Driven, rim.Turned(Turn(onDriver)), Frame(onDriver), Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>Whether places farther along lie towards the frame's z.</summary>
    public bool IsUp(bool onDriver) => Towards(onDriver) > 0;

    /// <summary>The holes for pins.</summary>
    public ImmutableArray<Hole> Drilled(bool onDriver, IEnumerable<Point2> holes) => [.. holes.Select(h => new Hole(h.Turned(Turn(onDriver)), pin))];

    /// <summary>The pins in holes, numbered from 1.</summary>
    public IEnumerable<Part> Pins(bool onDriver, IEnumerable<Point2> holes, double from, double to)
    {
        var (frame, towards) = (Frame(onDriver), Towards(onDriver));
        return holes.Select((hole, i) =>
        {
            var at = hole.Turned(Turn(onDriver));
            var (a, b) = (frame.Apply(new Point3(at.X, at.Y, from * towards)), frame.Apply(new Point3(at.X, at.Y, to * towards)));
            return new Part(
                $"{name} {(onDriver ? "driver" : "wheel")} pin {i + 1}", PartKind.Pin, new(onDriver ? members.Driver : members.Driven),
                [ConvexPiece.Cylinder(a, b, pin / 2)], Math.PI * pin * pin / 4 * Math.Abs(to - from), Steel);
        });
    }

    private Frame Frame(bool onDriver) => onDriver ? place.DriverFrame(way) : place.DrivenFrame(way);

    // In its frame the driver goes counter-clockwise, the driven clockwise.
    private double Turn(bool onDriver) => onDriver ? drawn.Driver : -drawn.Driven;

    // +1 where the frame's z points the way that places along the axis are measured, else -1.
    private double Towards(bool onDriver)
    {
        var along = place.IsCrossed ? (onDriver ? place.DrivenTowards : place.DriverTowards) : (behind ? -1 : 1) * place.Driver;
        return Math.Sign(Frame(onDriver).Z.Dot(along));
    }
}
