using Jackwork.Cords;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The straight pieces of a cord as rigid lengths, since a solid keeps its length and a piece of cord between moving leads does not.</summary>
/// <remarks>
/// A piece that is l long, between l0 and l1 over the performance, is covered by n lengths l0 that stand evenly from one end of it to the other, the i-th from
/// i/(n - 1) (l - l0) on: at its longest they still overlap, at its shortest they are one. None ever stands out beyond the piece.
/// </remarks>
internal sealed class CordPieces
{
    /// <summary>Most lengths for one piece; one that runs almost out is then covered with gaps where it is longest.</summary>
    private const int Most = 12;

    /// <summary>Least length, mm: a piece that runs out altogether keeps something to show.</summary>
    private const double Least = 0.5;

    private readonly CordDrive drive;
    private readonly int[] involved;

    private CordPieces(CordDrive drive, IReadOnlyList<Length> all) => (this.drive, All, involved) = (drive, all, [.. drive.Run.Members]);

    /// <summary>The lengths, along the cord.</summary>
    public IReadOnlyList<Length> All { get; }

    /// <summary>Covers the cord of a drive over its performance.</summary>
    public static CordPieces Of(Motion.Motion motion, CordDrive drive) =>
        new(drive, [.. CordRange.Of(motion, drive).Lengths.SelectMany((r, k) => Cover(k, Math.Max(Least, r.Least), r.Most))]);

    /// <summary>Its number: that of its straight piece, from the driver's end, and where that has more than one, a letter.</summary>
    public string Called(int piece)
    {
        var (strand, first) = (All[piece].Strand, piece);
        while (first > 0 && All[first - 1].Strand == strand)
        {
            first--;
        }

        var alone = All.Count(l => l.Strand == strand) == 1;
        return FormattableString.Invariant($"{strand + 1}{(alone ? "" : (char)('a' + piece - first))}");
    }

    /// <summary>The frame of a length at some coordinates of the members: x along the cord from its beginning, seen from the case.</summary>
    public Frame At(int piece, Machine machine, Func<int, double> coordinate)
    {
        var states = new MemberState[machine.Members.Count];
        foreach (var m in involved)
        {
            states[m] = machine.Members[m].Joint.At(Jet.Constant(coordinate(m)));
        }

        var strands = new CordStrand[drive.Run.Leads.Count - 1];
        drive.Run.Follow(states, strands, new Jet[strands.Length + 1]);
        var (strand, share, length) = All[piece];
        var s = strands[strand];
        var x = s.Along;
        var across = (drive.Run.Normal ?? Hinge(x)).Across(x).Unit();
        return new(x, across, x.Cross(across), s.Begins + share * Math.Max(0, s.Length.Value - length) * x);
    }

    // In space any direction across will do that does not jump as the cord swings: the nearer of two fixed ones is the farther from it.
    private static Vec3 Hinge(Vec3 x) => Math.Abs(x.Z) < 0.9 ? new(0, 0, 1) : new(1, 0, 0);

    private static IEnumerable<Length> Cover(int strand, double least, double most)
    {
        var n = (int)Math.Clamp(Math.Ceiling(most / least), most > least ? 2 : 1, Most);
        return Enumerable.Range(0, n).Select(i => new Length(strand, n == 1 ? 0 : i / (n - 1.0), least));
    }

    /// <summary>A length of cord that moves as one.</summary>
    /// <param name="Strand">Which straight piece it lies in, from the cord's beginning.</param>
    /// <param name="Share">Where in that: 0 at its beginning, 1 at its end.</param>
    /// <param name="Mm">How long it is, mm.</param>
    internal readonly record struct Length(int Strand, double Share, double Mm);
}
