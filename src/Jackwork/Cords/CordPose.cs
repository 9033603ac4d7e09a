using Jackwork.Motion;

namespace Jackwork.Cords;

/// <summary>A cord at one pose of the machine: how each straight piece grows with the driven's coordinate, and what friction each lead can hold.</summary>
internal sealed class CordPose
{
    private readonly CordDrive drive;
    private readonly CordStrand[] strands;
    private readonly Jet[] wraps;
    private readonly double[] grows;
    private readonly double[] holds;
    private readonly double[] shares;

    /// <summary>A cord before any pose is taken.</summary>
    public CordPose(CordDrive drive)
    {
        this.drive = drive;
        var n = drive.Run.Leads.Count;
        (strands, wraps, grows, holds, shares) = (new CordStrand[n - 1], new Jet[n], new double[n - 1], new double[n], new double[n - 1]);
    }

    /// <summary>The straight pieces.</summary>
    public ReadOnlySpan<CordStrand> Strands => strands;

    /// <summary>The angles on the leads, rad.</summary>
    public ReadOnlySpan<Jet> Wraps => wraps;

    /// <summary>By how much the whole cord grows for a unit of the driven's coordinate, mm: the sum over its pieces.</summary>
    public double Slope { get; private set; }

    /// <summary>Length of the cord that is not wound on drums, mm.</summary>
    public double Straight { get; private set; }

    /// <summary>Takes a pose.</summary>
    /// <param name="by">The states with the driven's coordinate as the variable.</param>
    public void Take(ReadOnlySpan<MemberState> by)
    {
        var run = drive.Run;
        Straight = run.Follow(by, strands, wraps).Value;
        for (var k = 0; k < strands.Length; k++)
        {
            var d = strands[k].To - strands[k].From;
            var t = strands[k].Along;
            grows[k] = d.X.First * t.X + d.Y.First * t.Y + d.Z.First * t.Z;
        }

        var last = run.Leads.Count - 1;
        grows[0] -= run.Leads[0].Kind == LeadKind.Drum ? run.Leads[0].Side * run.Turned(0, by).First : 0;
        grows[^1] += run.Leads[last].Kind == LeadKind.Drum ? run.Leads[last].Side * run.Turned(last, by).First : 0;
        Slope = grows.Sum();
        for (var k = 0; k <= last; k++)
        {
            holds[k] = Ratio(k);
            Straight -= run.Leads[k].Kind == LeadKind.Drum ? run.Leads[k].Radius * wraps[k].Value : 0;
        }
    }

    /// <summary>The tension of each straight piece for a load of -1: with friction all making it greater towards the first end, or all towards the last.</summary>
    /// <param name="towardsFirst">Towards which end it grows.</param>
    public ReadOnlySpan<double> Shares(bool towardsFirst)
    {
        var (c, sum) = (1.0, 0.0);
        for (var k = strands.Length - 1; k >= 0; k--)
        {
            shares[k] = c;
            sum += c * grows[k];
            c *= towardsFirst ? holds[k] : 1 / holds[k];
        }

        // Where friction alone would hold the driven the return moves nothing.
        for (var k = 0; k < shares.Length; k++)
        {
            shares[k] = sum * Slope > 0 ? shares[k] / sum : 0;
        }

        return shares;
    }

    private double Ratio(int k)
    {
        var (lead, friction) = (drive.Run.Leads[k], drive.Spec.Friction ?? CordSizes.UsualFriction);
        return k == 0 || k == holds.Length - 1 ? 1
            : lead.Kind == LeadKind.Eye ? CordFriction.Eye(friction, wraps[k].Value)
            : CordFriction.Pulley(friction, wraps[k].Value, (drive.Spec.Run[k].Pin ?? CordSizes.UsualPin) / 2, lead.Radius);
    }
}
