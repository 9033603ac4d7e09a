using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>A roller of radius R resting on lines, arcs and corners: the curves that its centre may lie on.</summary>
internal abstract class RollerRolling : Rolling
{
    /// <summary>How far (mm) short of its nominal place a roller may be stopped in a hole; what lies farther back is the far side of the hole.</summary>
    private const double Early = 2;

    private readonly Track[] tracks;
    private readonly TrackFan fan;
    private readonly bool within;

    protected RollerRolling(Outline loop, double radius, bool within)
    {
        this.within = within;
        var list = new List<Track>();
        var n = loop.Segments.Length;
        for (var i = 0; i < n; i++)
        {
            var s = loop.Segments[i];
            if (Track.Beside(s, radius) is { } track)
            {
                list.Add(track);
            }

            if (s.TangentAt(1).Cross(loop.Segments[(i + 1) % n].TangentAt(0)) > Slack)
            {
                list.Add(Track.Round(s.End, radius));
            }
        }

        tracks = [.. list];
        fan = new(tracks);
    }

    /// <summary>The tracks that lie in the direction of <paramref name="centre"/> from the shaft, or near it.</summary>
    protected ReadOnlySpan<Track> Near(Point2 centre) => fan.Towards(centre);

    /// <summary>What no touch has yet bettered.</summary>
    protected double None => within ? double.PositiveInfinity : double.NegativeInfinity;

    /// <summary>Of two places (rad or mm outward) the one where the roller rests: the outer on a plate, the inner of those not too early in a hole.</summary>
    /// <param name="best">The best so far.</param>
    /// <param name="other">Another, infinite where there is no touch.</param>
    /// <param name="nominal">Where the roller should be.</param>
    /// <param name="mm">Travel for one unit of these, mm.</param>
    protected double Better(double best, double other, double nominal, double mm) => !within ? Math.Max(best, other)
        : (nominal - other) * mm > Early ? best
        : Math.Min(best, other);
}

/// <summary>A roller on a lever.</summary>
internal sealed class ArmRollerRolling(Outline loop, ArmRoller follower, bool within = false) : RollerRolling(loop, follower.Radius, within)
{
    public override double Rest(double t, double near)
    {
        var pivot = follower.Pivot.Turned(-t);
        var home = (Point2.Origin - pivot).Angle;
        var nominal = follower.Zero - t + follower.Sense * near;
        var side = Math.Sign(Math.IEEERemainder(nominal - home, 2 * Math.PI));
        var wanted = side * Math.IEEERemainder(nominal - home, 2 * Math.PI);
        var best = None;
        foreach (var track in Near(pivot + follower.Arm * Vec2.FromAngle(nominal)))
        {
            if (track.MeetCircle(pivot, follower.Arm, out var a, out var b) == 0)
            {
                continue;
            }

            best = Better(best, Opening(track, a, pivot, home, side), wanted, follower.Arm);
            best = Better(best, Opening(track, b, pivot, home, side), wanted, follower.Arm);
        }

        return double.IsFinite(best) ? near + follower.Sense * Math.IEEERemainder(home + side * best - nominal, 2 * Math.PI) : double.NaN;
    }

    // How far the arm stands open from the line to the shaft, on its own side; minus infinity where the point is not on the track.
    private static double Opening(in Track track, Point2 p, Point2 pivot, double home, int side)
    {
        var opening = side * Math.IEEERemainder((p - pivot).Angle - home, 2 * Math.PI);
        return opening > 0 && track.Holds(p) ? opening : double.NegativeInfinity;
    }
}

/// <summary>A roller on a stem.</summary>
internal sealed class StemRollerRolling(Outline loop, StemRoller follower, bool within = false) : RollerRolling(loop, follower.Radius, within)
{
    public override double Rest(double t, double near)
    {
        var zero = follower.Zero.Turned(-t);
        var nominal = zero + near * follower.Travel.Turned(-t);
        var outward = Math.Sign((nominal - Point2.Origin).Dot(follower.Travel.Turned(-t)));
        var u = outward * follower.Travel.Turned(-t);
        var wanted = (nominal - zero).Dot(u);
        var best = None;
        foreach (var track in Near(nominal))
        {
            var n = track.MeetLine(zero, u, out var a, out var b);
            if (n > 0 && track.Holds(a))
            {
                best = Better(best, (a - zero).Dot(u), wanted, 1);
            }

            if (n > 1 && track.Holds(b))
            {
                best = Better(best, (b - zero).Dot(u), wanted, 1);
            }
        }

        return double.IsFinite(best) ? outward * best : double.NaN;
    }
}
