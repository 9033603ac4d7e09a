using Jackwork.Bevels;

namespace Jackwork.Checks;

/// <summary>Teeth of bevel wheels: too long, undercut, pointed, too short in contact; and how they are cut.</summary>
internal sealed class BevelTeethCheck : ICheck
{
    /// <summary>Least thickness of a tooth at its tip, modules (common practice, no source).</summary>
    private const double Pointed = 0.2;

    public string Name => "bevel-teeth";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<BevelWork>().Where(w => w.Impossible is null))
        {
            var (pair, limit) = (w.Pair, proof.Limits.ContactRatio);
            Finding Said(Level level, double measured, double limit, string unit, string message, string advice) => new(level, Name, w.Name, null, null, measured, limit, unit, message, advice);

            // Half a tenth of a millimetre for the figure that is given rounded.
            if (pair.Face > pair.LongestFace + 0.05)
            {
                yield return Said(
                    Level.Caution, pair.Face, pair.LongestFace, "mm",
                    FormattableString.Invariant($"the teeth of the bevel wheels at '{w.Name}' are {pair.Face:0.##} mm long; beyond {pair.LongestFace:0.##} mm, a third of the cone distance or ten modules, their small ends are too fine to bear"),
                    FormattableString.Invariant($"Give 'face: {Math.Floor(10 * pair.LongestFace) / 10:0.#}' or less"));
            }

            if (pair.ContactRatio < limit)
            {
                yield return Said(
                    pair.ContactRatio < 1 ? Level.Fault : Level.Caution, pair.ContactRatio, limit, "",
                    FormattableString.Invariant($"the bevel wheels at '{w.Name}' have a contact ratio of {pair.ContactRatio:0.###}, limit {limit:0.##}"),
                    "Take more teeth of a smaller module");
            }

            for (var k = 0; k < 2; k++)
            {
                var (v, on) = (w.Wheel(k).Virtual, proof.Machine.NameOf(w.Shaft(k)));
                if (v.IsUndercut)
                {
                    yield return Said(
                        Level.Caution, v.Teeth, v.LeastTeeth, "",
                        FormattableString.Invariant($"the bevel wheel of {w.Wheel(k).Teeth} teeth on '{on}' has {v.Teeth:0.#} virtual teeth and is undercut; from {v.LeastTeeth:0.#} on it is not"),
                        FormattableString.Invariant($"Take more teeth, or give it a profile shift of {Math.Ceiling(100 * v.UndercutShift) / 100:0.##} and its mate the opposite"));
                }

                if (v.TipThickness < Pointed * pair.Module)
                {
                    yield return Said(
                        Level.Caution, v.TipThickness, Pointed * pair.Module, "mm",
                        FormattableString.Invariant($"the teeth of the bevel wheel on '{on}' are {v.TipThickness:0.##} mm thick at their tips"),
                        "Take more teeth or less profile shift");
                }
            }

            yield return Said(
                Level.Note, w.Pair.First.Taper, 1, "",
                FormattableString.Invariant($"the teeth at '{w.Name}' taper to {w.Pair.First.Taper:0.##} of their size: no straight cutter leaves them true. Turn the blanks, glue the templates on both ends, and saw and file from one to the other"),
                "A straight edge from the meeting of the axes lies along every true flank");
        }
    }
}
