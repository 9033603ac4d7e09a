using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>A rod whose length as made does not fit its pins as drawn: the figure would stand off its drawn pose.</summary>
internal sealed class AsDrawnCheck : ICheck
{
    /// <summary>Difference that a wire can be bent to, mm (common practice, no source); less is no finding.</summary>
    private const double Bend = 0.05;

    /// <summary>Difference from which the figure visibly stands off, mm; less is a caution.</summary>
    private const double Visible = 0.5;

    public string Name => "rod-length";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var rod in proof.Machine.Drives.OfType<RodDrive>())
        {
            var drawn = rod.DriverPin.DistanceTo(rod.DrivenPin);
            var off = rod.Length - drawn;
            if (Math.Abs(off) <= Bend)
            {
                continue;
            }

            var (driver, driven) = (proof.Machine.NameOf(rod.Driver), proof.Machine.NameOf(rod.Driven));
            yield return new(
                Math.Abs(off) > Visible ? Level.Fault : Level.Caution, Name, driven, null, null, rod.Length, drawn, "mm",
                FormattableString.Invariant($"the rod from '{driver}' to '{driven}' is {rod.Length:0.###} mm long, {Math.Abs(off):0.###} mm {(off < 0 ? "shorter" : "longer")} than the distance of its pins as drawn, {drawn:0.###} mm; so '{driver}' and '{driven}' can't both stand as drawn{Effect(proof, rod)}"),
                FormattableString.Invariant($"Make the rod {drawn:0.###} mm long (or leave 'length' out), or draw the pins {rod.Length:0.###} mm apart"));
        }
    }

    // With the driver as drawn, how far the driven stands off.
    private static string Effect(Proof proof, RodDrive rod)
    {
        var states = new MemberState[proof.Machine.Members.Count];
        for (var m = 0; m < states.Length; m++)
        {
            states[m] = proof.Machine.Members[m].Joint.At(default);
        }

        var state = rod.Solve(End.Driven, states, new(rod.DrawnBranch(End.Driven), default, 0), out _, out var miss);
        var member = proof.Machine.Members[rod.Driven];
        return miss != 0 ? ", and the rod does not even close there" : FormattableString.Invariant($" ('{member.Name}' would stand {Math.Abs(state.Q.Value) / member.UnitSize:0.##} {member.Unit} off)");
    }
}
