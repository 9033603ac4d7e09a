using Jackwork.Motion;

namespace Jackwork.Stacks;

/// <summary>What stands along one line: a shaft with all that is fixed on it, or a fixed axle with the levers that turn on it, and what carries them.</summary>
/// <param name="Name">The shaft's name, or that of the line's first axle.</param>
/// <param name="Axis">The line; stations run along it from its point.</param>
/// <param name="Carrier">What carries it: a member, or the case.</param>
/// <param name="Cores">The rods on the line.</param>
/// <param name="Items">What else stands on it, by station.</param>
/// <param name="Runs">The gaps between what can't shift, by station.</param>
public sealed record Stack(string Name, Joint Axis, int Carrier, IReadOnlyList<StackItem> Cores, IReadOnlyList<StackItem> Items, IReadOnlyList<StackRun> Runs)
{
    /// <summary>Lengths nearer than this are the same, mm: a thousandth of what a lathe holds.</summary>
    public const double Same = 1e-4;

    /// <summary>Sine of the slope from which a thing's weight holds it down on what is below: 45 degrees.</summary>
    private const double Steep = 0.7;

    /// <summary>Whether weight, not a neighbour, holds things along the line.</summary>
    public bool IsSteep => Math.Abs(Axis.Along.Y) > Steep;

    /// <summary>Whether the line's rods turn with what is fixed on them.</summary>
    public bool Turns => Cores.Any(c => c.Part.Body.Member != Carrier);

    /// <summary>The rod that a station lies on; the nearest where none reaches it.</summary>
    public StackItem CoreAt(double station) => Cores.MinBy(c => Math.Max(0, Math.Max(c.From - station, station - c.To)))!;

    /// <summary>Hubs held by a grub screw, and when their keys reach them.</summary>
    public IReadOnlyList<GrubAccess> Grubs { get; init; } = [];

    /// <summary>The narrowest run that stops the shaft from shifting against the axis' direction; null where nothing does.</summary>
    public StackRun? Behind => Runs.Where(r => r.First?.Role == StackRole.Stop && r.Last?.Role == StackRole.Fixed).MinBy(r => r.Range.Nominal);

    /// <summary>The narrowest run that stops the shaft from shifting along the axis' direction; null where nothing does.</summary>
    public StackRun? Ahead => Runs.Where(r => r.First?.Role == StackRole.Fixed && r.Last?.Role == StackRole.Stop).MinBy(r => r.Range.Nominal);

    /// <summary>End float of a shaft, mm: how far it can shift between its stops; null where nothing stops it at one end, or it is a fixed axle.</summary>
    public double? Float => Behind is { } b && Ahead is { } a ? b.Range.Nominal + a.Range.Nominal : null;
}
