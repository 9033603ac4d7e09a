using Jackwork.Cords;
using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>Cords that leave a pulley, go round it too far, run into themselves or have no straight piece left.</summary>
internal sealed class CordRunCheck : ICheck
{
    /// <summary>Straight piece, mm, below which two leads as good as touch (common practice, no source).</summary>
    private const double Shortest = 1;

    /// <summary>Wrap, rad, below which a cord is about to leave a pulley: 5 degrees (common practice, no source).</summary>
    private const double Barely = 5 * Math.PI / 180;

    public string Name => "cord-run";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<CordWork>())
        {
            var leads = w.Drive.Run.Leads;
            for (var k = 1; k < leads.Count - 1; k++)
            {
                if (leads[k].Kind == LeadKind.Pulley && Wrap(proof, w, k) is { } finding)
                {
                    yield return finding;
                }
            }

            for (var k = 0; k < w.Range.Lengths.Count; k++)
            {
                if (w.Range.Lengths[k] is { Least: < Shortest } r)
                {
                    var at = Proof.Deg(proof.At(r.LeastStep));
                    yield return new(
                        Level.Fault, Name, w.Name, at, at, r.Least, Shortest, "mm",
                        FormattableString.Invariant($"the cord of '{w.Name}' is pulled in up to {w.Called(k + 1)}: only {r.Least:0.##} mm are left of the straight piece from {w.Called(k)} at {proof.Where(proof.At(r.LeastStep), proof.Machine.Crank)}"),
                        "Set the two farther apart, or ask a smaller move");
                }
            }

            if (Meeting(proof, w) is { } meeting)
            {
                yield return meeting;
            }
        }
    }

    private Finding? Wrap(Proof proof, CordWork w, int k)
    {
        var r = w.Range.Wraps[k];
        var (leaves, round) = (r.Least < Barely, r.Most > 2 * Math.PI);
        if (!leaves && !round)
        {
            return null;
        }

        var step = leaves ? r.LeastStep : r.MostStep;
        var (at, wrap) = (Proof.Deg(proof.At(step)), Proof.Deg(leaves ? r.Least : r.Most));
        var where = proof.Where(proof.At(step), proof.Machine.Crank);
        return leaves
            ? new(
                r.Least < 0 ? Level.Fault : Level.Caution, Name, w.Name, at, at, wrap, Proof.Deg(Barely), "deg",
                r.Least < 0
                    ? FormattableString.Invariant($"the cord of '{w.Name}' leaves {w.Called(k)} at {where}: it would have to lie round it by {wrap:0.#}°, and from there on moves the member otherwise than is worked out")
                    : FormattableString.Invariant($"the cord of '{w.Name}' lies round {w.Called(k)} by no more than {wrap:0.#}° at {where} and is about to leave it"),
                "Set the pulley farther into the bend of the cord, or give an eye in its place")
            : new(
                Level.Fault, Name, w.Name, at, at, wrap, 360, "deg",
                FormattableString.Invariant($"the cord of '{w.Name}' goes round {w.Called(k)} by {wrap:0.#}° at {where}, more than a whole turn: it runs into itself"),
                "Let it come and go on sides that bend it less, or use a drum");
    }

    // Where a straight piece first crosses another or rubs on a pulley that it does not lie on.
    private Finding? Meeting(Proof proof, CordWork w)
    {
        if (w.Drive.Run.Normal is not { } n)
        {
            return null;
        }

        var leads = w.Drive.Run.Leads;
        var (states, strands, wraps) = (new MemberState[proof.Machine.Members.Count], new CordStrand[leads.Count - 1], new Jet[leads.Count]);
        for (var i = 0; i < proof.Motion.Steps; i++)
        {
            Residuals.Fill(proof.Motion, i, states);
            w.Drive.Run.Follow(states, strands, wraps);
            for (var a = 0; a < strands.Length; a++)
            {
                for (var k = 0; k < leads.Count; k++)
                {
                    if (k != a && k != a + 1 && leads[k].Radius > 0 && CordMeeting.Depth(strands[a], w.Drive.Run.Middle(k, states).Point, leads[k].Radius) is > 0 and var depth)
                    {
                        return Said(proof, w, i, depth, $"its straight piece from {w.Called(a)} to {w.Called(a + 1)} rubs on {w.Called(k)}");
                    }
                }

                for (var b = a + 1; b < strands.Length; b++)
                {
                    // Both sides of a pulley that the cord has left cross each other, which is told as such.
                    if ((b > a + 1 || wraps[b].Value >= 0) && CordMeeting.Cross(strands[a], strands[b], n))
                    {
                        return Said(proof, w, i, w.Diameter, $"its straight piece from {w.Called(a)} to {w.Called(a + 1)} crosses the one from {w.Called(b)} to {w.Called(b + 1)}");
                    }
                }
            }
        }

        return null;
    }

    private Finding Said(Proof proof, CordWork w, int step, double depth, string what) => new(
        Level.Fault, Name, w.Name, Proof.Deg(proof.At(step)), Proof.Deg(proof.At(step)), depth, 0, "mm",
        $"the cord of '{w.Name}' runs into itself from {proof.Where(proof.At(step), proof.Machine.Crank)} on: {what}",
        "Set the pulleys so that no piece of the cord comes across another, or let it go round the other side with 'towards'");
}
