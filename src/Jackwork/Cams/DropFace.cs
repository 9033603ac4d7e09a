using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>The face that a cam drops its follower over, as steep as the roller allows: turned however slowly, the roller gets by it.</summary>
/// <remarks>
/// The last point that holds the roller up is the tip. Turned slowly the roller rides down over it (see <see cref="TipRide"/>) until the tip
/// stands beside it; there it could fall at once. The face is what a roller falling so, the shaft standing still, leaves of the
/// wood: the path of its centre set off by R, which is straight for a stem and an arc about the lever's axis, R from its arm's end,
/// for a lever. At the bottom stands the roller's own round, a hollow of radius R. A drop so small that the roller is down before the tip is
/// past has only that round. Turned at any speed the roller falls later than so, and is clear of the face.
/// </remarks>
public sealed class DropFace
{
    /// <summary>Pieces that the face and the round below it are put in by.</summary>
    private const int Parts = 24;

    /// <summary>Points nearer than this are one, mm: rounding only.</summary>
    private const double Same = 1e-9;

    /// <summary>Share of the ride that is left out at its end, where with the tip just beside the roller it has no speed: far less than any cut.</summary>
    internal const double Edge = 1e-9;

    private readonly TipRide ride;
    private readonly RollerFollower roller;

    // +1 where the face looks away from a lever's axis, or to the left of a stem's travel; else -1.
    private readonly int side;

    private DropFace(Fall fall, RollerFollower roller)
    {
        (Fall, this.roller) = (fall, roller);
        Before = roller.Sample(fall.Q, fall.T);
        ride = TipRide.Of(roller, Before.Point, fall.Q.Value);
        var (sense, outward) = (Math.Sign(fall.T.First), roller.Outward(fall.Q.Value));
        var passed = ride.Passed(fall.T.Value, sense);
        var down = ride.Down(fall.T.Value, sense, fall.Low);

        // Beside the tip the ride has no derivative, but a place.
        var beside = double.IsFinite(passed) ? Beside(fall.T.Value + sense * passed) : fall.Low;
        IsSteep = double.IsFinite(passed) && outward * (beside - fall.Low) > 0;
        var needs = Math.Min(IsSteep ? passed : down, 2 * Math.PI) / Math.Abs(fall.T.First);
        IsLate = !(needs < fall.Length);
        Needs = needs;
        Since = Math.Min(needs, fall.Length);
        From = IsLate ? outward * Math.Max(outward * fall.Low, outward * Ridden(Since)) : IsSteep ? beside : fall.Low;

        // The wood lies where the tip goes to.
        var t = fall.Shaft(Since).Value;
        side = Across(From, t).Normal.Dot(sense * Tip.FromOrigin.Left) < 0 ? 1 : -1;
    }

    /// <summary>The fall.</summary>
    public Fall Fall { get; }

    /// <summary>The outline's last place before the tip; its point is the tip.</summary>
    public CamSample Before { get; }

    /// <summary>The tip, seen from the cam, mm.</summary>
    public Point2 Tip => Before.Point;

    /// <summary>Whether there is a face between the tip and the round at its foot.</summary>
    public bool IsSteep { get; }

    /// <summary>Crank angle from letting go until the tip is past the roller and this could be down, turned however slowly, rad.</summary>
    public double Needs { get; }

    /// <summary>Whether the fall as drawn is over before that: then the tip is cut away by the fall itself, and lets go too early.</summary>
    public bool IsLate { get; }

    /// <summary>Crank angle from letting go after which nothing of the tip is in the way, rad: <see cref="Needs"/>, or the drawn fall's length where that is less.</summary>
    public double Since { get; }

    /// <summary>The follower's coordinate as it comes off the tip there, rad or mm.</summary>
    public double From { get; }

    /// <summary>Angle of the wood at the tip, rad: between the outline before it and the face.</summary>
    public double TipAngle => Math.PI - Math.Acos(Math.Clamp(Before.Normal.Dot(FaceNormal), -1, 1));

    /// <summary>Outline that holds the member up before the tip, mm.</summary>
    public double Land => Math.Abs(Fall.T.First) * Fall.Held * Tip.FromOrigin.Length;

