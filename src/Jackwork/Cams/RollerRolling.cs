using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>A roller of radius R resting on lines, arcs and corners: the curves that its centre may lie on.</summary>
internal abstract class RollerRolling : Rolling
{
    private readonly Track[] tracks;
    private readonly TrackFan fan;

    protected RollerRolling(Outline loop, double radius)
    {
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
}

/// <summary>A roller on a lever.</summary>
internal sealed class ArmRollerRolling(Outline loop, ArmRoller follower) : RollerRolling(loop, follower.Radius)
{
    public override double Rest(double t, double near)
    {
        var pivot = follower.Pivot.Turned(-t);
        var home = (Point2.Origin - pivot).Angle;
        var nominal = follower.Zero - t + follower.Sense * near;
        var side = Math.Sign(Math.IEEERemainder(nominal - home, 2 * Math.PI));
        var best = double.NegativeInfinity;
        foreach (var track in Near(pivot + follower.Arm * Vec2.FromAngle(nominal)))
        {
            if (track.MeetCircle(pivot, follower.Arm, out var a, out var b) == 0)
            {
                continue;
            }

            best = Math.Max(best, Math.Max(Opening(track, a, pivot, home, side), Opening(track, b, pivot, home, side)));
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
internal sealed class StemRollerRolling(Outline loop, StemRoller follower) : RollerRolling(loop, follower.Radius)
{
    public override double Rest(double t, double near)
    {
        var zero = follower.Zero.Turned(-t);
        var nominal = zero + near * follower.Travel.Turned(-t);
        var outward = Math.Sign((nominal - Point2.Origin).Dot(follower.Travel.Turned(-t)));
        var u = outward * follower.Travel.Turned(-t);
        var best = double.NegativeInfinity;
        foreach (var track in Near(nominal))
        {
            var n = track.MeetLine(zero, u, out var a, out var b);
            if (n > 0 && track.Holds(a))
            {
                best = Math.Max(best, (a - zero).Dot(u));
            }

            if (n > 1 && track.Holds(b))
            {
                best = Math.Max(best, (b - zero).Dot(u));
            }
        }

        return double.IsFinite(best) ? outward * best : double.NaN;
    }
}
