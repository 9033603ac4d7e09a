using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Cords;

/// <summary>A place where the tension of a cord is least or greatest.</summary>
/// <param name="Newton">The tension, N; below 0 what the cord would have to push with.</param>
/// <param name="Step">Step of the performance.</param>
/// <param name="Strand">Straight piece of the cord, 0 the first.</param>
public readonly record struct CordPull(double Newton, int Step, int Strand);

/// <summary>The tension of a cord over the performance, and what would keep it taut.</summary>
/// <remarks>
/// <para>Virtual work: the straight piece k pulls with T_k, and by L_k' it grows as the driven's coordinate q does, all else standing; with the load G of <see cref="CordLoad"/></para>
/// <para>  sum T_k L_k' = -G,   L_k' = t_k . d(C_k+1 - C_k)/dq, less or more what a drum at its end turns.</para>
/// <para>Friction makes the pull on the one side of each lead up to k times that on the other (<see cref="CordFriction"/>). Which side that is turns with the motion, and at rest it may be either, so both are taken,
/// all leads one way and all the other: the least tension of both and the greatest.</para>
/// <para>With a stiffness E A the cord gives by sum T_k l_k/(E A), by that over |dL/dq| the driven lags.</para>
/// </remarks>
/// <param name="Least">Where the cord is least taut.</param>
/// <param name="Most">Where it pulls hardest.</param>
/// <param name="EverPulls">Whether weight or spring draws it taut anywhere.</param>
/// <param name="Grams">Mass on a driven that slides by which the least tension would be what it must be; null where mass does not help.</param>
/// <param name="Newtons">How much harder the spring must pull for that; null where there is none or it does not help.</param>
/// <param name="Short">What the load lacks at its worst, N or N mm.</param>
/// <param name="Lag">Least and greatest lag of the driven for the cord's stretch, in its coordinate; null where no stiffness is given.</param>
public sealed record CordTension(CordPull Least, CordPull Most, bool EverPulls, double? Grams, double? Newtons, double Short, (double Low, double High)? Lag)
{
    /// <summary>Share of its moving leads that a cord must move the driven by, mm for a unit of its coordinate, for its pull to count.</summary>
    private const double DeadCentre = 1e-9;

    /// <summary>The tension of a cord over a performance; null where it does not close at any step.</summary>
    public static CordTension? Of(Proof proof, CordDrive drive)
    {
        var (load, states) = (new CordLoad(proof, drive), new MemberState[proof.Machine.Members.Count]);
        var pose = new CordPose(drive);
        (CordPull Least, CordPull Most) at = (new(double.PositiveInfinity, 0, 0), new(double.NegativeInfinity, 0, 0));
        var wanted = drive.Spec.Least ?? CordSizes.UsualLeast;
        var (ever, any, lacking) = (false, false, 0.0);
        (double Need, bool Helps) grams = (0, true), newtons = (0, drive.Spec.Spring is not null);
        (double Low, double High)? lag = null;
        for (var i = 0; i < proof.Motion.Steps; i++)
        {
            if (proof.Motion.Gaps.Any(g => g.Relation == drive && proof.At(i) >= g.From && proof.At(i) <= g.To))
            {
                continue;
            }

            Residuals.Fill(proof.Motion, i, states);
            var by = load.Varied(states);
            pose.Take(by);
            if (Math.Abs(pose.Slope) < DeadCentre)
            {
                continue;
            }

            var asked = load.Asked(states, by);
            any = true;
            ever |= -asked / pose.Slope > 0;
            foreach (var towards in (ReadOnlySpan<bool>)[true, false])
            {
                var shares = pose.Shares(towards);
                var least = (K: 0, T: double.PositiveInfinity);
                for (var k = 0; k < shares.Length; k++)
                {
                    var t = -asked * shares[k];
                    least = t < least.T ? (k, t) : least;
                    at.Least = t < at.Least.Newton ? new(t, i, k) : at.Least;
                    at.Most = t > at.Most.Newton ? new(t, i, k) : at.Most;
                }

                // How much more load would draw this piece as taut as it must be.
                if (least.T < wanted && shares[least.K] != 0)
                {
                    var more = (least.T - wanted) / shares[least.K];
                    lacking = Math.Abs(more) > Math.Abs(lacking) ? more : lacking;
                    var (share, slack) = load.OfSpring(by);
                    grams = Need(grams, more, load.GramShare(states, by), 0);
                    newtons = Need(newtons, more, share, slack);
                }
            }

            if (drive.Spec.Stiffness is { } stiffness)
            {
                var gives = Math.Max(0, -asked / pose.Slope) * pose.Straight / stiffness / Math.Abs(pose.Slope);
                lag = lag is { } l ? (Math.Min(l.Low, gives), Math.Max(l.High, gives)) : (gives, gives);
            }
        }

        return any ? new(at.Least, at.Most, ever, Said(grams), Said(newtons), Math.Abs(lacking), lag) : null;

        static double? Said((double Need, bool Helps) found) => found is { Helps: true, Need: > 0 } ? found.Need : null;
    }

    // What is needed at the worst step, after the first that does nothing yet, as long as it helps at every one.
    private static (double Need, bool Helps) Need((double Need, bool Helps) before, double more, double share, double first) =>
        share * more <= 0 ? (before.Need, false) : (Math.Max(before.Need, first + more / share), before.Helps);
}