    /// <summary>The follower's coordinate while it rides down over the tip, so long (rad of crank) after it is let go; derivatives per rad of crank.</summary>
    internal Jet Ride(double since) => ride.At(Fall.Shaft(since));

    /// <summary>The lowest that the follower can be so long after it is let go, rad or mm: on the tip, and down once that is past.</summary>
    internal double Lowest(double since) => since < Since ? Ridden(since) : Fall.Low;

    /// <summary>Where the cam touches its follower there, the shaft turned however slowly.</summary>
    internal CamSample Sample(double since, Jet t)
    {
        if (since >= Since)
        {
            return roller.Sample(Jet.Constant(Fall.Low), t);
        }

        var q = Ridden(since);
        var n = (Seen(q, t.Value) - Tip).Unit();
        return new(Tip, n, 0, roller.Radius, Math.Asin(Math.Min(1, Math.Abs(n.Dot(Across(q, t.Value).Normal)))), 0);
    }

    /// <summary>Pressure angle at which the face, or the tip, takes hold of the follower that has landed when the shaft goes backward, rad.</summary>
    public double BackwardAngle => IsSteep ? Math.PI / 2 : Sample(Since * (1 - Edge), Fall.Shaft(Since * (1 - Edge))).PressureAngle;

    /// <summary>The outline from the tip down to where the follower lands, in the order of the crank; where one piece ends and the next begins they have one point, so that no sliver comes between.</summary>
    internal IEnumerable<CamSample> Samples()
    {
        var last = Before;
        foreach (var s in Pieces())
        {
            last = s.Point.DistanceTo(last.Point) < Same ? s with { Point = last.Point } : s;
            yield return last;
        }
    }

    private IEnumerable<CamSample> Pieces()
    {
        var t = Fall.Shaft(Since);
        var low = roller.Sample(Jet.Constant(Fall.Low), t);
        yield return Before;
        var normal = (Seen(From, t.Value) - Tip).Unit();
        if (From != Fall.Low)
        {
            for (var i = 0; i <= Parts; i++)
            {
                var face = Face(From + i * (Fall.Low - From) / Parts, t.Value);
                normal = face.Normal;
                yield return face;
            }
        }

        var foot = Seen(Fall.Low, t.Value);
        var sweep = Math.Atan2(normal.Cross(low.Normal), normal.Dot(low.Normal));
        for (var i = 0; i <= Parts; i++)
        {
            var n = normal.Turned(i * sweep / Parts);
            yield return new(foot - roller.Radius * n, n, -roller.Radius, 0, 0, 0);
        }

        yield return low;
    }

    /// <summary>The face of a fall.</summary>
    internal static DropFace Of(Fall fall, RollerFollower roller) => new(fall, roller);

    // The direction out of the wood just below the tip.
    private Vec2 FaceNormal => From != Fall.Low ? Face(From, Fall.Shaft(Since).Value).Normal : (Seen(From, Fall.Shaft(Since).Value) - Tip).Unit();

    private double Ridden(double since) => ride.At(Fall.Shaft(since)).Value;

    // The coordinate at which the tip stands just beside the roller: half way between two places where it still holds it.
    private double Beside(double t)
    {
        var tip = Before.Point.Turned(t);
        return roller switch
        {
            ArmRoller f => Fall.Q.Value + Math.IEEERemainder(f.Sense * ((tip - f.Pivot).Angle - f.Zero) - Fall.Q.Value, 2 * Math.PI),
            StemRoller f => (tip - f.Zero).Dot(f.Travel),
            _ => double.NaN,
        };
    }

    private Point2 Seen(double q, double t) => ride.Centre(q).Turned(-t);

    private CamSample Face(double q, double t)
    {
        var (normal, pitch) = Across(q, t);
        return new(Seen(q, t) - side * roller.Radius * normal, side * normal, side * pitch - roller.Radius, side * pitch, Math.PI / 2, 0);
    }

    // Square to the path of the roller's centre, seen from the cam, and the path's radius: away from a lever's axis, or to the left of a stem's travel.
    private (Vec2 Normal, double Radius) Across(double q, double t) => roller switch
    {
        ArmRoller f => ((ride.Centre(q) - f.Pivot).Unit().Turned(-t), f.Arm),
        StemRoller f => (f.Travel.Left.Turned(-t), double.PositiveInfinity),
        _ => (default, double.NaN),
    };
}
