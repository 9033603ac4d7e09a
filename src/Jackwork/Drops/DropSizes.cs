using Jackwork.Cams;

namespace Jackwork.Drops;

/// <summary>What a fall asks of crank, cam and spring: each worked out from the other two.</summary>
/// <remarks>
/// The faster the crank, the larger the angle that it turns during the fall; the stronger a spring, the smaller. So each is found by
/// halving. Below the angle at which the tip is past the roller no speed and no spring brings the follower down.
/// </remarks>
public sealed class DropSizes
{
    /// <summary>Fastest crank looked at, rpm: far beyond a hand.</summary>
    private const double Fastest = 1e4;

    /// <summary>Strongest force looked at, N: far beyond a small spring.</summary>
    private const double Strongest = 1e3;

    /// <summary>Halvings that are made at the most: what is not found by then is nothing.</summary>
    private const int Halvings = 48;

    /// <summary>Share of its size to which speed or force is found.</summary>
    private const double Near = 1e-5;

    private readonly DropFace face;
    private readonly FallTable table;
    private readonly double speed;

    internal DropSizes(DropFace face, FallTable table, double speed) => (this.face, this.table, this.speed) = (face, table, speed);

    /// <summary>Crank angle that the fall takes at a speed of the crank, rad; infinite where it never lands.</summary>
    public double Angle(double rpm) => Angle(rpm * 2 * Math.PI / 60, 0);

    /// <summary>Fastest crank at which the follower is down within a crank angle, rpm; 0 where none is slow enough, infinite where none looked at is too fast.</summary>
    /// <param name="angle">Crank angle, rad.</param>
    public double FastestRpm(double angle) => Angle(Fastest) <= angle ? double.PositiveInfinity : Edge(0, Fastest, rpm => Angle(rpm) <= angle);

    /// <summary>Least further force inward at the follower's point, such as that of a spring, with which it is down within a crank angle at the design's speed, N; null where none is enough.</summary>
    /// <param name="angle">Crank angle, rad.</param>
    public double? ForceWithin(double angle) =>
        Angle(speed, 0) <= angle ? 0
        : Angle(speed, Strongest) > angle ? null
        : Edge(Strongest, 0, force => Angle(speed, force) <= angle);

    // The last value from where something holds on the way to where it doesn't; the beginning itself where it holds nowhere that was tried.
    private static double Edge(double good, double bad, Func<double, bool> holds)
    {
        for (var i = 0; i < Halvings && Math.Abs(bad - good) > Near * Math.Max(good, bad); i++)
        {
            var middle = (good + bad) / 2;
            (good, bad) = holds(middle) ? (middle, bad) : (good, middle);
        }

        return good;
    }

    private double Angle(double speed, double extra) => TrueFall.Of(face, table, speed, extra) is { Outcome: FallOutcome.Lands } fall ? fall.CrankAngle : double.PositiveInfinity;
}
