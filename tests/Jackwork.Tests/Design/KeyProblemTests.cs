using Xunit;
using static Jackwork.Tests.Design.Marked;

namespace Jackwork.Tests.Design;

/// <summary>Every way in which a key or its value can be wrong has its own message, at the key's or the value's place.</summary>
[Trait("Proof", "closed form")]
public sealed class KeyProblemTests
{
    private const string Arm = "  arm: {pivot: {through: [0, 90, 0], along: x}, ";

    public static TheoryData<string, string, string> Cases => new()
    {
        { "jackwork: «2\ntitle: Trial\ncrank: {turns: shaft, rpm: 30}\n" + Shaft, "expected 1, found '2'", "Write 1" },
        { "«title: Trial\ncrank: {turns: shaft, rpm: 30}\n" + Shaft, "'jackwork' is missing", "Version of the file format" },
        { Start + "«cuter: 3\n", "unknown key 'cuter'", "Did you mean 'cutter'?" },
        { Start + "«Cutter: 3\n", "unknown key 'Cutter'", "Did you mean 'cutter'?" },
        { Start + "«wheelbarrow-of-peat: 3\n", "unknown key 'wheelbarrow-of-peat'", "Known here: jackwork, title" },
        { Start + "«?: 3\n", "unknown key '?'", "Known here" },
        { Start + "cutter: 3\n«cutter: 4\n", "'cutter' stands twice", "Keep one" },
        { Start + "cutter: «0\n", "expected a number from 0.1 to 20 mm, found '0'", "from 0.1 to 20 mm" },
        { Start + "cutter: «thick\n", "expected a number, found 'thick'", "Write a number from 0.1 to 20 mm" },
        { Start + "cutter: «yes\n", "expected a number, found 'yes'", "Write a number" },
        { Start + "limits: «3\n", "expected keys with values, found '3'", "Write {" },
        { Start + "rules: «{}\n", "expected a list, found a mapping", "hyphens" },
        { "jackwork: 1\ntitle: Trial\n«crank: {turns: shaft}\n" + Shaft, "'rpm' is missing", "How fast" },
        { "jackwork: 1\ntitle: Trial\n«crank:\n  turns: shaft\n" + Shaft, "'rpm' is missing", "How fast" },
        { Head + "members:\n  «Shaft: {pivot: {through: [0, 40, 0], along: x}}\n", "'Shaft' is not a name", "lower-case" },
        { Head + "members:\n  «\"shaft\\n\": {pivot: {through: [0, 40, 0], along: x}}\n", "is not a name", "lower-case" },
        { Head + "members:\n  «shaft-: {pivot: {through: [0, 40, 0], along: x}}\n", "'shaft-' is not a name", "lower-case" },
        { Head + "members:\n  «case: {pivot: {through: [0, 40, 0], along: x}}\n", "'case' is not a name", "fixed frame" },
        { Start + "  «shaft: {pivot: {through: [0, 40, 0], along: x}}\n", "'shaft' stands twice", "own name" },
        { Head + "members: «[shaft]\n", "expected names with values, found a list of 1", "name: {...}" },
        { Head + "members:\n  shaft: {«pivot: {along: x}}\n", "'through' is missing", "A point of the axis" },
        { Head + "members:\n  shaft: {pivot: {through: «[0, 40], along: x}}\n", "expected three numbers, found a list of 2", "[x, y, z]" },
        { Head + "members:\n  shaft: {pivot: {through: [0, «high, 0], along: x}}\n", "expected a number, found 'high'", "Write a number" },
        { Head + "members:\n  shaft: {pivot: {through: [0, «2000000, 0], along: x}}\n", "of size 1000000 at most, found '2000000'", "Write a number" },
        { Head + "members:\n  shaft: {pivot: {through: [0, 40, 0], along: «w}}\n", "expected a direction, found 'w'", "-z or [x, y, z]" },
        { Head + "members:\n  shaft: {pivot: {through: [0, 40, 0], along: «[0, 0, 0]}}\n", "expected a direction", "[0, 0, 0] points nowhere" },
        { Start + Arm + "gear: {with: shaft, teeth: «[10], module: 2}}\n", "expected a list of 2, found a list of 1", "Write 2 values" },
        { Start + Arm + "gear: {with: shaft, teeth: [10, «12.5], module: 2}}\n", "expected a whole number, found '12.5'", "from 1 to 500" },
        { Start + Arm + "gear: {with: shaft, teeth: [10, «0], module: 2}}\n", "expected a whole number from 1 to 500, found '0'", "from 1 to 500" },
        { Start + Arm + "gear: {with: shaft, teeth: [10, 40], module: 2, inside: «yes}}\n", "expected true or false, found 'yes'", "true or false" },
        { Start + Arm + "gear: {with: shaft, teeth: [10, 40], module: 2, sense: «sam}}\n", "expected one of same, opposite, found 'sam'", "Did you mean 'same'?" },
        { Start + Arm + "rod: {from: shaft, pins: [[0, 0, 9], «9]}}\n", "expected three numbers, found '9'", "[x, y, z]" },
        { Start + Arm + "cam: {on: shaft, follower: {roller: 8, at: [0, 60, 0]}, base: «automatic}}\n", "expected a number, found 'automatic'", "or 'auto'" },
        { Start + LeverAndHead + Chart.Replace("reach: -9", "reach: -9, law: «cycloid", StringComparison.Ordinal), "found 'cycloid'", "Did you mean 'cycloidal'?" },
        { Start + LeverAndHead + Chart.Replace("from: 10", "from: «-10", StringComparison.Ordinal), "expected a number from 0 to 360 deg, found '-10'", "from 0 to 360 deg" },
        { Start + LeverAndHead + Chart.Replace("over: shaft, ", "", StringComparison.Ordinal).Replace("head: {m", "«head: {m", StringComparison.Ordinal), "'over' is missing", "The shaft whose turn" },
        { Start + LeverAndHead + Chart.Replace("{from: 10, to", "«{to", StringComparison.Ordinal), "'from' is missing", "Shaft angle" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void IsRefused(string marked, string what, string remedy) => Refused(marked, what, remedy);
}
