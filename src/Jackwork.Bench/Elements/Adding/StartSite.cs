using Jackwork.Bench.Sessions;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.Adding;

/// <summary>Where a new member is begun: beside which driver, in which directions.</summary>
internal sealed class StartSite
{
    /// <summary>The site beside a driver.</summary>
    /// <param name="work">The design as worked out.</param>
    /// <param name="driver">Name of the driving member.</param>
    public StartSite(Work work, string driver)
    {
        (Work, Name, Driver) = (work, driver, work.Machine.IndexOf(driver));
        Room = new(work.Proof.Assembly.Parts);
        Joint = work.Machine.Members[Driver].Joint;
        Along = Joint.Along;
        Up = Math.Abs(Along.Y) < 0.9 ? new Vec3(0, 1, 0).Across(Along).Unit() : new(0, 0, 1);
        Side = Along.Cross(Up);
    }

    /// <summary>The design as worked out.</summary>
    public Work Work { get; }

    /// <summary>Where there is room.</summary>
    public Room Room { get; }

    /// <summary>Index of the driver.</summary>
    public int Driver { get; }

    /// <summary>Name of the driver.</summary>
    public string Name { get; }

    /// <summary>Name of the new member.</summary>
    public required string Added { get; init; }

    /// <summary>The driver's joint.</summary>
    public Joint Joint { get; }

    /// <summary>The joint's direction.</summary>
    public Vec3 Along { get; }

    /// <summary>Up, square to <see cref="Along"/>.</summary>
    public Vec3 Up { get; }

    /// <summary>Square to both.</summary>
    public Vec3 Side { get; }

    /// <summary>Whether wheels tie the driver to the crank.</summary>
    public bool IsShaft => Work.Machine.Turns[Driver] is not null;

    /// <summary>Whether it turns evenly with the crank, and not a step at a time.</summary>
    public bool IsEven => ShaftTurn.IsEven(Work.Machine.Drives, Driver);

    /// <summary>Least and greatest coordinate of the driver over the performance, rad or mm.</summary>
    public (double Least, double Most) Reach => Work.Proof.Motion.Range(Driver);

    /// <summary>What puts a member on the driver's carrier, as the beginning of its value; empty for the case.</summary>
    public string On => Work.Machine.Members[Driver].Carrier is var c && c == Member.Case ? "" : $"on: {Work.Machine.NameOf(c)}, ";

    /// <summary>Points all round the driver's axis at a distance, mm; the four plain directions first.</summary>
    public IEnumerable<Point3> Around(double distance) =>
        Enumerable.Range(0, 24).OrderBy(i => i % 6 == 0 ? 0 : 1).Select(i => i * Math.PI / 12).Select(a => Joint.Through + distance * (Math.Cos(a) * Up + Math.Sin(a) * Side));

    /// <summary>A point in the format, exact enough that two wheels' axes stand as far apart as their teeth ask.</summary>
    public static string P(Point3 p) => $"[{N(p.X)}, {N(p.Y)}, {N(p.Z)}]";

    /// <summary>The driver's own point of its axis in the format, to the last digit that counts: for members about one axis.</summary>
    public string OwnAxis => $"[{DesignText.Number(Joint.Through.X, 9)}, {DesignText.Number(Joint.Through.Y, 9)}, {DesignText.Number(Joint.Through.Z, 9)}]";

    /// <summary>A direction in the format.</summary>
    public static string V(Vec3 v) => (Math.Round(v.X, 9), Math.Round(v.Y, 9), Math.Round(v.Z, 9)) switch
    {
        (1, 0, 0) => "x",
        (-1, 0, 0) => "-x",
        (0, 1, 0) => "y",
        (0, -1, 0) => "-y",
        (0, 0, 1) => "z",
        (0, 0, -1) => "-z",
        _ => $"[{DesignText.Number(v.X, 6)}, {DesignText.Number(v.Y, 6)}, {DesignText.Number(v.Z, 6)}]",
    };

    private static string N(double v) => DesignText.Number(v, 6);
}
