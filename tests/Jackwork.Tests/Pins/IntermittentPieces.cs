using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Pins;

/// <summary>Small machines with an intermittent pin wheel.</summary>
internal static class IntermittentPieces
{
    /// <summary>A wheel above a shaft along z that the crank turns.</summary>
    public static string Parallel(double distance = 54, string more = "pins: 10", Vec3? along = null, double rpm = 30) =>
        Head("shaft", rpm) + Pivot("shaft", default, new(0, 0, 1)) + Pivot("wheel", new(0, distance, 0), along ?? new(0, 0, 1), $"intermittent: {{from: shaft, {more}}}");

    /// <summary>A wheel on an upright axis over a shaft along x that the crank turns.</summary>
    public static string Crossed(string more = "pins: 8, circle: 15, at: [25, 70, 0]", Vec3? along = null, double aside = 0) =>
        Head("shaft") + Pivot("shaft", new(0, 40, 0), new(1, 0, 0)) + Pivot("wheel", new(40, 100, aside), along ?? new(0, 1, 0), $"intermittent: {{from: shaft, {more}}}");

    /// <summary>The machine's drive of the wheel.</summary>
    public static IntermittentDrive Of(Machine machine, string wheel = "wheel") => (IntermittentDrive)machine.Drives[machine.IndexOf(wheel)];
}
