using System.Text;
using Jackwork.Geometry;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>
/// A random machine that closes all round: a crank and a chain of rods and slots to pivots and slides, some of them carried
/// by members before them. Each pin is pushed nearly along the way it can go, and strokes shorten down the chain.
/// </summary>
internal sealed class RandomMachine
{
    private readonly Random random;
    private readonly List<(string Name, bool Slides, Point3 Through, Vec3 Along, string? On, string Drive, Point3[] Pins, Vec3[] Slot)> members = [];

    public RandomMachine(int seed, int length = 5)
    {
        random = new(seed);
        var axis = Direction();
        Add("crank", false, Near(default, 100), axis, null, "", [], []);
        for (var k = 1; k <= length; k++)
        {
            Next(k);
        }
    }

    /// <summary>The design, every place taken through <paramref name="point"/>, every direction through <paramref name="vector"/> and every pivot's axis but the crank's through <paramref name="axis"/>.</summary>
    public string Text(Func<Point3, Point3>? point = null, Func<Vec3, Vec3>? vector = null, Func<Vec3, Vec3>? axis = null, Func<Vec3, Vec3>? crank = null)
    {
        point ??= p => p;
        vector ??= v => v;
        axis ??= vector;
        crank ??= axis;
        var text = new StringBuilder(Head());
        foreach (var m in members)
        {
            var pins = m.Pins.Select(point).ToArray();
            var slot = m.Slot.Select(vector).ToArray();
            var drive = m.Drive.Length == 0 ? "" : slot.Length == 0 ? Rod(m.Drive, pins[0], pins[1]) : Slot(m.Drive, pins[0], slot[0], slot[1]);
            text.Append(m.Slides ? Slide(m.Name, vector(m.Along), drive, m.On) : Pivot(m.Name, point(m.Through), (m.Name == "crank" ? crank : axis)(m.Along), drive, m.On));
        }

        return text.ToString();
    }

    private void Next(int k)
    {
        var driver = members[random.Next(Math.Max(0, members.Count - 2), members.Count)];
        var push = Direction();
        var pin = driver.Slides
            ? Near(driver.Through, 30)
            : driver.Through + 10 * driver.Along.Cross(Direction()).Unit() + (20 * random.NextDouble()) * driver.Along;
        if (driver.Slides)
        {
            push = driver.Along;
        }
        else if (driver.Name != "crank")
        {
            push = driver.Along.Cross(pin - driver.Through).Unit();
        }

        var a = push.Cross(Direction()).Unit();
        var carriers = members.Where(m => m.Name != "crank" && m.Name != driver.Name).Select(m => m.Name).ToList();
        var on = carriers.Count > 0 && random.Next(2) == 0 ? carriers[random.Next(carriers.Count)] : null;
        var name = $"m{k}";
        var arm = (30 + 20 * random.NextDouble()) * push.Cross(a);
        switch (random.Next(4))
        {
            case 0:
                var q = pin + (80 + 40 * random.NextDouble()) * Askew(push);
                Add(name, false, q + (-1) * arm, a, on, driver.Name, [pin, q], []);
                break;
            case 1:
                Add(name, true, pin, Askew(push), on, driver.Name, [pin, pin + (80 + 40 * random.NextDouble()) * Askew(push)], []);
                break;
            case 2:
                Add(name, false, pin + arm, a, on, driver.Name, [pin], [Askew(arm.Unit()), a]);
                break;
            default:
                Add(name, true, pin, push, on, driver.Name, [pin], [Askew(arm.Unit()), a]);
                break;
        }
    }

    private void Add(string name, bool slides, Point3 through, Vec3 along, string? on, string drive, Point3[] pins, Vec3[] slot) =>
        members.Add((name, slides, through, along, on, drive, pins, slot));

    private Vec3 Direction()
    {
        while (true)
        {
            var v = new Vec3(2 * random.NextDouble() - 1, 2 * random.NextDouble() - 1, 2 * random.NextDouble() - 1);
            if (v.Length is > 0.1 and < 1)
            {
                return v.Unit();
            }
        }
    }

    private Vec3 Askew(Vec3 v) => (v + 0.2 * Direction()).Unit();

    private Point3 Near(Point3 p, double within) => p + within * random.NextDouble() * Direction();
}
