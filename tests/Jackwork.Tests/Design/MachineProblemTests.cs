using Xunit;
using static Jackwork.Tests.Design.Marked;

namespace Jackwork.Tests.Design;

/// <summary>Every way in which sound keys make no machine has its own message, at the place of the member, drive, chart or rule.</summary>
[Trait("Proof", "closed form")]
public sealed class MachineProblemTests
{
    private const string Pivot = "pivot: {through: [0, 90, 0], along: x}";
    private const string Upright = "pivot: {through: [0, 90, 0], along: y}";
    private const string Slide = "slide: {along: y}";
    private const string WithHead = Start + LeverAndHead;

    public static TheoryData<string, string, string> Members => new()
    {
        { Head + "«members: {}\n", "there is no member", "the crank turns" },
        { "jackwork: 1\ntitle: Trial\ncrank: {turns: «shft, rpm: 30}\n" + Shaft.Replace("along: x}}", "along: x}, gear: {with: arm, teeth: [12, 12], module: 2}}", StringComparison.Ordinal) + "  arm: {" + Pivot + ", gear: {with: shaft, teeth: [12, 12], module: 2}}\n", "no member 'shft' for the crank", "Did you mean 'shaft'?" },
        { Start + "  «arm: {gear: {with: shaft, teeth: [12, 24], module: 2}}\n", "'arm' has no joint", "either 'pivot" },
        { Start + "  «arm: {" + Pivot + ", " + Slide + ", rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 9]]}}\n", "both a pivot and a slide", "either 'pivot" },
        { Start + "  arm: {on: «shfat, " + Pivot + ", rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 9]]}}\n", "no member 'shfat' for 'arm' to sit on", "Did you mean 'shaft'?" },
        { Start + "  a: {on: «b, " + Pivot + ", gear: {with: shaft, teeth: [9, 9], module: 2}}\n  b: {on: a, " + Pivot + ", gear: {with: shaft, teeth: [9, 9], module: 2}}\n", "carried by itself", "sit on the case" },
        { Start + "  arm: {on: «arm, " + Pivot + ", gear: {with: shaft, teeth: [9, 9], module: 2}}\n", "carried by itself", "sit on the case" },
        { Start + "  «arm: {" + Pivot + "}\n", "'arm' has no drive", "Give it one of gear, belt, rod, slot, geneva, " },
        { Start + "  «arm: {" + Pivot + ", belt: {with: shaft, teeth: [9, 9]}, rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 9]]}}\n", "'arm' has 2 drives: belt, rod", "exactly one" },
        { Head + "members:\n  «shaft: {" + Slide + "}\n", "not a pivot on the case", "sits on the case" },
        { Start + "  arm: {" + Pivot + ", belt: {with: «schaft, teeth: [9, 9]}}\n", "no member 'schaft' to drive 'arm'", "Did you mean 'shaft'?" },
        { Start + "  arm: {" + Pivot + ", belt: {with: «arm, teeth: [9, 9]}}\n", "'arm' drives itself", "does not depend" },
        { Start + "  arm: {" + Pivot + ", rod: {from: «hand, pins: [[0, 40, 9], [0, 90, 9]]}}\n  hand: {on: arm, pivot: {through: [0, 70, 0], along: x}, rod: {from: shaft, pins: [[0, 40, 9], [0, 60, 9]]}}\n", "'hand' drives 'arm', which carries it", "does not depend" },
        { Start + "  «a: {" + Pivot + ", rod: {from: b, pins: [[0, 60, 9], [0, 90, 9]]}}\n  b: {pivot: {through: [0, 60, 0], along: x}, rod: {from: a, pins: [[0, 90, 9], [0, 60, 9]]}}\n", "in a ring: a <- b <- a", "driven from the crank" },
    };

