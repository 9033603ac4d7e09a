using Jackwork.Bevels;

namespace Jackwork.Checks;

/// <summary>Bevel wheels whose shafts do not meet, that can't be made, or that leave too little round their bores.</summary>
internal sealed class BevelCheck : ICheck
{
    /// <summary>By how much the axes may miss each other, mm: teeth still bear on most of their length (common practice, no source).</summary>
    private const double Miss = 0.1;

    public string Name => "bevel";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<BevelWork>())
        {
            var (driver, miss) = (proof.Machine.NameOf(w.Drive.Driver), w.Drive.Meeting.Distance);
            Finding Said(Level level, double measured, double limit, string unit, string message, string advice) => new(level, Name, w.Name, null, null, measured, limit, unit, message, advice);
            if (miss > Miss)
            {
                var by = w.Drive.Meeting.OnDriver - w.Drive.Meeting.OnDriven;
                yield return Said(
                    Level.Fault, miss, Miss, "mm",
                    FormattableString.Invariant($"the axes of '{driver}' and '{w.Name}' miss each other by {miss:0.###} mm; those of bevel wheels meet"),
                    FormattableString.Invariant($"Move the shaft of '{w.Name}' by [{by.X:0.###}, {by.Y:0.###}, {by.Z:0.###}], or, square to each other and far enough apart, use a worm"));
            }

            if (w.Impossible is { } why)
            {
                yield return Said(Level.Fault, 0, 0, "", $"the bevel wheels of '{driver}' and '{w.Name}' can't be made: {why}", "Change 'teeth', 'module', 'bores', or 'face' and 'backing' under 'bevel'");
                continue;
            }

            for (var k = 0; k < 2; k++)
            {
                if (w.Wall(k) < proof.Limits.Rim)
                {
                    yield return Said(
                        Level.Fault, w.Wall(k), proof.Limits.Rim, "mm",
                        FormattableString.Invariant($"between the roots at the small end of the bevel wheel on '{proof.Machine.NameOf(w.Shaft(k))}' and its bore only {w.Wall(k):0.##} mm are left, limit {proof.Limits.Rim:0.##} mm"),
                        "Take more teeth, a larger module, a smaller bore or a shorter face");
                }
            }
        }
    }
}
