using Jackwork.Bench.Sessions;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements;

/// <summary>One cam ready to be drawn: its samples over a turn, its follower where it stands at the start, its limits.</summary>
/// <remarks>Drawn in the cam's plane, seen from the tip of its shaft's axis, y up.</remarks>
public sealed class CamsView
{
    private readonly Jet[] q, t;
    private readonly int nearest;

    /// <summary>The cam of an acted member.</summary>
    /// <param name="work">What was worked out.</param>
    /// <param name="index">Which, in the machine's order.</param>
    public CamsView(Work work, int index)
    {
        (Work, Acted, Cam) = (work, work.Proof.ActedOf(work.Proof.Cams[index]), work.Proof.Cams[index]);
        Member = work.Machine.Members[Acted.Member];
        Result = work.Proof.AsCut.Results[index];
        Joint = work.Machine.Members[Cam.FollowerMember].Joint;
        Plane = new(work.Machine.Members[Cam.Shaft].Joint);
        (q, t) = (work.Proof.Motion.Of(Cam.FollowerMember).ToArray(), work.Proof.Motion.Of(Cam.Shaft).ToArray());
        (PressureLimit, NoseLimit, CutterRadius) = (work.Proof.Limits.PressureAngle(Cam.Follower.Turns), work.Proof.Limits.ConvexRadius, work.Proof.Cutter / 2);
        Rate = work.Machine.Turns[Cam.Shaft]!.Value.Value;
        IsSound = !work.Proof.Motion.Gaps.Any(g => Acted.Chain.Contains(g.Relation));
        nearest = Enumerable.Range(0, Steps).MinBy(i => Cam.Follower.EntersHollows ? Middle(i).FromOrigin.Length : Sample(i).Point.FromOrigin.Dot(Sample(i).Normal));
        Least = IsSound ? work.Proof.LeastBase(Acted) : null;
    }

    /// <summary>What was worked out.</summary>
    public Work Work { get; }

    /// <summary>The acted member and its chain.</summary>
    public Acted Acted { get; }

    /// <summary>The acted member itself.</summary>
    public Member Member { get; }

    /// <summary>The cam.</summary>
    public Cam Cam { get; }

    /// <summary>How it does as cut.</summary>
    public AsCutResult Result { get; }

    /// <summary>The follower's joint.</summary>
    public Joint Joint { get; }

    /// <summary>The plane it is drawn in.</summary>
    public CamPlane Plane { get; }

    /// <summary>Turns of the cam for a turn of the crank, signed.</summary>
    public double Rate { get; }

    /// <summary>Whether the chain to the figure closes everywhere; of a cam where it doesn't nothing can be said.</summary>
    public bool IsSound { get; }

    /// <summary>The least base circle; null where none keeps the limits.</summary>
    public LeastBase? Least { get; }

    /// <summary>Largest pressure angle allowed, rad.</summary>
    public double PressureLimit { get; }

    /// <summary>Least convex radius allowed, mm.</summary>
    public double NoseLimit { get; }

    /// <summary>Radius of the cutter, mm.</summary>
    public double CutterRadius { get; }

    /// <summary>Steps in a turn of the cam.</summary>
    public int Steps => Cam.Profile.Samples.Length;

    /// <summary>The follower as the design has it.</summary>
    public Jackwork.Design.CamSpec Spec => Cam.Spec;

    /// <summary>Radius of the roller or round end, mm; 0 for a flat face.</summary>
    public double Roller => (Spec.Follower.Roller ?? Spec.Follower.Round ?? 0) / 2;

    /// <summary>Sense in which the follower's coordinate turns it in the drawing.</summary>
    public int Sense => Math.Sign(Work.Machine.Members[Cam.Shaft].Joint.Along.Dot(Joint.Along));

    /// <summary>The lever's axis; null for a stem.</summary>
    public Point2? Pivot => Joint.Kind == JointKind.Pivot ? Plane.Point(Joint.Through) : null;

    /// <summary>Direction of a stem's travel.</summary>
    public Vec2 Travel => Plane.Direction(Joint.Along);

    /// <summary>Where the cam touches its follower at a step of its turn.</summary>
    public CamSample Sample(int step) => Cam.Profile.Samples[step];

    /// <summary>Middle of the roller, round end or face at a step, where it stands in the drawing, mm.</summary>
    public Point2 Middle(int step)
    {
        var s = Sample(step);
        return (s.Point + Roller * s.Normal - s.FaceOffset * s.Normal.Left).Turned(t[step].Value);
    }

    /// <summary>The face's direction at a step in the drawing.</summary>
    public Vec2 Face(int step) => Sample(step).Normal.Left.Turned(t[step].Value);

    /// <summary>How far the cam holds the follower's point out from where it is nearest to the shaft, along its path, mm; in a drop, turned slowly.</summary>
    public double Lift(int step) => Cam.Follower.Reach * Math.Abs(Cam.Profile.Held(step, q[step].Value) - q[nearest].Value);

    /// <summary>Whether the pressure angle is beyond its limit.</summary>
    public bool PushesTooMuch(int step) => !Cam.Profile.IsOnTip(step) && Sample(step).PressureAngle > PressureLimit;

    /// <summary>Whether the outline is too sharp there, folds over, or hides from the cutter.</summary>
    public bool IsTooSharp(int step) => !Cam.Profile.IsOnTip(step) && (IsHollow(step) ? -Sample(step).Radius < CutterRadius : Sample(step).Radius < NoseLimit);

    /// <summary>Whether the outline bends inward.</summary>
    public bool IsHollow(int step) => Sample(step).PitchRadius <= 0 && Cam.Follower.EntersHollows;

    /// <summary>Degrees of the shaft, in the sense in which it runs, at a step.</summary>
    public double ShaftDeg(int step) => Proof.Deg(Work.Proof.At(step)) * Math.Abs(Rate);

    /// <summary>Degrees of the crank in a step.</summary>
    public double StepDeg => Proof.Deg(Work.Machine.Performance.Step);

    /// <summary>Degrees of the crank after which the follower's table begins anew: the cam's turn where all turns are alike.</summary>
    public double SpanDeg => IsRepeating ? 360 / Math.Abs(Rate) : 360.0 * Work.Machine.Performance.CrankTurns;

    /// <summary>The follower's way from its place at the start, deg or mm in the drawing, for every step of the span.</summary>
    public IEnumerable<double> Way => q.Take(IsRepeating ? Steps : q.Length).Select(x => (x.Value - q[0].Value) * (Pivot is null ? 1 : Proof.Deg(Sense)));

    /// <summary>Stretches of steps for which something holds, ends included.</summary>
    public IEnumerable<(int From, int To)> Runs(Func<int, bool> holds)
    {
        for (var i = 0; i < Steps; i++)
        {
            if (holds(i))
            {
                var from = i;
                while (i + 1 < Steps && holds(i + 1))
                {
                    i++;
                }

                yield return (Math.Max(0, from - 1), Math.Min(Steps - 1, i + 1));
            }
        }
    }

    /// <summary>Difference between turns of a cam that is not seen in a drawing, rad or mm.</summary>
    private const double Unseen = 1e-5;

    private bool IsRepeating => Cam.Unlike.Difference < Unseen;
}