    public static TheoryData<string, string, string> Drives => new()
    {
        { Start + "  arm: {" + Slide + ", «gear: {with: shaft, teeth: [9, 9], module: 2}}\n", "'arm' slides", "Give it a pivot" },
        { Start + "  arm: {" + Upright + ", «gear: {with: shaft, teeth: [9, 9]}}\n", "not parallel", "sense: same" },
        { Start + "  arm: {" + Pivot + ", «gear: {with: shaft, teeth: [9, 9]}}\n", "need a module", "module: 2.5" },
        { Start + "  arm: {" + Pivot + ", gear: {with: shaft, teeth: [9, 9], module: 2, sense: «same}}\n", "sense follows from the wheels", "inside: true" },
        { Start + "  arm: {" + Pivot + ", gear: {with: shaft, «teeth: [4, 9], module: 2}}\n", "spur wheel of 4 teeth", "5 teeth or more" },
        { Start + "  arm: {" + Pivot + ", gear: {with: shaft, «teeth: [9, 9], module: 2, inside: true}}\n", "both have 9 teeth", "8 teeth more" },
        { Start + "  arm: {" + Upright + ", «belt: {with: shaft, teeth: [9, 9]}}\n", "not parallel", "same direction" },
        { Start + "  arm: {" + Pivot + ", «belt: {with: shaft}}\n", "exactly one of 'teeth' and 'diameters'", "teeth: [a, b]" },
        { Start + "  arm: {" + Pivot + ", belt: {with: shaft, teeth: [9, 9], crossed: «true}}\n", "can't be crossed", "smooth belt" },
        { Start + "  arm: {" + Pivot + ", belt: {with: shaft, «diameters: [30, 20.25]}}\n", "30 and 20.25 mm", "to a tenth" },
        { Start + "  arm: {on: shaft, " + Pivot + ", «belt: {with: shaft, teeth: [9, 9]}}\n", "sit on different carriers", "on the same member" },
        { Start + "  arm: {" + Pivot + ", rod: {from: shaft, «pins: [[0, 60, 9], [0, 60, 9]]}}\n", "no length", "driver's pin first" },
        { Start + "  arm: {" + Pivot + ", rod: {from: shaft, pins: [«[7, 40, 0], [0, 90, 9]]}}\n", "[7, 40, 0] stands on the axis of 'shaft'", "off the axis" },
        { Start + "  arm: {" + Pivot + ", «rod: {from: shaft, pins: [[0, 50, 0], [0, 105, 0]]}}\n", "dead centre of 'arm'", "off the dead centre" },
        { Start + "  arm: {" + Slide + ", slot: {from: shaft, pin: [0, 40, 9], along: «x}}\n", "runs along the pin", "across the pin" },
        { Start + "  arm: {" + Slide + ", slot: {from: shaft, pin: [0, 40, 9], along: «y}}\n", "can't push 'arm'", "across the direction" },
        { Start + "  arm: {" + Slide + ", slot: {from: shaft, «pin: [5, 40, 0], along: z}}\n", "on the axis of 'shaft'", "off the axis" },
        { Start + "  arm: {" + Pivot + ", slot: {from: shaft, «pin: [0, 90, 0], along: y}}\n", "on the axis of 'arm'", "off the axis" },
        { Start + "  a: {" + Slide + ", rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]]}}\n  b: {slide: {along: z}, «slot: {from: a, pin: [0, 90, 0], along: [0, 1, 1]}}\n", "both members slide", "pin-along" },
    };

    public static TheoryData<string, string, string> Cams => new()
    {
        { WithHead.Replace(", cam: {", ", «cam: {", StringComparison.Ordinal), "has nothing to do", "Add a chart under 'timing' for 'lever'" },
        { Cam("roller: 8, at: [0, 68, 0]", upright: true), "not parallel to the shaft", "same direction" },
        { Start + "  arm: {slide: {along: x}, «cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}}}\n", "not square to the shaft", "plane of the cam" },
        { Cam("at: [0, 68, 0]"), "neither roller, round end nor flat", "exactly one" },
        { Cam("roller: 8, flat: 9, at: [0, 68, 0]"), "more than one of roller", "exactly one" },
        { Cam("roller: 8, «at: [5, 70, -38]"), "roller stands on the axis of 'lever'", "lever's arm" },
        { Cam("roller: 8, «at: [5, 40, 0]"), "roller stands on the axis of the shaft 'shaft'", "cam's edge" },
        { Cam("roller: 8, at: [0, 68, 0], facing: «y"), "only a flat face", "Remove 'facing'" },
        { Cam("flat: 30, at: [0, 68, 0], facing: «x"), "does not look across the shaft", "square to the shaft" },
        { Cam("flat: 30, «at: [0, 70, -38]"), "can't be told which way it looks", "add 'facing'" },
        { Start + "  arm: {" + Slide + ", cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, hub: «5, bore: 6}}\n", "hub of 5 mm is smaller than its bore of 6 mm", "outside of the hub" },
        { Start + "  s: {" + Slide + ", rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]]}}\n  arm: {" + Slide + ", cam: {on: «s, follower: {roller: 8, at: [0, 68, 0]}}}\n", "slides and can't carry a cam", "Name a shaft" },
        { Start + "  w: {" + Pivot + ", rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 19]]}}\n  arm: {" + Slide + ", cam: {on: «w, follower: {roller: 8, at: [0, 120, 0]}}}\ntiming:\n  arm: {over: shaft, moves: []}\n", "no train of wheels ties it to the crank", "Gear it" },
        { WithHead + Chart.Replace("  head", "  «haed", StringComparison.Ordinal), "no member 'haed' to act", "Did you mean 'head'?" },
        { WithHead + Chart.Replace("over: shaft", "over: «shift", StringComparison.Ordinal), "no member 'shift' to time by", "Did you mean 'shaft'?" },
        { WithHead + Chart.Replace("over: shaft", "over: «lever", StringComparison.Ordinal), "'lever' is not geared to the crank", "wheels tie to the crank: shaft" },
        { WithHead + Chart + "  «lever: {over: shaft, moves: []}\n", "hang on the same cam", "Keep one of the charts" },
        { WithHead + Chart + "  «shaft: {over: shaft, moves: []}\n", "no cam moves 'shaft'", "remove the chart" },
        { WithHead + Chart.Replace("reach: rest", "reach: -3", StringComparison.Ordinal).Replace("  head", "  «head", StringComparison.Ordinal), "ends the turn at -3 deg and begins it at 0 deg", "Add a move back to 0 deg" },
        { WithHead + Chart.Replace("{from: 200", "«{from: 80", StringComparison.Ordinal), "begins 10 deg before move 1", "end by 80 deg" },
        { WithHead + Chart.Replace("{from: 10, to: 90", "«{from: 10, to: 10", StringComparison.Ordinal), "not after its beginning at 10 deg", "above 10" },
        { WithHead + Chart.Replace("{from: 10, to: 90, reach: -9}", "«{from: 10, to: 90}", StringComparison.Ordinal), "does not say where it goes", "Give reach" },
        { WithHead + Chart.Replace("{from: 10, to: 90, reach: -9", "{from: 10, to: 90, reach: -9, law: curve, «points: [[20, 1, 2]]", StringComparison.Ordinal), "not a pair", "[shaft angle, position]" },
    };

