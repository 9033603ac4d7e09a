namespace Jackwork.Checks;

/// <summary>How hard a follower is thrown at the design's crank speed, and jumps of its speed.</summary>
/// <remarks>a = q'' w^2 at the follower's point. A follower held by its weight leaves its cam at 9.8 m/s^2; half of that is the usual limit (common practice, no source). One that its cam drives both ways can't leave it, and one that falls has left it.</remarks>
internal sealed class AccelerationCheck : ICheck
{
    public string Name => "acceleration";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var w = proof.Machine.CrankSpeed;
        foreach (var (cam, _, _) in proof.SoundCams)
        {
            if (cam.Corners.Count > 0)
            {
                var first = cam.Corners[0];
                yield return new(
                    Level.Caution, "knock", cam.Name, Proof.Deg(first), Proof.Deg(cam.Corners[^1]), cam.Corners.Count, 0, "",
                    FormattableString.Invariant($"the follower '{cam.Name}' changes speed at once, {cam.Corners.Count} times a turn of '{cam.On}', first at {proof.Where(first, cam.Shaft)}: it will knock and wear the cam there"),
                    "Use a law that starts and stops gently, such as cycloidal or modified-sine");
            }

            var q = proof.Motion.Of(cam.FollowerMember);
            var (most, step) = (0.0, 0);
            for (var i = 0; i < q.Length; i++)
            {
                if (Math.Abs(q[i].Second) > most && !cam.DropsAt(proof.At(i)))
                {
                    (most, step) = (Math.Abs(q[i].Second), i);
                }
            }

            var a = most * w * w * cam.Follower.Reach;
            var limit = proof.Limits.Acceleration;
            if (cam.Return is null && a > limit * (1 - Limits.Close))
            {
                var at = proof.At(step);
                yield return new(
                    a > limit ? Level.Fault : Level.Caution, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), a / 1000, limit / 1000, "m/s2",
                    FormattableString.Invariant($"at {proof.Machine.Design.Crank.Rpm:0.#} rpm the follower '{cam.Name}' is thrown with {a / 1000:0.##} m/s² at {proof.Where(at, cam.Shaft)}, limit {limit / 1000:0.##} m/s²; it may leave its cam"),
                    FormattableString.Invariant($"Turn more slowly (up to {Math.Floor(proof.Machine.Design.Crank.Rpm * Math.Sqrt(limit / a) * 10) / 10:0.#} rpm), spread the move over more of the turn, or hold the follower by a spring"));
            }
        }
    }
}
