using Jackwork.Motion;

namespace Jackwork.Bench.Chart;

/// <summary>An acted member over one turn of its shaft: position in its unit, speed and acceleration a second at the design's crank speed.</summary>
/// <param name="Position">Degrees of the shaft and position.</param>
/// <param name="Speed">Degrees of the shaft and speed.</param>
/// <param name="Acceleration">Degrees of the shaft and acceleration.</param>
internal sealed record ShaftCurve(IReadOnlyList<(double X, double Y)> Position, IReadOnlyList<(double X, double Y)> Speed, IReadOnlyList<(double X, double Y)> Acceleration)
{
    /// <summary>The curves, with both sides of every jump.</summary>
    public static ShaftCurve Of(Machine machine, Acted acted)
    {
        var unit = machine.Members[acted.Member].UnitSize;
        var speed = machine.CrankSpeed * Math.Abs(machine.Turns[acted.Shaft]!.Value.Value);
        var position = new List<(double, double)>();
        var velocity = new List<(double, double)>();
        var acceleration = new List<(double, double)>();
        void Add(double deg, Timing.Side side)
        {
            var q = acted.Chart.Evaluate(Jet.Variable(deg * Math.PI / 180), side);
            position.Add((deg, q.Value / unit));
            velocity.Add((deg, q.First * speed / unit));
            acceleration.Add((deg, q.Second * speed * speed / unit));
        }

        var angles = Enumerable.Range(0, 361).Select(d => (double)d).Concat(acted.Chart.Knots.Select(k => k.Angle * 180 / Math.PI)).Distinct().Order();
        foreach (var deg in angles)
        {
            Add(deg, Timing.Side.Before);
            Add(deg, Timing.Side.After);
        }

        return new(position, velocity, acceleration);
    }
}
