using Jackwork.Motion;
using Jackwork.Universals;

namespace Jackwork.Checks;

/// <summary>Universal joints that can't be made, that are too weak or too steep, and how unevenly they run, alone or two in a row.</summary>
internal sealed class UniversalCheck : ICheck
{
    /// <summary>Angles up to which a plain joint runs with ease, and up to which it runs at all without binding, deg (common practice, no source).</summary>
    private const double Easy = 30, Binds = 45;

    /// <summary>Difference between the greatest and the least speed, of the even one, that is seen at a figure (common practice, no source).</summary>
    private const double Seen = 0.25;

    /// <summary>What the printed digits of a ratio don't show.</summary>
    private const double Even = 5e-4;

    /// <summary>How far forks may stand off, deg: what marks on two shafts can be set to (common practice, no source).</summary>
    private const double Aligned = 2;

    public string Name => "universal";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<UniversalWork>())
        {
            var (joint, s, least, deg) = (w.Name, w.Sizes, proof.Limits.Rim, Proof.Deg(w.Drive.Angle));
            Finding Said(Level level, double measured, double limit, string unit, string message, string advice) =>
                new(level, Name, joint, null, null, measured, limit, unit, message, advice);
            if (w.Impossible is { } why)
            {
                yield return Said(Level.Fault, Math.Min(s.CheekRoom, Math.Min(s.CheekWall, s.BlockWall)), 0, "mm", $"the universal joint of '{joint}' can't be made: {why}", "Take a larger 'diameter', thinner pins or narrower cheeks");
                continue;
            }

            var wall = Math.Min(s.CheekWall, s.BlockWall);
            if (wall < least)
            {
                yield return Said(
                    Level.Fault, wall, least, "mm",
                    FormattableString.Invariant($"of the universal joint of '{joint}' only {wall:0.##} mm are left {(s.CheekWall < s.BlockWall ? "beside the pins in its cheeks" : "round the pins in its block")}, limit {least:0.##} mm"),
                    "Take thinner pins, wider cheeks or a larger 'diameter'");
            }

            if (deg > Easy)
            {
                yield return Said(
                    deg > Binds ? Level.Fault : Level.Caution, deg, deg > Binds ? Binds : Easy, "deg",
                    FormattableString.Invariant($"the shafts of the universal joint of '{joint}' stand at {deg:0.#}°: beyond {(deg > Binds ? Binds : Easy):0}° its pins {(deg > Binds ? "bind" : "are pressed hard and wear")}"),
                    "Set the shafts more in line, or share the angle between two joints");
            }

            foreach (var end in Runs(proof.Machine, w))
            {
                yield return Said(Level.Fault, end.Past, 0, "mm", FormattableString.Invariant($"the shaft of '{end.Shaft}' runs {end.Past:0.##} mm past the disc of its fork into the universal joint of '{joint}'"), "Let the shaft end at the disc: change its body's 'from' or 'to', or leave it out");
            }

            yield return Speed(proof.Machine, w, Said);
        }
    }

    private static Finding Speed(Machine machine, UniversalWork w, Func<Level, double, double, string, string, string, Finding> said)
    {
        // A joint whose driven shaft goes on to another is judged with that; alone it is only told of.
        if (machine.Drives[w.Drive.Driver] is UniversalDrive first)
        {
            var pair = UniversalPair.Of(machine.Members, first, w.Drive);
            var (most, off, differ) = (pair.Most, Proof.Deg(Math.Abs(pair.Off)), Proof.Deg(Math.Abs(pair.First - pair.Second)));
            var swing = most - 1 / most;
            var (from, middle) = (machine.NameOf(first.Driver), machine.NameOf(w.Drive.Driver));
            return off > Aligned
                ? said(
                    Level.Caution, off, Aligned, "deg",
                    FormattableString.Invariant($"the two forks on '{middle}' stand {off:0.#}° off, so '{w.Name}' runs between {1 / most:0.###} and {most:0.###} times as fast as '{from}'"),
                    "Leave 'fork' of the second joint out, and it is set such that both even each other out")
                : said(
                    swing > Seen ? Level.Caution : Level.Note, swing, Seen, "",
                    most < 1 + Even
                        ? $"with its two universal joints in a row '{w.Name}' runs as evenly as '{from}'"
                        : FormattableString.Invariant($"with its two universal joints in a row '{w.Name}' runs between {1 / most:0.###} and {most:0.###} times as fast as '{from}'"),
                    differ < 0.1 ? "Mark the forks on the middle shaft, so that they are put together again as they are" : "Equal angles of both joints run evenly");
        }

        var cos = Math.Cos(w.Drive.Angle);
        var goesOn = machine.Drives.OfType<UniversalDrive>().Any(d => d.Driver == w.Drive.Driven);
        return said(
            1 / cos - cos > Seen && !goesOn ? Level.Caution : Level.Note, 1 / cos - cos, Seen, "",
            FormattableString.Invariant($"the universal joint turns '{w.Name}' between {cos:0.###} and {1 / cos:0.###} times as fast as '{machine.NameOf(w.Drive.Driver)}', twice each way in a turn"),
            goesOn ? "A second joint of the same angle evens this out" : "Two joints of equal angles in a row run evenly; a smaller angle more evenly");
    }

    // Where a shaft is given its ends by the design, they may lie beyond the fork's disc.
    private static IEnumerable<(string Shaft, double Past)> Runs(Machine machine, UniversalWork w)
    {
        foreach (var onDriver in (bool[])[true, false])
        {
            var name = machine.NameOf(onDriver ? w.Drive.Driver : w.Drive.Driven);
            var body = machine.Design.Members[name].Body;
            var (end, way) = w.ShaftEnd(onDriver);
            if ((way > 0 ? body?.From : body?.To) is { } given && way * (end - given) > 0)
            {
                yield return (name, way * (end - given));
            }
        }
    }
}
