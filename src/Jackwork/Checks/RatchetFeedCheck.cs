using Jackwork.Ratchets;

namespace Jackwork.Checks;

/// <summary>Strokes of a ratchet's arm that miss a tooth, or come near to missing one or taking one too many.</summary>
internal sealed class RatchetFeedCheck : ICheck
{
    /// <summary>Least margin of a stroke to one tooth less or more, in pitches (common practice, no source): wear, flexing and tolerances take a part of it.</summary>
    private const double Margin = 0.15;

    public string Name => "ratchet-feed";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.MechanismsOf<RatchetWork>())
        {
            var (law, arm, wheel) = (work.Drive.Law, proof.Machine.NameOf(work.Drive.Driver), work.Name);
            if (work.Feed.Strokes.Count == 0)
            {
                yield return new(
                    Level.Fault, Name, wheel, null, null, 0, Proof.Deg(law.Pitch), "deg",
                    $"'{arm}' does not swing to and fro, so its pawl feeds the ratchet wheel '{wheel}' nothing", "Move it by a rod, a cam or another drive that swings it to and fro");
                continue;
            }

            foreach (var stroke in work.Feed.Strokes)
            {
                var at = proof.At(stroke.Step);
                var needed = law.Pitch + law.Play;
                if (stroke.Fed == 0)
                {
                    yield return new(
                        Level.Fault, Name, wheel, Proof.Deg(at), Proof.Deg(at), Proof.Deg(stroke.Size), Proof.Deg(needed), "deg",
                        FormattableString.Invariant($"the stroke of '{arm}' that ends at {proof.Where(at, proof.Machine.Crank)} is {Proof.Deg(stroke.Size):0.##}°, too short for a tooth of the ratchet wheel '{wheel}', which takes {Proof.Deg(needed):0.##}°: it is missed"),
                        FormattableString.Invariant($"Let '{arm}' swing by {Proof.Deg(law.StrokeFor(1)):0.#}°, or give the wheel more teeth"));
                    continue;
                }

                var over = stroke.Size - law.Play - stroke.Fed * law.Pitch;
                var (margin, least) = (Math.Min(over, law.Pitch - over), Margin * law.Pitch);
                if (margin < least)
                {
                    var what = over < law.Pitch / 2
                        ? FormattableString.Invariant($"only {Proof.Deg(margin):0.##}° more than {stroke.Fed} of its teeth take, and it may miss one")
                        : FormattableString.Invariant($"only {Proof.Deg(margin):0.##}° less than {stroke.Fed + 1} of its teeth take, and it may feed one too many");
                    yield return new(
                        Level.Caution, Name, wheel, Proof.Deg(at), Proof.Deg(at), Proof.Deg(margin), Proof.Deg(least), "deg",
                        FormattableString.Invariant($"the stroke of '{arm}' that ends at {proof.Where(at, proof.Machine.Crank)} feeds the ratchet wheel '{wheel}' by {what}; limit {Proof.Deg(least):0.##}°"),
                        FormattableString.Invariant($"Let '{arm}' swing by {Proof.Deg(law.StrokeFor(stroke.Fed)):0.#}°"));
                }
            }
        }
    }
}
