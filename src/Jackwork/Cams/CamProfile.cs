using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>A cam's outline, sampled at the steps of one turn, with its worst places.</summary>
/// <remarks>Samples are in the order of the crank; the shaft turning forward, that is clockwise round the cam.</remarks>
public sealed class CamProfile
{
    private readonly CamSample[] samples;

    private readonly IReadOnlyList<Fall> falls;
    private readonly DropFace[] drops;
    private readonly int[] fallAt;
    private double crankStep;

    private CamProfile(int steps, IReadOnlyList<Fall> falls)
    {
        (samples, this.falls) = (new CamSample[steps], falls);
        (drops, fallAt) = (new DropFace[falls.Count], falls.Count > 0 ? new int[steps] : []);
    }

    /// <summary>The faces over which the cam drops its follower, in the order of the crank.</summary>
    public IReadOnlyList<DropFace> Drops => drops;

    /// <summary>The samples, one for each step of the cam's first turn.</summary>
    public ReadOnlySpan<CamSample> Samples => samples;

    /// <summary>Largest pressure angle, rad.</summary>
    public double MaxPressureAngle { get; private set; }

    /// <summary>Step of the largest pressure angle.</summary>
    public int MaxPressureStep { get; private set; }

    /// <summary>Smallest radius of curvature on convex stretches of the outline, mm; below zero where the outline would fold (undercut).</summary>
    public double MinConvexRadius { get; private set; }

    /// <summary>Step of the smallest convex radius.</summary>
    public int MinConvexStep { get; private set; }

    /// <summary>Smallest radius of curvature in the hollows of the outline, mm; infinite where there is no hollow.</summary>
    public double MinConcaveRadius { get; private set; }

    /// <summary>Step of the smallest hollow radius.</summary>
    public int MinConcaveStep { get; private set; }

    /// <summary>Smallest and largest distance of a flat face's contact from its middle, mm, signed.</summary>
    public (double Least, double Most) Face { get; private set; }

    /// <summary>Whether some stretch is undercut: the outline there is not the one that moves the follower.</summary>
    /// <remarks>The outside of the band that a roller sweeps folds in its hollows, every other outline on its convex stretches.</remarks>
    public bool IsUndercut => MinConvexRadius < 0 || MinConcaveRadius < 0;

    /// <summary>The drop over whose face the follower falls at a step, as drawn; null where it is on the cam.</summary>
    public DropFace? DropAt(int step) => fallAt.Length > 0 && fallAt[step] > 0 ? drops[fallAt[step] - 1] : null;

    /// <summary>Whether, turned slowly, the follower rides down over a tip at a step: its sample is then that of the tip.</summary>
    public bool IsOnTip(int step) => DropAt(step) is { } drop && drop.Fall.Since(crankStep * step) < drop.Since;

    /// <summary>Where the cam itself would hold the follower at a step, rad or mm: as the chart asks, and in a fall the lowest that it can be.</summary>
    /// <param name="step">The step.</param>
    /// <param name="asked">What the chart asks.</param>
    public double Held(int step, double asked) => DropAt(step) is { } drop ? drop.Lowest(drop.Fall.Since(crankStep * step)) : asked;

    /// <summary>The profile of a follower's cam over one turn.</summary>
    /// <param name="motion">The solved motion.</param>
    /// <param name="drive">The cam.</param>
    /// <param name="follower">The follower as set.</param>
    /// <param name="steps">Steps in a turn of the cam.</param>
    /// <param name="falls">The stretches over which it lets the follower go; then the follower is a roller or round end.</param>
    internal static CamProfile Of(Motion.Motion motion, CamDrive drive, Follower follower, int steps, IReadOnlyList<Fall> falls)
    {
        var profile = new CamProfile(steps, falls);
        profile.Fill(motion, drive, follower);
        return profile;
    }

    /// <summary>Works the profile out again into the same memory.</summary>
    internal void Fill(Motion.Motion motion, CamDrive drive, Follower follower)
    {
        var q = motion.Of(drive.Driven);
        var t = motion.Of(drive.Driver);
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = follower.Sample(q[i], t[i]);
        }

        Drop(motion.Machine.Performance, follower, t);
        FindWorst(follower.EntersHollows);
        FindFeet(follower);
    }

    // In a fall the follower is taken where the cam would hold it, the shaft turned however slowly.
    private void Drop(Performance performance, Follower follower, ReadOnlySpan<Jet> t)
    {
        crankStep = performance.Step;
        for (var k = 0; k < falls.Count; k++)
        {
            drops[k] = DropFace.Of(falls[k], (RollerFollower)follower);
        }

        for (var i = 0; i < fallAt.Length; i++)
        {
            for (var k = 0; k < falls.Count; k++)
            {
                if (falls[k].Holds(performance.At(i)))
                {
                    fallAt[i] = k + 1;
                    samples[i] = drops[k].Sample(falls[k].Since(performance.At(i)), t[i]);
                }
            }
        }
    }

    // At the foot of each face the outline is as hollow as the roller is round.
    private void FindFeet(Follower follower)
    {
        foreach (var drop in drops)
        {
            var radius = ((RollerFollower)follower).Radius;
            if (radius < MinConcaveRadius)
            {
                (MinConcaveRadius, MinConcaveStep) = (radius, (int)((drop.Fall.From + drop.Since) / crankStep) % samples.Length);
            }
        }
    }

    private void FindWorst(bool enters)
    {
        (MaxPressureAngle, MinConvexRadius, MinConcaveRadius) = (0, double.PositiveInfinity, double.PositiveInfinity);
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < samples.Length; i++)
        {
            if (fallAt.Length > 0 && IsOnTip(i))
            {
                continue;
            }

            ref readonly var s = ref samples[i];
            if (s.PressureAngle > MaxPressureAngle)
            {
                (MaxPressureAngle, MaxPressureStep) = (s.PressureAngle, i);
            }

            // A pitch curve that bends outward carries a convex outline, down to a fold where its radius is less than the
            // roller's. What would be a hollow for a flat face is a fold too.
            if (s.PitchRadius > 0 || !enters)
            {
                if (s.Radius < MinConvexRadius)
                {
                    (MinConvexRadius, MinConvexStep) = (s.Radius, i);
                }
            }
            else if (-s.Radius < MinConcaveRadius)
            {
                (MinConcaveRadius, MinConcaveStep) = (-s.Radius, i);
            }

            least = Math.Min(least, s.FaceOffset);
            most = Math.Max(most, s.FaceOffset);
        }

        Face = (least, most);
    }
}
