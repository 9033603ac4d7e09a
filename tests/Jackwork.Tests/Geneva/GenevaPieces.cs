using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Geneva;

/// <summary>Small machines with a Geneva wheel.</summary>
internal static class GenevaPieces
{
    /// <summary>A wheel to the right of a shaft that the crank turns, both along z.</summary>
    public static string Text(int slots, bool inside, double distance, string towards = "[1, 2, 0]", string more = "", double rpm = 30, Vec3? along = null) =>
        Head("shaft", rpm) + Pivot("shaft", default, new(0, 0, 1)) + Pivot("wheel", new(distance, 0, 0), along ?? new(0, 0, 1), Drive(slots, inside, towards, more));

    /// <summary>The key of a wheel on the shaft.</summary>
    public static string Drive(int slots, bool inside, string towards, string more = "", string from = "shaft") =>
        $"geneva: {{from: {from}, slots: {slots}, inside: {(inside ? "true" : "false")}, pin-towards: {towards}{more}}}";

    /// <summary>The machine's drive of a member.</summary>
    public static GenevaDrive Of(Machine machine, string wheel = "wheel") => (GenevaDrive)machine.Drives[machine.IndexOf(wheel)];

    /// <summary>Everything worked out, but parts only when asked for.</summary>
    public static Proof Proof(string text) => Jackwork.Checks.Proof.OfMotion(Jackwork.Tests.Motion.Machines.Of(text));
}
