using Jackwork.Design;
using Jackwork.Differentials;

namespace Jackwork.Motion;

/// <summary>A differential: two wheels about one axis, and planet wheels between them on the driven, which turns by their weighted mean.</summary>
/// <remarks>
/// <para>q_driven = k1 q_driver + k2 q_with, with the exact shares of <see cref="DifferentialLaw"/>, the sign of each changed where that axis is drawn
/// the other way. A second wheel on the case stands: q_with = 0. Run back: q_driver = (q_driven - k2 q_with)/k1.</para>
/// </remarks>
/// <param name="driver">Driving member, which carries the first wheel.</param>
/// <param name="with">Second driving member, which carries the second wheel; <see cref="Member.Case"/> where that is fixed.</param>
/// <param name="driven">Driven member, which carries the planets.</param>
/// <param name="law">The wheels.</param>
/// <param name="senses">+1 where the axis of the driver, of the second driver, points as that of the driven does, else -1.</param>
/// <param name="spec">The differential as designed.</param>
public sealed class DifferentialDrive(int driver, int with, int driven, DifferentialLaw law, (int Driver, int With) senses, DifferentialSpec spec) : Relation(driver, driven)
{
    private readonly (double Driver, double With) k = (senses.Driver * law.FirstShare.Value, senses.With * law.SecondShare.Value);

    /// <summary>Index of the second driving member, or <see cref="Member.Case"/>.</summary>
    public int With { get; } = with;

    /// <summary>The differential as designed.</summary>
    public DifferentialSpec Spec { get; } = spec;

    /// <summary>The wheels.</summary>
    public DifferentialLaw Law { get; } = law;

    /// <inheritdoc/>
    public override string Kind => "differential";

    /// <inheritdoc/>
    public override string How(string driver) => Law.Form == DifferentialForm.Ring && With == Member.Case ? $"is carried round by planets between the wheel on {driver} and a fixed ring" : $"is carried round by planets between the wheel on {driver} and a second wheel";

    internal override IReadOnlyList<int> Drivers => With == Member.Case ? [Driver] : [Driver, With];

    internal override Rational? TurnsFrom(IReadOnlyList<Rational?> turns)
    {
        var second = With == Member.Case ? Rational.Zero : turns[With];
        return turns[Driver] is { } a && second is { } b ? new Rational(senses.Driver, 1) * Law.FirstShare * a + new Rational(senses.With, 1) * Law.SecondShare * b : null;
    }

    internal override double TurnedAt(Machine machine, double crank) => machine.Turns[Driven]!.Value.Value * crank;

    internal override double CrankAt(Machine machine, double driven) => driven / machine.Turns[Driven]!.Value.Value;

    internal override IEnumerable<int> Needs(End unknown) => With == Member.Case ? [unknown == End.Driven ? Driver : Driven] : [unknown == End.Driven ? Driver : Driven, With];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        var second = With == Member.Case ? default : k.With * states[With].Q;
        return MemberState.Turned(unknown == End.Driven ? k.Driver * states[Driver].Q + second : (1 / k.Driver) * (states[Driven].Q - second));
    }

    internal override double Residual(ReadOnlySpan<MemberState> states) => 0;

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";
}
