using Jackwork.Ratchets;

namespace Jackwork.Checks;

/// <summary>Ratchet wheels and pawls that can't be made, whose pressure throws the pawl out, or that nothing holds.</summary>
internal sealed class RatchetToothCheck : ICheck
{
    /// <summary>Angle of friction of plywood on plywood, rad: atan 0.3 (common practice, no source).</summary>
    private static readonly double Friction = Math.Atan(0.3);

    /// <summary>Least angle of a tooth at its tip, rad (common practice, no source): a thinner one of plywood breaks off.</summary>
    private const double Tip = 25 * Math.PI / 180;

    /// <summary>Most that a wheel may fall back onto its holding pawl, mm along the tips (common practice, no source).</summary>
    private const double Back = 0.5;

    public string Name => "ratchet-tooth";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.MechanismsOf<RatchetWork>())
        {
            var (s, wheel) = (work.Sizes, work.Name);
            if (work.Impossible is { } why)
            {
                yield return new(
                    Level.Fault, Name, wheel, null, null, s.Depth, 0, "mm", $"the ratchet wheel '{wheel}' can't be made: {why}",
                    "Take fewer or deeper teeth, a larger wheel, a thinner cutter, or set the pawl's pivot farther out");
                continue;
            }

            if (s.DrawsIn < Friction)
            {
                var least = Proof.Deg(s.Undercut + Friction - s.DrawsIn);
                yield return new(
                    Level.Caution, Name, wheel, null, null, Proof.Deg(s.DrawsIn), Proof.Deg(Friction), "deg",
                    FormattableString.Invariant($"the pressure draws the pawl into the teeth of the ratchet wheel '{wheel}' by {Proof.Deg(s.DrawsIn):0.#}° only, less than the {Proof.Deg(Friction):0.#}° that friction may take up; it may slip out"),
                    FormattableString.Invariant($"Undercut the faces by {least:0.#}° or more"));
            }

            if (s.ToothAngle < Tip)
            {
                yield return new(
                    Level.Caution, Name, wheel, null, null, Proof.Deg(s.ToothAngle), Proof.Deg(Tip), "deg",
                    FormattableString.Invariant($"the teeth of the ratchet wheel '{wheel}' are {Proof.Deg(s.ToothAngle):0.#}° sharp at their tips, limit {Proof.Deg(Tip):0}°; they will break off"),
                    "Make the teeth less deep, undercut them less, or take fewer");
            }

            if (work.Drive.Spec.HoldTowards is null)
            {
                yield return new(
                    Level.Caution, Name, wheel, null, null, 0, 0, "",
                    $"nothing holds the ratchet wheel '{wheel}' while its pawl goes back", "Add 'hold-towards: y', or where a holding pawl has room");
            }
            else if (work.FallsBack > Back)
            {
                yield return new(
                    Level.Caution, Name, wheel, null, null, work.FallsBack, Back, "mm",
                    FormattableString.Invariant($"the strokes end at different places within a tooth, so that the ratchet wheel '{wheel}' can fall back by {work.FallsBack:0.##} mm onto its holding pawl, limit {Back:0.##} mm"),
                    FormattableString.Invariant($"Let all strokes end alike, or apart by whole teeth of {Proof.Deg(work.Drive.Law.Pitch):0.##}°"));
            }
        }
    }
}
