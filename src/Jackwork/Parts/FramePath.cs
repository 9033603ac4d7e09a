using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>A path that is put together from other paths, with its frames kept.</summary>
internal abstract class FramePath : BodyPath
{
    // Without the third axis, so that a performance's frames are no large object to be collected.
    private (Vec3 X, Vec3 Y, Point3 Origin)[] frames = [];

    public sealed override Frame At(double place) => Kept(place) is >= 0 and var i ? new(frames[i].X, frames[i].Y, frames[i].X.Cross(frames[i].Y), frames[i].Origin) : Between(place);

    /// <summary>The point from which its reach is measured, in the body's coordinates.</summary>
    protected abstract Point3 StillPoint { get; }

    /// <summary>The frame at any place, steps.</summary>
    protected abstract Frame Between(double place);

    /// <summary>Works out the frames at all steps and the bows.</summary>
    protected void Keep(int steps)
    {
        frames = new (Vec3, Vec3, Point3)[Places(steps)];
        for (var i = 0; i < frames.Length - 1; i++)
        {
            var f = Between(i * Grain);
            frames[i] = (f.X, f.Y, f.Origin);
        }

        frames[^1] = frames[0];
        Measure(frames.Length);
    }

    public sealed override double Reach(in Ball ball) => ball.Centre.DistanceTo(StillPoint) + ball.Radius;

    protected sealed override (double Shift, double Turn) Departure(int from, int middle, int to, double u)
    {
        var (a, m, b) = (At(from * Grain), At(middle * Grain), At(to * Grain));
        var x = m.X - a.X - u * (b.X - a.X);
        var y = m.Y - a.Y - u * (b.Y - a.Y);
        var z = m.Z - a.Z - u * (b.Z - a.Z);
        var (p, q, r) = (a.Apply(StillPoint), m.Apply(StillPoint), b.Apply(StillPoint));
        return ((q - p - u * (r - p)).Length, Math.Sqrt(x.Dot(x) + y.Dot(y) + z.Dot(z)));
    }
}
