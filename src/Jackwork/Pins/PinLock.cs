using Jackwork.Geometry;

namespace Jackwork.Pins;

/// <summary>What holds an intermittent pin wheel while it stands: a rim on the driver and a disc on the driven.</summary>
/// <remarks>
/// Outlines are about each wheel's own axis, mm, counter-clockwise, at pick-up, seen such that the driver goes counter-clockwise and the driven clockwise;
/// x points from the driver's axis to the place where the pins meet, and from the driven's to the same. The rim begins there and goes on round until let-go.
/// </remarks>
public abstract record PinLock
{
    /// <summary>Least room between what is cut away and what sweeps past it, mm.</summary>
    public const double Relief = 0.5;

    /// <summary>How many places the driven can stand at.</summary>
    public required int Stops { get; init; }

    /// <summary>The driver's angle from pick-up to let-go, rad.</summary>
    public required double Drives { get; init; }

    /// <summary>How far the locked driven can be turned either way, rad; not a number where nothing holds it.</summary>
    public abstract double Play { get; }

    /// <summary>Half the angle of one hollow or flat as seen from the driven's axis, rad; not a number where there is none.</summary>
    public abstract double HalfStop { get; }

    /// <summary>Outer radius of the driver's rim, mm.</summary>
    public abstract double Rim { get; }

    /// <summary>Radius to which the driver's plate is cut away where the pins drive, mm.</summary>
    public abstract double CutAway { get; }

    /// <summary>Outer radius of the driven's disc, mm.</summary>
    public abstract double Disc { get; }

    /// <summary>Least distance of a hollow or flat from the driven's axis, mm.</summary>
    public abstract double Core { get; }

    /// <summary>The driver's plate.</summary>
    public Outline Driver
    {
        get
        {
            var rim = Segment.Arc(Point2.Origin, Rim, 0, Math.Tau - Drives);
            var cut = Segment.Arc(Point2.Origin, CutAway, -Drives, Drives);
            return new([rim, new(rim.End, cut.Start, 0), cut, new(cut.End, rim.Start, 0)]);
        }
    }

    /// <summary>The driven's disc.</summary>
    public Outline Driven
    {
        get
        {
            var pitch = Math.Tau / Stops;
            return new([.. Enumerable.Range(0, Stops).SelectMany(i => new[] { Stop.Turned(i * pitch), Segment.Arc(Point2.Origin, Disc, i * pitch + HalfStop, pitch - 2 * HalfStop) })]);
        }
    }

    // The hollow or flat towards x, from below to above.
    private protected abstract Segment Stop { get; }
}
