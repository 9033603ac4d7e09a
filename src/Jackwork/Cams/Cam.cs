using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>A finished plate cam, in the plane seen from the tip of its shaft's axis, the shaft as drawn, up as drawn.</summary>
/// <param name="Name">Name of the follower that it moves; cams go by it.</param>
/// <param name="On">Name of the shaft that carries it.</param>
/// <param name="Shaft">Index of the shaft.</param>
/// <param name="FollowerMember">Index of the follower.</param>
/// <param name="Follower">The follower as set.</param>
/// <param name="Profile">The outline as the motion asks for it, sampled.</param>
/// <param name="Outline">The loop of lines and arcs that is cut, counter-clockwise.</param>
/// <param name="OutlineError">Largest distance of true points between the samples from the loop, mm.</param>
/// <param name="AsCut">The loop as the cutter leaves it, which is <paramref name="Outline"/> itself where the cutter reaches everywhere.</param>
/// <param name="Unreached">Largest thickness that the cutter leaves standing, mm; zero where it reaches everywhere.</param>
/// <param name="BaseRadius">Radius of the base circle, mm.</param>
/// <param name="BaseWanted">The base radius asked for where the follower can't be set to it, mm (0 for "auto"); else null.</param>
/// <param name="HubRadius">Radius of the hub that the cam must clear, mm.</param>
/// <param name="Bore">Bore, mm.</param>
/// <param name="Station">How far along the shaft's axis, from the point that the design gives for it, the cam's middle lies, mm.</param>
/// <param name="Unlike">Largest difference between what two turns of the cam ask of the follower, rad or mm, and the step where it is.</param>
/// <param name="Corners">Crank angles where the chart's speed jumps, rad.</param>
public sealed record Cam(
    string Name,
    string On,
    int Shaft,
    int FollowerMember,
    Follower Follower,
    CamProfile Profile,
    Outline Outline,
    double OutlineError,
    Outline AsCut,
    double Unreached,
    double BaseRadius,
    double? BaseWanted,
    double HubRadius,
    double Bore,
    double Station,
    (double Difference, int Step) Unlike,
    IReadOnlyList<double> Corners)
{
    /// <summary>The drive that it was made for.</summary>
    public required CamDrive Drive { get; init; }

    /// <summary>The cam as designed.</summary>
    public CamSpec Spec => Drive.Spec;

    /// <summary>The faces over which it drops its follower.</summary>
    public IReadOnlyList<DropFace> Drops => Profile.Drops;

    /// <summary>Whether the chart draws the follower as falling at a crank angle, rad: then it is not on the cam.</summary>
    public bool DropsAt(double crank) => Drops.Any(d => d.Fall.Holds(crank));

    /// <summary>What brings the follower back; null where its weight or a spring must.</summary>
    public CamReturn? Return { get; init; }

    /// <summary>Smallest distance of the outline from the shaft's axis, mm.</summary>
    public double SmallestRadius => Outline.DistanceTo(Point2.Origin);

    /// <summary>The discs that followers run round: the cam itself, and the second of a conjugate pair.</summary>
    public IEnumerable<CamDisc> Discs
    {
        get
        {
            yield return new($"the cam of '{Name}'", Follower, Profile, Outline, Unreached, BaseRadius);
            if (Return is SecondDisc second)
            {
                yield return new($"the second cam of '{Name}'", second.Follower, second.Profile, second.Loop.Outline, second.Loop.Unreached, second.BaseRadius);
            }
        }
    }
}
