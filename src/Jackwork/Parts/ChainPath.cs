using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a rod, or of a member with more than one joint between it and what it is seen from.</summary>
internal sealed class ChainPath : BodyPath
{
    private readonly BodyFrames bodies;
    private readonly Body body;
    private readonly int carrier;
    private readonly Frame[] frames;

    public ChainPath(BodyFrames bodies, Body body, int carrier)
    {
        (this.bodies, this.body, this.carrier) = (bodies, body, carrier);
        StillPoint = body.IsRod ? default : bodies.JointOf(body.Member).Through;
        frames = new Frame[bodies.Steps + 1];
        for (var i = 0; i < bodies.Steps; i++)
        {
            frames[i] = bodies.At(body, i, carrier);
        }

        frames[^1] = frames[0];
        Measure(bodies.Steps);
    }

    public override Point3 StillPoint { get; }

    public override Frame At(double place)
    {
        var i = (int)place;
        return i == place ? frames[i] : bodies.At(body, place, carrier);
    }

    protected override (double Shift, double Turn) Departure(int from, int middle, int to, double u)
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
