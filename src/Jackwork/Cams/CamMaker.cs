using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Timing;
using Jackwork.Timing.Laws;

namespace Jackwork.Cams;

/// <summary>Makes the cams of a machine from its motion.</summary>
internal static class CamMaker
{
    /// <summary>The cam of one acted member.</summary>
    public static CamDefinition Define(Motion.Motion motion, Acted acted, Limits limits)
    {
        var drive = (CamDrive)acted.Cam;
        var turn = CamTurn.Of(motion, drive);
        var drawn = FollowerBuilder.Build(motion.Machine, drive);
        var falls = Falls(motion, acted, turn, drawn);
        var (follower, missed) = Set(motion, drive, drawn, turn, limits, falls);
        return new(motion, drive, follower, turn, CamProfile.Of(motion, drive, follower, turn.Steps, falls), Corners(motion, acted, turn, falls.Count > 0), missed) { Falls = falls };
    }

    // What the chart draws as a fall away from the cam is no fall: the cam pushes it, and a check says so.
    private static IReadOnlyList<Fall> Falls(Motion.Motion motion, Acted acted, CamTurn turn, Follower drawn)
    {
        var falls = Fall.Of(motion, acted, turn);
        return falls.All(f => drawn.Outward(f.Q.Value) * (f.Low - f.Q.Value) < 0) ? falls : [];
    }

    private static (Follower Follower, double? Missed) Set(Motion.Motion motion, CamDrive drive, Follower drawn, CamTurn turn, Limits limits, IReadOnlyList<Fall> falls)
    {
        switch (drive.Spec.Base)
        {
            case null:
                return (drawn, null);
            case { Word: null, Number: var r }:
                return drawn.WithBase(r, turn.Least, turn.Most) is { } set ? (set, null) : (drawn, r);
            default:
                return Smallest(motion, drive, drawn, turn, limits, falls) is { } found ? (found, null) : (drawn, 0);
        }
    }

    /// <summary>The least base circle that keeps an acted member's cam within its limits, and what keeps it from being less; null where none up to ten hubs does.</summary>
    public static LeastBase? Least(Motion.Motion motion, Acted acted, Limits limits)
    {
        var drive = (CamDrive)acted.Cam;
        var turn = CamTurn.Of(motion, drive);
        var drawn = FollowerBuilder.Build(motion.Machine, drive);
        var falls = Falls(motion, acted, turn, drawn);
        if (Smallest(motion, drive, drawn, turn, limits, falls) is not { } follower)
        {
            return null;
        }

        var radius = follower.BaseRadius(turn.Least, turn.Most);
        var less = radius - LeastBase.Beside;
        var bound = less < HubRadius(drive) + limits.Rim ? BaseBound.Hub
            : follower.WithBase(less, turn.Least, turn.Most) is not { } smaller ? BaseBound.Reach
            : CamProfile.Of(motion, drive, smaller, turn.Steps, falls).MaxPressureAngle > limits.PressureAngle(follower.Turns) ? BaseBound.PressureAngle
            : BaseBound.Nose;
        return new(radius, bound);
    }

    private static Follower? Smallest(Motion.Motion motion, CamDrive drive, Follower drawn, CamTurn turn, Limits limits, IReadOnlyList<Fall> falls)
    {
        var profile = CamProfile.Of(motion, drive, drawn, turn.Steps, falls);
        return BaseSearch.Find(HubRadius(drive) + limits.Rim, r => drawn.WithBase(r, turn.Least, turn.Most), f =>
        {
            profile.Fill(motion, drive, f);
            return profile.MaxPressureAngle <= limits.PressureAngle(f.Turns) && profile.MinConvexRadius >= limits.ConvexRadius && OuterRadius(drive.Spec, profile) >= limits.ConvexRadius;
        });
    }

    // Smallest radius of the outer wall of a groove in its hollows, which stand off the outline by the groove's width; infinite without a groove.
    private static double OuterRadius(Design.CamSpec spec, CamProfile profile) => spec.Groove is { } groove
        ? profile.MinConcaveRadius - (spec.Follower.Roller ?? spec.Follower.Round!.Value) - (groove.Clearance ?? ReturnMaker.Clearance)
        : double.PositiveInfinity;

    /// <summary>Radius of the hub or collet that the cam must clear, mm.</summary>
    public static double HubRadius(CamDrive drive) => drive.Spec.HubDiameter / 2;

    // Crank angles in the cam's first turn where the chart's shaft stands at a jump of speed; where a fall begins and lands is no corner of the cam's.
    private static List<double> Corners(Motion.Motion motion, Acted acted, CamTurn turn, bool drops)
    {
        var ends = drops ? acted.Chart.Pieces.Where(p => p.Law == MotionLaws.Drop).SelectMany(p => (double[])[p.From, p.To]).ToList() : [];
        var jumps = acted.Chart.Knots.Where(k => k.HasVelocityJump && !ends.Exists(e => Math.Abs(Math.IEEERemainder(k.Angle - e, 2 * Math.PI)) < TimingChart.KnotTolerance)).ToList();
        if (jumps.Count == 0)
        {
            return [];
        }

        // On a shaft that does not turn evenly a turn still takes as long as any other, but not its parts.
        var machine = motion.Machine;
        var (turns, isEven) = (machine.Turns[acted.Shaft]!.Value, ShaftTurn.IsEven(machine.Drives, acted.Shaft));
        var rate = Math.Abs(turns.Value);
        double Crank(double angle) => isEven ? angle / rate : ShaftTurn.Crank(machine, acted.Shaft, turns.Numerator.Sign * angle);
        var end = motion.Machine.Performance.Length / turn.Turns;
        return [.. jumps.SelectMany(k => Fall.At(Crank(k.Angle), 2 * Math.PI / rate, end)).Order()];
    }
}
