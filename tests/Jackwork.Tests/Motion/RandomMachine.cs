using System.Text;
using Jackwork.Geometry;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>
/// A random machine that closes all round: a crank and a chain of rods and slots to pivots and slides, some of them carried
/// by members before them. Each pin is pushed nearly along the way it can go, and strokes shorten down the chain. A wide one has
/// guides, eccentrics, universal joints and racks too.
/// </summary>
internal sealed class RandomMachine
{
    private readonly Random random;
    private readonly List<(string Name, bool Slides, Point3 Through, Vec3 Along, string? On, string Drive, Point3[] Pins, Vec3[] Slot)> members = [];

    // What goes round, what runs in a guide, and the lines of members that are more than pivot or slide with rod or slot.
    private readonly HashSet<string> shafts = ["crank"], guides = [];
    private readonly Dictionary<string, string> lines = [];
    private readonly bool wide;

    public RandomMachine(int seed, int length = 5, bool wide = false)
    {
        random = new(seed);
        this.wide = wide;
        var axis = Direction();
        Add("crank", false, Near(default, 100), axis, null, "", [], []);
        for (var k = 1; k <= length; k++)
        {
            Next(k);
        }
    }

    /// <summary>The design; of one that is not wide every place taken through <paramref name="point"/>, every direction through <paramref name="vector"/> and every pivot's axis but the crank's through <paramref name="axis"/>.</summary>
    public string Text(Func<Point3, Point3>? point = null, Func<Vec3, Vec3>? vector = null, Func<Vec3, Vec3>? axis = null, Func<Vec3, Vec3>? crank = null)
    {
        point ??= p => p;
        vector ??= v => v;
        axis ??= vector;
        crank ??= axis;
        var text = new StringBuilder(Head());
        foreach (var m in members)
        {
            if (lines.TryGetValue(m.Name, out var line))
            {
                text.Append(line);
                continue;
            }

            var pins = m.Pins.Select(point).ToArray();
            var slot = m.Slot.Select(vector).ToArray();
            var drive = m.Drive.Length == 0 ? "" : slot.Length == 0 ? Rod(m.Drive, pins[0], pins[1]) : Slot(m.Drive, pins[0], slot[0], slot[1]);
            text.Append(m.Slides ? Slide(m.Name, vector(m.Along), drive, m.On) : Pivot(m.Name, point(m.Through), (m.Name == "crank" ? crank : axis)(m.Along), drive, m.On));
        }

        return text.ToString();
    }

    private void Next(int k)
    {
        var drivers = members.Where(m => !guides.Contains(m.Name)).ToList();
        var driver = drivers[random.Next(Math.Max(0, drivers.Count - 2), drivers.Count)];
        var push = Direction();
        var pin = driver.Slides
            ? Near(driver.Through, 30)
            : driver.Through + 10 * driver.Along.Cross(Direction()).Unit() + (20 * random.NextDouble()) * driver.Along;
        if (driver.Slides)
        {
            push = driver.Along;
        }
        else if (!shafts.Contains(driver.Name))
        {
            push = driver.Along.Cross(pin - driver.Through).Unit();
        }

        var a = push.Cross(Direction()).Unit();
        var carriers = members.Where(m => !shafts.Contains(m.Name) && m.Name != driver.Name).Select(m => m.Name).ToList();
        var on = carriers.Count > 0 && random.Next(2) == 0 ? carriers[random.Next(carriers.Count)] : null;
        var name = $"m{k}";
        var arm = (30 + 20 * random.NextDouble()) * push.Cross(a);
        switch (random.Next(wide ? 8 : 4))
        {
            case 4:
                Guide(name, driver.Name, pin, push, a, on);
                break;
            case 5:
                Eccentric(name);
                break;
            case 6:
                Universal(name);
                break;
            case 7 when !driver.Slides && !shafts.Contains(driver.Name):
                Rack(name, driver);
                break;
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

    // A helix, or a lift that goes over into a swing, drawn in the middle and pushed by a rod about along it.
    private void Guide(string name, string driver, Point3 pin, Vec3 push, Vec3 across, string? on)
    {
        var radius = 8 + 8 * random.NextDouble();
        var lead = 0.4 + 0.7 * random.NextDouble();
        var track = random.Next(2) == 0
            ? $"[{{lift: {Num(80 * Math.Sin(lead))}, swing: {Num(Deg(80 * Math.Cos(lead) / radius))}}}]"
            : $"[{{lift: 40}}, {{lift: {Num(40 * Math.Sin(lead))}, swing: {Num(Deg(40 * Math.Cos(lead) / radius))}, rounding: 6}}]";

        // The arm stands across both axis and push, so that what turns it goes along the push too.
        var (axis, q) = ((push + 0.5 * across).Unit(), pin + (80 + 40 * random.NextDouble()) * Askew(push));
        var arm = 25 * axis.Cross(push).Unit();
        Add(name, false, q + (-1) * arm, axis, on, driver, [pin, q], []);
        guides.Add(name);
        lines[name] = $"  {name}:\n{(on is null ? "" : $"    on: {on}\n")}    guide: {{through: {List(q + (-1) * arm)}, along: {List(axis)}, outside: {Num(2 * radius)}, track: {track}, drawn: 40}}\n    {Rod(driver, pin, q)}\n";
    }

    // A lever with a roller on a disc on the crank.
    private void Eccentric(string name)
    {
        var crank = members[0];
        var (u, foot) = (crank.Along.AnyPerpendicular(), crank.Through + (20 + 20 * random.NextDouble()) * crank.Along);
        var v = crank.Along.Cross(u);
        var (centre, at) = (foot + (4 + 4 * random.NextDouble()) * u, foot + (30 + 10 * random.NextDouble()) * v);
        var through = at + (30 + 20 * random.NextDouble()) * u;
        Add(name, false, through, crank.Along, null, "crank", [], []);
        lines[name] = Pivot(name, through, crank.Along, $"eccentric: {{on: crank, centre: {List(centre)}, at: {List(at)}, roller: 8}}");
    }

    // A shaft at some 25 degrees to the crank's.
    private void Universal(string name)
    {
        var crank = members[0];
        var through = crank.Through + (60 + 20 * random.NextDouble()) * crank.Along;
        var along = (crank.Along + (0.3 + 0.3 * random.NextDouble()) * crank.Along.AnyPerpendicular()).Unit();
        Add(name, false, through, along, null, "crank", [], []);
        shafts.Add(name);
        lines[name] = Pivot(name, through, along, "universal: {from: crank}");
    }

    private void Rack(string name, (string Name, bool Slides, Point3 Through, Vec3 Along, string? On, string Drive, Point3[] Pins, Vec3[] Slot) pinion)
    {
        var towards = pinion.Along.Cross(Direction()).Unit();
        var (along, sense) = (pinion.Along.Cross(towards), random.Next(2) == 0 ? 1 : -1);
        Add(name, true, pinion.Through + 20 * towards, sense * along, pinion.On, pinion.Name, [], []);
        lines[name] = Slide(name, sense * along, $"rack: {{with: {pinion.Name}, teeth: 20, module: 2, towards: {List(towards)}}}", pinion.On);
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
