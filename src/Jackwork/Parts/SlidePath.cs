using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a member that slides on what it is seen from.</summary>
internal sealed class SlidePath : BodyPath
{
    private readonly BodyFrames bodies;
    private readonly int member;
    private readonly Vec3 along;
    private readonly double[] travel;

    public SlidePath(BodyFrames bodies, int member, Vec3 along)
    {
        (this.bodies, this.member, this.along) = (bodies, member, along);
        travel = new double[Places(bodies.Steps)];
        for (var i = 0; i < travel.Length - 1; i++)
        {
            travel[i] = bodies.Coordinate(member, i * Grain);
        }

        travel[^1] = travel[0];
        Measure(travel.Length);
    }

    public override double Reach(in Ball ball) => 0;

    public override Frame At(double place) =>
        Frame.Translation((Kept(place) is >= 0 and var i ? travel[i] : bodies.Coordinate(member, place)) * along);

    protected override (double Shift, double Turn) Departure(int from, int middle, int to, double u) =>
        (Math.Abs(travel[middle] - travel[from] - u * (travel[to] - travel[from])), 0);
}
