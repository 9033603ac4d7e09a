using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>A path that is put together from other paths, with its frames kept.</summary>
internal abstract class FramePath : BodyPath
{
    private Frame[] frames = [];

    public sealed override Frame At(double place) => Kept(place) is >= 0 and var i ? frames[i] : Between(place);

    /// <summary>The point from which its reach is measured, in the body's coordinates.</summary>
    protected abstract Point3 StillPoint { get; }

    /// <summary>The frame at any place, steps.</summary>
    protected abstract Frame Between(double place);

    /// <summary>Works out the frames at all steps and the bows.</summary>
    protected void Keep(int steps)
    {
        frames = new Frame[Places(steps)];
        for (var i = 0; i < frames.Length - 1; i++)
        {
            frames[i] = Between(i * Grain);
        }

        frames[^1] = frames[0];
        Measure(frames.Length);
    }

    public sealed override double Reach(in Ball ball) => ball.Centre.DistanceTo(StillPoint) + ball.Radius;

    protected sealed override (double Shift, double Turn) Departure(int from, int middle, int to, double u)
    {
        ref readonly var a = ref frames[from];
        ref readonly var m = ref frames[middle];
        ref readonly var b = ref frames[to];
        var x = m.X - a.X - u * (b.X - a.X);
        var y = m.Y - a.Y - u * (b.Y - a.Y);
        var z = m.Z - a.Z - u * (b.Z - a.Z);
        var (p, q, r) = (a.Apply(StillPoint), m.Apply(StillPoint), b.Apply(StillPoint));
        return ((q - p - u * (r - p)).Length, Math.Sqrt(x.Dot(x) + y.Dot(y) + z.Dot(z)));
    }
}
