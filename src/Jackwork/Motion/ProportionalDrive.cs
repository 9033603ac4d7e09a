namespace Jackwork.Motion;

/// <summary>Two coordinates in a constant ratio: q_driven = k q_driver.</summary>
/// <param name="driver">Driving member.</param>
/// <param name="driverKind">Whether it turns or slides.</param>
/// <param name="driven">Driven member.</param>
/// <param name="drivenKind">Whether it turns or slides.</param>
/// <param name="k">Ratio, not 0: rad or mm of the driven for one rad or mm of the driver.</param>
public abstract class ProportionalDrive(int driver, JointKind driverKind, int driven, JointKind drivenKind, double k) : Relation(driver, driven)
{
    internal override IEnumerable<int> Needs(End unknown) => [unknown == End.Driven ? Driver : Driven];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        return unknown == End.Driven ? State(drivenKind, k * states[Driver].Q) : State(driverKind, (1 / k) * states[Driven].Q);
    }

    internal override double Residual(ReadOnlySpan<MemberState> states) => 0;

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";

    private static MemberState State(JointKind kind, Jet q) => kind == JointKind.Slide ? MemberState.Slid(q) : MemberState.Turned(q);
}
