using Jackwork.Guides;
using Jackwork.Motion;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Guides;

/// <summary>Small machines with a guided member.</summary>
internal static class GuidePieces
{
    /// <summary>A crank whose rod leans towards a guide along y through [40, 60, 14]: up, then aside.</summary>
    /// <param name="track">The legs.</param>
    /// <param name="more">Further keys of the guide.</param>
    /// <param name="radius">Radius of the crank, mm.</param>
    /// <param name="body">The guided member's body, or empty.</param>
    public static string Text(string track = "[{lift: 14}, {swing: 90, rounding: 2}]", string more = ", drawn: 14, sleeve: [-29, 45]", double radius = 7, string body = "", double rpm = 30) =>
        Head("crank", rpm) + Pivot("crank", new(0, 0, 0), new(0, 0, 1))
        + $"  arm:\n    guide: {{through: [40, 72, -12], along: y, outside: 26, track: {track}{more}}}\n{(body.Length > 0 ? $"    body: {body}\n" : "")}"
        + $"    {Rod("crank", new(-0.66 * radius, 0.75 * radius, 0), new(36, 39, 2))}\n";

    /// <summary>The guide of the machine's arm.</summary>
    public static GuideWork Work(string text) => new(Of(text), 1);
}
