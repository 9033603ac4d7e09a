using Jackwork.Linkages;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Checks;

/// <summary>The play of a coupler's pins, which its length multiplies at its point.</summary>
/// <remarks>
/// Each pin gives way by its running play s in any direction. With the point X at (x, y) from the pin P, x along the line to Q and y across it, L = PQ, the
/// link shifts by up to s at both pins, or turns about one as the other gives way: at the worst X moves by s (|PX| + |QX|)/L, the sum of what each pin's play does alone.
/// </remarks>
internal sealed class CouplerPlayCheck : ICheck
{
    /// <summary>Share of the smaller way of the point's path above which play is told as a caution (common practice, no source).</summary>
    private const double Share = 0.1;

    public string Name => "coupler-play";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var c in proof.MechanismsOf<CouplerWork>())
        {
            if (c.Point is not { } x)
            {
                continue;
            }

            var axis = proof.Machine.Members[c.Member].Joint.Along;
            var reach = ((x - c.Drive.OwnPin).Across(axis).Length + (x - c.Drive.OtherPin).Across(axis).Length) / c.Drive.Length;
            var play = Fits.Running * reach;
            var limit = Share * Breadth(Locus.Of(proof.Motion, c.Member, x));
            if (play > limit)
            {
                yield return new(
                    Level.Caution, Name, c.Name, null, null, play, limit, "mm",
                    FormattableString.Invariant($"the play of two pins, {Fits.Running:0.##} mm each, comes to {play:0.##} mm at the point of '{c.Name}', more than a tenth of the smaller way of its path"),
                    "Set the two pins farther apart, or the point nearer to them");
            }
        }
    }

    // The second largest side of the box round the path: it lies in a plane, which need not be that of two axes.
    private static double Breadth(IReadOnlyList<Jet3> path)
    {
        var (min, max) = CouplerWork.Extent([.. path.Select(p => p.Point)]);
        double[] sides = [max.X - min.X, max.Y - min.Y, max.Z - min.Z];
        Array.Sort(sides);
        return sides[1];
    }
}
