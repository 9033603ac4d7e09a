using Jackwork.Cams;
using Jackwork.Drops;
using Jackwork.Timing.Laws;

namespace Jackwork.Checks;

/// <summary>Falls of drop cams that are no falls, that take longer than drawn, that the cam as cut is in the way of, or that land hard.</summary>
internal sealed class DropCheck : ICheck
{
    /// <summary>Share of the way down by which a fall drawn longer than it takes is worth a note.</summary>
    private const double Slow = 0.5;

    public string Name => "drop";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, acted, _) in proof.SoundCams.Where(c => c.Cam.Drops.Count == 0 && c.Acted.Chart.Pieces.Any(p => p.Law == MotionLaws.Drop)))
        {
            yield return new(
                Level.Fault, Name, cam.Name, null, null, 0, 0, "",
                $"the chart of '{proof.Machine.NameOf(acted.Member)}' has a drop that moves the follower '{cam.Name}' away from its cam, which would have to push it: what a cam lets go comes nearer to the shaft",
                "Let the drop go the other way, or give this move another law, such as 'modified-sine'");
        }

        foreach (var drop in proof.MechanismsOf<DropWork>())
        {
            foreach (var finding in drop.Fall.Outcome == FallOutcome.Lands ? Landing(proof, drop) : [Hanging(proof, drop)])
            {
                yield return finding;
            }
        }
    }

    private Finding Hanging(Proof proof, DropWork drop)
    {
        var stays = drop.Fall.Outcome == FallOutcome.Stays;
        var fallen = Math.Abs(drop.Fall.HangsAt - drop.Face.Fall.Q.Value) * drop.Cam.Follower.Reach;
        var force = drop.Sizes.ForceWithin(drop.Drawn);
        return Of(
            Level.Fault, proof, drop, stays ? 0 : fallen, drop.Height, "mm",
            stays
                ? FormattableString.Invariant($"'{drop.Name}' does not fall where its cam lets it go, {Where(proof, drop)}: what hangs on it ({drop.Mass:0} g) does not press it onto the cam, or not more than friction in its joints may hold it")
                : FormattableString.Invariant($"'{drop.Name}' falls {fallen:0.#} mm of {drop.Height:0.#} mm after {Where(proof, drop)} and stays hanging there"),
            force is { } f ? FormattableString.Invariant($"Let more weight hang on the side of the cam, lessen the friction, or add a spring that presses the follower with {f:0.##} N more: then it is down as drawn") : "Let more weight hang on the side of the cam, or give another law and a groove");
    }

    private IEnumerable<Finding> Landing(Proof proof, DropWork drop)
    {
        var (fall, face, rpm) = (drop.Fall, drop.Face, proof.Machine.Design.Crank.Rpm);
        var shaft = proof.Machine.NameOf(drop.Acted.Shaft);
        if (face.IsLate)
        {
            yield return Of(
                Level.Fault, proof, drop, drop.ShaftDeg(drop.Drawn), drop.ShaftDeg(face.Needs), "deg",
                FormattableString.Invariant($"the drop of '{drop.Name}' is drawn over {drop.ShaftDeg(drop.Drawn):0.#}° of '{shaft}', but the tip of the cam is past the {Touch(drop)} only after {drop.ShaftDeg(face.Needs):0.#}°, however slowly it turns"),
                FormattableString.Invariant($"Let the move end at {Up(drop.Place(Math.Max(face.Needs, fall.CrankAngle)))}° or later, take a smaller {Touch(drop)}, or enlarge the base circle"));
        }
        else if (fall.CrankAngle > drop.Drawn)
        {
            yield return Late(proof, drop);
        }
        else if (drop.Drawn - fall.CrankAngle > Slow * drop.Drawn)
        {
            yield return Of(
                Level.Note, proof, drop, drop.ShaftDeg(fall.CrankAngle), drop.ShaftDeg(drop.Drawn), "deg",
                FormattableString.Invariant($"at {rpm:0.#} rpm '{drop.Name}' is down after {drop.ShaftDeg(fall.CrankAngle):0.#}° of '{shaft}' ({1000 * fall.Time:0} ms), long before the {drop.ShaftDeg(drop.Drawn):0.#}° over which its fall is drawn"),
                FormattableString.Invariant($"Nothing, if it may; or let the move end at {Up(drop.Place(fall.CrankAngle))}°, so that the chart shows it as it is"));
        }

        var limit = proof.Limits.Landing;
        if (fall.LandingSpeed > limit)
        {
            yield return Of(
                Level.Caution, proof, drop, fall.LandingSpeed / 1000, limit / 1000, "m/s",
                FormattableString.Invariant($"the follower '{drop.Name}' lands on its cam at {fall.LandingSpeed / 1000:0.##} m/s, limit {limit / 1000:0.##} m/s: it knocks, and wears the cam where it lands"),
                "Lower the drop, use a weaker spring, or let the figure come down on a stop of felt or leather just before the follower does");
        }

        foreach (var finding in new DropTouch(proof, drop).Findings())
        {
            yield return finding;
        }
    }

    private Finding Late(Proof proof, DropWork drop)
    {
        var (fall, fall0) = (drop.Fall, drop.Face.Fall);
        var shaft = proof.Machine.NameOf(drop.Acted.Shaft);
        var meets = fall.CrankAngle > fall0.Free;
        var ways = new List<string> { FormattableString.Invariant($"let the move end at {Up(drop.Place(fall.CrankAngle))}° or later{(meets ? " and the next one begin after that" : "")}") };
        if (drop.Sizes.FastestRpm(drop.Drawn) is var slower && slower > 0)
        {
            ways.Add(FormattableString.Invariant($"turn no faster than {Math.Floor(10 * slower) / 10:0.#} rpm"));
        }

        if (drop.Sizes.ForceWithin(drop.Drawn) is { } force)
        {
            ways.Add(FormattableString.Invariant($"add a spring that presses the follower with {force:0.##} N more"));
        }

        var advice = string.Join(", or ", ways);
        return Of(
            Level.Fault, proof, drop, drop.ShaftDeg(fall.CrankAngle), drop.ShaftDeg(drop.Drawn), "deg",
            FormattableString.Invariant($"'{drop.Name}' falls {drop.Height:0.#} mm in {1000 * fall.Time:0} ms; at {proof.Machine.Design.Crank.Rpm:0.#} rpm '{shaft}' turns {drop.ShaftDeg(fall.CrankAngle):0.#}° meanwhile, but the fall is drawn over {drop.ShaftDeg(drop.Drawn):0.#}°: it lands at {drop.Place(fall.CrankAngle):0.#}° and not at {drop.Place(drop.Drawn):0.#}°{(meets ? ", when the cam already lifts it again" : "")}"),
            char.ToUpperInvariant(advice[0]) + advice[1..]);
    }

    /// <summary>A finding about a drop.</summary>
    internal static Finding Of(Level level, Proof proof, DropWork drop, double measured, double limit, string unit, string message, string advice, string check = "drop")
    {
        var from = drop.Face.Fall.From;
        return new(level, check, drop.Name, Proof.Deg(from), Proof.Deg(Math.Min(from + Math.Max(drop.Drawn, drop.Fall.CrankAngle), proof.Machine.Performance.Length)), measured, limit, unit, message, advice);
    }

    /// <summary>What rides on the cam.</summary>
    internal static string Touch(DropWork drop) => drop.Cam.Spec.Follower.Roller is not null ? "roller" : "round end";

    private static string Where(Proof proof, DropWork drop) => proof.Where(drop.Face.Fall.From, drop.Acted.Shaft);

    // A place in the turn, rounded up to the half degree.
    private static string Up(double deg) => (Math.Ceiling(2 * deg - 1e-9) / 2).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
