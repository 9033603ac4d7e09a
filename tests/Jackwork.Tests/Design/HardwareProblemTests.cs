using Xunit;
using static Jackwork.Tests.Design.Marked;

namespace Jackwork.Tests.Design;

/// <summary>Every way in which screws, washers, bushes, guides, supports, colours and joined parts can be wrong has its own message at its place.</summary>
[Trait("Proof", "closed form")]
public sealed class HardwareProblemTests
{
    private const string Case = "case: {inside: [[-50, 0, -50], [50, 100, 50]], open: [front]}\n";
    private const string Line = ", at: [0, 0, 0], along: x}}\n";
    private const string Box = "{box: {at: [0, 0, 0], size: [1, 1, 1]}";

    public static TheoryData<string, string, string> Cases => new()
    {
        { Start + "parts:\n  a: {«washer: {at: [0, 0, 0], along: x}}\n", "the washer has no size", "exactly one of 'size: M4'" },
        { Start + "parts:\n  a: {«washer: {size: M4, shim: 4, thickness: 1" + Line, "more than one way", "exactly one" },
        { Start + "parts:\n  a: {washer: {size: «M7" + Line, "found 'M7'", "Did you mean" },
        { Start + "parts:\n  a: {washer: {size: M4, thickness: «1" + Line, "M4 is 0.8 mm thick", "Remove 'thickness'" },
        { Start + "parts:\n  a: {washer: {shim: «7, thickness: 1" + Line, "no shim rings are made for an axle of 7 mm", "3, 4, 5, 6, 8, 10, 12 mm" },
        { Start + "parts:\n  a: {washer: {shim: 4, thickness: «0.4" + Line, "no shim rings are made 0.4 mm thick", "0.1, 0.2, 0.3, 0.5, 1 mm" },
        { Start + "parts:\n  a: {«washer: {bore: 4, outside: 9" + Line, "not all are given", "all three" },
        { Start + "parts:\n  a: {washer: {bore: «9, outside: 9, thickness: 1" + Line, "a bore of 9 mm leaves nothing", "smaller than the outside" },
        { Start + "parts:\n  a: {screw: {size: M4, length: «2.5, head: countersunk" + Line, "all head, 2.7 mm high", "more than 2.7 mm" },
        { Start + "parts:\n  a: {screw: {size: M4, length: 8, head: «round" + Line, "found 'round'", "cheese" },
        { Start + "parts:\n  a: " + Box + ", colour: «red}\n", "'red' is no colour", "#rrggbb" },
        { Start + "parts:\n  a: " + Box + ", process: «welded}\n", "found 'welded'", "routed" },
        { Head + "members:\n  shaft: {pivot: {through: [0, 40, 0], along: x}, body: {colour: «\"#12345\"}}\n", "'#12345' is no colour", "two hexadecimal digits" },
        { Head + "members:\n  shaft: {pivot: {through: [0, 40, 0], along: x}, body: {axle-material: «steal}}\n", "no 'steal'", "Did you mean 'steel'?" },
        { Head + "members:\n  shaft: {pivot: {through: [0, 40, 0], along: x}, body: {axle: 6, bush: {outside: «6}}}\n", "no wall round a rod of 6 mm", "more than 6 mm" },
        { Head + "members:\n  shaft: {pivot: {through: [0, 40, 0], along: x}, body: {«guide: {length: 8}}}\n", "only what slides has a guide", "give 'bush'" },
        { Start + "  arm: {slide: {along: y}, body: {«bush: {outside: 9}}, rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]]}}\n", "only what turns runs in bushes", "give 'guide'" },
        { Start + "  arm: {slide: {along: y}, body: {axle: 6, guide: {outside: «5}}, rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]]}}\n", "a guide of 5 mm has no wall", "more than 6.1 mm" },
        { Start + "  arm: {slide: {along: y}, rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]], bends: [[0, 60, 9], «[0, 60, 9]]}}\n", "at one point", "Set them apart" },
        { Start + "  arm: {slide: {along: y}, rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]], ends: [eye, «hook]}}\n", "found 'hook'", "plain, bend, eye" },
        { Start + Case + "parts:\n  a: {support: {of: «shift, at: 0, from: bottom}}\n", "no member 'shift' to carry", "Did you mean 'shaft'?" },
        { Start + Case + "parts:\n  a: {on: «shaft, support: {of: shaft, at: 0, from: bottom}}\n", "stands on the case, not on 'shaft'", "Remove 'on'" },
        { Start + Case + "parts:\n  a: {support: {of: shaft, at: 0, from: «front}}\n", "no board front", "a side that has a board" },
        { Start + Case + "parts:\n  a: {support: {of: shaft, at: 0, from: «left}}\n", "does not run along the board left", "beside the axis" },
        { Start + "parts:\n  a: {support: {of: shaft, at: 0, from: «bottom}}\n", "no case to stand on", "Add a 'case'" },
        { Start + "parts:\n  a: " + Box + "}\njoined:\n  - {name: ab, «parts: [a], by: glue}\n", "one part alone", "two parts or more" },
        { Start + "parts:\n  a: " + Box + "}\njoined:\n  - {name: ab, parts: [a, «b], by: glue}\n", "there is no part 'b'", "Did you mean 'a'?" },
        { Start + "parts:\n  a: " + Box + "}\n  b: " + Box + ", on: shaft}\njoined:\n  - {name: ab, parts: [a, «b], by: glue}\n", "'b' is on 'shaft' but 'a' on 'case'", "on the same member" },
        { Start + "parts:\n  a: " + Box + "}\n  b: " + Box + "}\njoined:\n  - {name: «a, parts: [a, b], by: glue}\n", "'a' is no name for it", "of its own" },
        { Start + "parts:\n  a: " + Box + "}\n  b: " + Box + "}\njoined:\n  - {name: ab, parts: [a, b], by: «weld}\n", "found 'weld'", "glue" },
        { Start + "parts:\n  a: " + Box + "}\n  b: " + Box + "}\n  c: " + Box + "}\njoined:\n  - {name: ab, parts: [a, b], by: glue}\n  - {name: bc, parts: [c, «b], by: glue}\n", "'b' is part of 'ab' already", "once" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void IsRefused(string marked, string what, string remedy) => Refused(marked, what, remedy);
}
