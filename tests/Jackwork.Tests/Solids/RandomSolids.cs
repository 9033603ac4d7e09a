using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>Random sizes, placements and solids, from a seed.</summary>
internal sealed class RandomSolids(int seed)
{
    private readonly Random random = new(seed);

    public double Between(double low, double high) => low + (high - low) * random.NextDouble();

    public int Below(int n) => random.Next(n);

    /// <summary>From 0.1 to 1000 mm, as many between 0.1 and 1 as between 100 and 1000.</summary>
    public double Size() => Math.Pow(10, Between(-1, 3));

    public Vec3 Direction()
    {
        while (true)
        {
            var v = new Vec3(Between(-1, 1), Between(-1, 1), Between(-1, 1));
            if (v.Length is > 0.1 and < 1)
            {
                return v.Unit();
            }
        }
    }

    public Vec3 Within(double reach) => new(Between(-reach, reach), Between(-reach, reach), Between(-reach, reach));

    public Point3 Point(double reach) => default(Point3) + Within(reach);

    /// <summary>Any placement; one in four keeps the axes' directions, so that faces and edges run parallel.</summary>
    public Frame Placement(double reach)
    {
        var origin = Point(reach);
        if (random.Next(4) == 0)
        {
            var quarter = Frame.Rotation(default, new(0, 0, 1), random.Next(4) * Math.PI / 2);
            return quarter with { Origin = origin };
        }

        return Frame.Rotation(default, Direction(), Between(-Math.PI, Math.PI)) with { Origin = origin };
    }
}
