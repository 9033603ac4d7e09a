using Jackwork.Cams;
using Jackwork.Drops;

namespace Jackwork.Checks;

/// <summary>A falling follower held against the cam as it comes from the cutter, and the tip that it leaves.</summary>
/// <remarks>
/// The cam as cut is an unknown piece of plywood again (see <see cref="Rolling"/>): at every place of the fall it tells how low the
/// follower could be there. One that would have to be lower is in the wood; after the landing the follower must rest where the chart has it.
/// </remarks>
internal sealed class DropTouch(Proof proof, DropWork drop)
{
    /// <summary>Least angle of the wood at a tip, rad, and least outline that holds the follower up before it, mm (common practice, no source).</summary>
    private const double LeastTip = 50 * Math.PI / 180, LeastLand = 1;

    /// <summary>Places of a fall that are looked at.</summary>
    private const int Places = 240;

    /// <summary>How deep in the wood a falling follower counts as held by it, mm: ten times what a fitted outline may stray.</summary>
    private const double Give = 10 * CamOutline.FitTolerance;

    /// <summary>Pressure angle above which what comes against a follower stops it, rad (common practice, no source).</summary>
    private const double Stops = 60 * Math.PI / 180;

    private readonly DropFace face = drop.Face;

    /// <summary>Deepest that the falling follower would be in the wood, mm, below zero where it is clear, and the crank angle after the beginning of the fall where that is, rad; on the tip it is let off.</summary>
    public (double Deepest, double Since) Flight()
    {
        var (rolling, worst) = (Rolling.On(drop.Cam.AsCut, drop.Cam.Follower), (Deepest: double.NegativeInfinity, Since: 0.0));
        var until = Math.Min(drop.Fall.CrankAngle, face.Fall.Free);
        for (var i = 0; i <= Places; i++)
        {
            var since = i * until / Places;
            var q = drop.Fall.At(since);
            var rest = rolling.Rest(face.Fall.Shaft(since).Value, q);
            var depth = drop.Cam.Follower.Reach * Outward * (rest - q);
            worst = depth > worst.Deepest ? (depth, since) : worst;
        }

        return worst;
    }

    private int Outward => drop.Cam.Follower.Outward(face.Fall.Q.Value);

    public IEnumerable<Finding> Findings()
    {
        var touch = DropCheck.Touch(drop);
        if (!face.IsLate && Flight() is var (deepest, since) && deepest > Give)
        {
            // Wood at the foot lets the roller down later; anywhere else it stands in its way.
            var foot = proof.Cutter > 2 * drop.Cam.Profile.MinConcaveRadius;
            yield return DropCheck.Of(
                foot ? Level.Caution : Level.Fault, proof, drop, deepest, Give, "mm",
                FormattableString.Invariant($"the cam of '{drop.Name}' as it comes from the cutter is in the way of the falling {touch}, by {deepest:0.##} mm at {proof.Where(face.Fall.From + since, drop.Cam.Shaft)}"),
                foot
                    ? FormattableString.Invariant($"Use a cutter no wider than the {touch} ({2 * drop.Cam.Profile.MinConcaveRadius:0.#} mm), so that it gets to the foot of the face, or finish that by hand")
                    : "Spread the next rise over more of the turn, or begin it later");
        }

        if (face.TipAngle < LeastTip)
        {
            yield return DropCheck.Of(
                Level.Caution, proof, drop, Proof.Deg(face.TipAngle), Proof.Deg(LeastTip), "deg",
                FormattableString.Invariant($"the tip that '{drop.Name}' drops from is a knife of {Proof.Deg(face.TipAngle):0}°, limit {Proof.Deg(LeastTip):0}°: it will break or wear"),
                "Hold the member up for a few degrees before the drop, rise more gently, or stand the follower more squarely over the shaft", "drop-tip");
        }
        else if (face.Land < LeastLand)
        {
            yield return DropCheck.Of(
                Level.Note, proof, drop, face.Land, LeastLand, "mm",
                FormattableString.Invariant($"'{drop.Name}' drops from a tip with {face.Land:0.##} mm of outline that holds it up, limit {LeastLand:0.##} mm: as the tip wears it falls earlier and from less high"),
                FormattableString.Invariant($"Hold it up for {Math.Ceiling(drop.ShaftDeg(LeastLand / face.Tip.FromOrigin.Length / Math.Abs(face.Fall.T.First))):0}° before the drop"), "drop-tip");
        }

        if (face == drop.Cam.Drops[0] && face.BackwardAngle is var angle && angle > Stops)
        {
            yield return DropCheck.Of(
                Level.Note, proof, drop, Proof.Deg(angle), Proof.Deg(Stops), "deg",
                FormattableString.Invariant($"turned backward, the face of the cam comes against the {touch} of '{drop.Name}' (pressure angle {Proof.Deg(angle):0}°) and stops the crank, or breaks the tip"),
                "Mark the way to turn on the case, or put a ratchet on the crank's shaft that lets it go one way only", "drop-backward");
        }
    }
}
