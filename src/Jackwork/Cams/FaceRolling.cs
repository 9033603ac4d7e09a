using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>A flat face resting on a loop: the loop's extent in a direction.</summary>
internal abstract class FaceRolling(Outline loop) : Rolling
{
    protected Outline Loop { get; } = loop;

    /// <summary>The greatest extent of the loop along unit <paramref name="m"/>, mm, and the centre and radius of the arc (or the corner, radius 0) that gives it.</summary>
    protected (double Extent, Point2 Centre, double Radius) Extent(Vec2 m)
    {
        var best = (Extent: double.NegativeInfinity, Centre: default(Point2), Radius: 0.0);
        foreach (var s in Loop.Segments)
        {
            if (s.Bulge > 0 && s.Spans(m))
            {
                var c = s.Centre;
                if (c.FromOrigin.Dot(m) + s.Radius > best.Extent)
                {
                    best = (c.FromOrigin.Dot(m) + s.Radius, c, s.Radius);
                }
            }
            else if (s.Start.FromOrigin.Dot(m) > best.Extent)
            {
                best = (s.Start.FromOrigin.Dot(m), s.Start, 0);
            }
        }

        return best;
    }
}

/// <summary>A flat face on a stem.</summary>
internal sealed class StemFaceRolling(Outline loop, StemFace follower) : FaceRolling(loop)
{
    public override double Rest(double t, double near) => (Extent(Vec2.FromAngle(follower.Normal - t)).Extent - follower.Zero) / follower.Lift;
}

/// <summary>A flat face on a lever.</summary>
internal sealed class ArmFaceRolling(Outline loop, ArmFace follower) : FaceRolling(loop)
{
    /// <summary>Change of angle at which the search for the touching arc has settled, rad.</summary>
    private const double Settled = 1e-12;

    public override double Rest(double t, double near)
    {
        // m(w) . P + f = m(w) . C + r with m at angle w: m . (C - P) = f - r, so w = angle(C - P) +- acos((f - r)/|C - P|).
        // The arc (C, r) that the face touches depends on w; start near and repeat until it no longer changes.
        var pivot = follower.Pivot.Turned(-t);
        var w = follower.Zero - t + follower.Sense * near;
        for (var i = 0; i < 50; i++)
        {
            var (_, c, r) = Extent(Vec2.FromAngle(w));
            var d = c - pivot;
            var cos = (follower.Distance - r) / d.Length;
            if (Math.Abs(cos) > 1)
            {
                return double.NaN;
            }

            var side = Math.Sign(Math.IEEERemainder(w - d.Angle, 2 * Math.PI));
            var next = w + Math.IEEERemainder(d.Angle + side * Math.Acos(cos) - w, 2 * Math.PI);
            var done = Math.Abs(next - w) < Settled;
            w = next;
            if (done)
            {
                break;
            }
        }

        return near + follower.Sense * Math.IEEERemainder(w - (follower.Zero - t + follower.Sense * near), 2 * Math.PI);
    }
}