    public static TheoryData<string, string, string> Rules => new()
    {
        { Rule("{member: «haed, above: 1}"), "no member 'haed'", "Did you mean 'head'?" },
        { Rule("{member: head}", "«"), "says nothing of where", "exactly one of 'above', 'below' and 'between'" },
        { Rule("{member: head, above: 1, below: 3}", "«"), "more than one of above", "exactly one" },
        { Rule("{member: head, «between: [3, 1]}"), "from 3 to 1 is empty", "smaller bound first" },
        { Rule("{member: shaft, above: 3}", "«"), "goes round and round", "between: [from, to]" },
    };

    public static TheoryData<string, string, string> Performances => new()
    {
        { Head + "«" + Shaft + Wheel(0, "shaft", 1, 500) + Wheel(2, "shaft", 1, 499) + Wheel(4, "shaft", 1, 491), "122504500 turns", "common factors" },
        { Head + "«" + Shaft + string.Concat(Enumerable.Range(0, 4).Select(k => Wheel(k, k == 0 ? "shaft" : $"w{k - 1}", 1, 500))), "62500000000 turns", "common factors" },
        { Head + "«" + Shaft + string.Concat(Enumerable.Range(0, 12).Select(k => Wheel(k, k == 0 ? "shaft" : $"w{k - 1}", 1, 500 - k))), "more than 1000000000000 turns", "common factors" },
        { Head + "«" + Shaft + string.Concat(Enumerable.Range(0, 300).Select(k => Wheel(2 * k, "shaft", 1, 1))), "there are 301 members", "At most 300" },
        { WithHead + Chart + "«rules:\n" + string.Concat(Enumerable.Repeat("  - {while: {member: head, above: 1}, keep: {member: head, above: 0}}\n", 101)), "there are 101 rules", "At most 100" },
    };

    [Theory]
    [MemberData(nameof(Members))]
    [MemberData(nameof(Drives))]
    [MemberData(nameof(Cams))]
    [MemberData(nameof(Rules))]
    [MemberData(nameof(Performances))]
    public void IsRefused(string marked, string what, string remedy) => Refused(marked, what, remedy);

    private static string Rule(string condition, string mark = "") => WithHead + Chart + $"rules: [{{while: {{member: lever, above: 1}}, {mark}keep: {condition}}}]\n";

    // Upright and level by turns, so that each pair is a worm or a bevel and any teeth do.
    private static string Wheel(int k, string with, int first, int second) =>
        $"  w{k}: {{pivot: {{through: [0, {k}, 0], along: {(k % 2 == 0 ? "y" : "x")}}}, gear: {{with: {with}, teeth: [{first}, {second}], sense: same}}}}\n";

    // The lever on its cam with another follower; the mark stands where the follower has it, else before what the case is about.
    private static string Cam(string follower, bool upright = false)
    {
        var marked = follower.Contains('«', StringComparison.Ordinal);
        return Start + $"  lever: {{pivot: {{through: [0, 70, -38], along: {(upright ? "y" : "-x")}}}, {(upright ? "«" : "")}cam: {{on: shaft, {(marked || upright ? "" : "«")}follower: {{{follower}}}}}}}\n";
    }
}
