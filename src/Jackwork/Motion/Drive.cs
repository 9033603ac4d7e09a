using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>The two members that a drive ties together.</summary>
public enum End
{
    /// <summary>The member that drives.</summary>
    Driver,

    /// <summary>The member that is driven.</summary>
    Driven,
}

/// <summary>What makes a member move. Each member has exactly one.</summary>
/// <param name="driver">Index of the driving member; <see cref="Member.Case"/> for the crank, which the hand drives.</param>
/// <param name="driven">Index of the member that it moves.</param>
public abstract class Drive(int driver, int driven)
{
    /// <summary>Index of the driving member, or <see cref="Member.Case"/> where the hand drives.</summary>
    public int Driver { get; } = driver;

    /// <summary>Index of the driven member.</summary>
    public int Driven { get; } = driven;

    /// <summary>Its key in the format, such as gear or rod.</summary>
    public abstract string Kind { get; }

    /// <summary>All members that move the driven: the driver, and a second one where two of them act together.</summary>
    internal virtual IReadOnlyList<int> Drivers => [Driver];

    /// <summary>The trade's words for it.</summary>
    public virtual string Word => Kind;

    /// <summary>What it does to the driven member, as the end of a sentence that begins with that.</summary>
    /// <param name="driver">Name of the driving member.</param>
    public abstract string How(string driver);

    /// <summary>The places that it is drawn with, such as its pins: each with what stands there and, where it has one, its direction. No name but that of a place is told twice.</summary>
    /// <param name="nameOf">Name of a member.</param>
    public virtual IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [];

    /// <summary>The rod or bar that floats between two pins of it; null where there is none.</summary>
    public virtual Link? Link => null;

    /// <summary>The pins by which it takes hold of members, as drawn, each with the member that must carry it.</summary>
    public virtual IEnumerable<(int Member, Point3 At)> Pins => [];

    /// <summary>The drive as it is where its driver goes round forward (+1) or back (-1): some are made for one way round.</summary>
    internal virtual Drive TurnedBy(int way) => this;
}

/// <summary>What floats between two pins, as drawn.</summary>
/// <param name="From">One pin, with the index of its member.</param>
/// <param name="To">The other.</param>
/// <param name="Hinge">A member, or the case, with the direction on it that tells how the link lies about itself; null where the axes of the two members tell.</param>
public sealed record Link((int Member, Point3 At) From, (int Member, Point3 At) To, (int Member, Vec3 Axis)? Hinge = null);

/// <summary>The hand on the handle: the member's coordinate is the crank angle.</summary>
public sealed class CrankDrive(int driven) : Drive(Member.Case, driven)
{
    /// <inheritdoc/>
    public override string Kind => "crank";

    /// <inheritdoc/>
    public override string How(string driver) => "is turned by the hand";
}

/// <summary>A two-way relation between the coordinates of driver and driven, in closed form.</summary>
public abstract class Relation(int driver, int driven) : Drive(driver, driven)
{
    /// <summary>The member at an end.</summary>
    public int At(End end) => end == End.Driver ? Driver : Driven;

    /// <summary>Turns of the driven for a turn of the driver, signed about their axes as drawn, for wheels; evenly or a step at a time. Null for all else.</summary>
    internal virtual Rational? TurnsOfDriven => null;

    /// <summary>Turns of the driven for those of its drivers, all signed about their axes as drawn; null where no train of wheels tells them.</summary>
    /// <param name="turns">Turns of each member; null where not known.</param>
    internal virtual Rational? TurnsFrom(IReadOnlyList<Rational?> turns) => TurnsOfDriven is { } ratio && turns[Driver] is { } t ? t * ratio : null;

    /// <summary>Whether the driver follows from the driven at every position, so that a chart can be worked back through it.</summary>
    internal virtual bool GoesBack => true;

    /// <summary>Whether its branch tells on which side of a dead centre it stands; else it counts something.</summary>
    internal virtual bool BranchIsSide => true;

    /// <summary>Whether it only pulls, and does not push.</summary>
    internal virtual bool OnlyPulls => false;

    /// <summary>Whether it only works from a driver that goes round evenly or a step at a time, tied to the crank by wheels.</summary>
    internal virtual bool NeedsShaft => false;

    /// <summary>What of it has ends, so that its driver must not go round; null where nothing has.</summary>
    internal virtual string? Ended => null;

    /// <summary>The driven's coordinate, rad, for the driver's, of any number of turns; asked only where <see cref="TurnsOfDriven"/> is not null.</summary>
    internal virtual double Turned(double driver) => TurnsOfDriven!.Value.Value * driver;

    /// <summary>The driver's coordinate, rad, for the driven's; where that stands still, the one at which it comes to stand, the driver going forward (+1) or back (-1).</summary>
    internal virtual double TurnedBack(double driven, int forward) => driven / TurnsOfDriven!.Value.Value;

    /// <summary>The driven's coordinate, rad, of any number of turns, at a crank angle, where it is tied to the crank.</summary>
    internal virtual double TurnedAt(Machine machine, double crank) => Turned(ShaftTurn.At(machine, Driver, crank));

    /// <summary>The crank angle at which the driven's coordinate is <paramref name="driven"/>, rad, where it is tied to the crank; where that stands still, the one at which it comes to stand.</summary>
    internal virtual double CrankAt(Machine machine, double driven) => ShaftTurn.Crank(machine, Driver, TurnedBack(driven, machine.Turns[Driver]!.Value.Numerator.Sign));

    /// <summary>Whether the driven turns evenly where the driver does; asked only where <see cref="TurnsOfDriven"/> is not null.</summary>
    internal virtual bool IsEven => true;

    /// <summary>Whether the driven starts at once out of rest, its speed jumping, and comes to rest smoothly.</summary>
    internal virtual bool StartsAtOnce => false;

    /// <summary>The members whose states must be known before the one at <paramref name="unknown"/> can be solved.</summary>
    internal abstract IEnumerable<int> Needs(End unknown);

    /// <summary>The branch that the pose as drawn lies on: +1, -1, or 0 where it is drawn at a dead centre.</summary>
    internal abstract int DrawnBranch(End unknown);

    /// <summary>The state of the member at <paramref name="unknown"/>; <paramref name="miss"/> is by how many mm the relation fails to close.</summary>
    internal abstract MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss);

    /// <summary>How far the solved states are from satisfying the relation, mm, worked out afresh from the positions alone.</summary>
    internal abstract double Residual(ReadOnlySpan<MemberState> states);

    /// <summary>
    /// Transmission angle at the driven member, rad, 0 to pi/2: between the line of the force and the square to the
    /// motion of the point it acts on; pi/2 is best, 0 a dead centre. Null where the notion does not apply.
    /// </summary>
    /// <remarks>H. Alt (1932); R. L. Norton, Design of Machinery, section 3.3 (from memory).</remarks>
    internal abstract double? TransmissionAngle(ReadOnlySpan<MemberState> states);

    /// <summary>The line of the force on the driven member, a unit direction, and the point it acts on, both seen from the driven's carrier; null where that is no single line.</summary>
    internal virtual (Vec3 Line, Point3 At)? Push(ReadOnlySpan<MemberState> states) => null;

    /// <summary>What a miss of this many mm means, for a finding.</summary>
    internal abstract string DescribeMiss(double miss);
}
