using Jackwork.Design;

namespace Jackwork.Checks;

/// <summary>The limits that the checks hold a design against: its own where given, else the usual ones.</summary>
/// <remarks>The usual ones are common practice, no source, except where a check's own file names one.</remarks>
public sealed class Limits(LimitsSpec? given)
{
    /// <summary>Share of a limit's own size within which a value that still holds is pointed out as close.</summary>
    public const double Close = 0.1;

    /// <summary>Smallest transmission angle, rad.</summary>
    public double TransmissionAngle { get; } = Rad(given?.TransmissionAngle ?? 30);

    /// <summary>Smallest convex radius of a cam, mm.</summary>
    public double ConvexRadius { get; } = given?.ConvexRadius ?? 1;

    /// <summary>Least wood between hub and outline, mm.</summary>
    public double Rim { get; } = given?.Rim ?? 2;

    /// <summary>Smallest contact ratio.</summary>
    public double ContactRatio { get; } = given?.ContactRatio ?? 1.1;

    /// <summary>Largest centre distance error, mm.</summary>
    public double CentreDistance { get; } = given?.CentreDistance ?? 0.3;

    /// <summary>Largest follower acceleration, mm/s^2.</summary>
    public double Acceleration { get; } = 1000 * (given?.Acceleration ?? 5);

    /// <summary>Largest speed of a follower that lands, mm/s.</summary>
    public double Landing { get; } = 1000 * (given?.Landing ?? 0.6);

    /// <summary>Least clearance between parts, mm.</summary>
    public double Clearance { get; } = given?.Clearance ?? 0.5;

    /// <summary>Largest play of a positive cam's follower where it touches, mm.</summary>
    public double ReturnPlay { get; } = given?.ReturnPlay ?? 0.3;

    /// <summary>Largest play along an axle or shaft, mm.</summary>
    public double Play { get; } = given?.Play ?? 1;

    /// <summary>Largest pressure angle, rad, for a follower that turns or one that slides.</summary>
    public double PressureAngle(bool turns) => Rad(turns ? given?.PressureAngleTurning ?? 45 : given?.PressureAngleSliding ?? 30);

    /// <summary>Largest error of an acted member as cut, rad for one that turns, mm for one that slides.</summary>
    public double Error(bool turns) => turns ? Rad(given?.ErrorTurning ?? 0.1) : given?.ErrorSliding ?? 0.05;

    private static double Rad(double deg) => deg * Math.PI / 180;
}
