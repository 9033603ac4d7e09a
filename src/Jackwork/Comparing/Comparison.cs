using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Comparing;

/// <summary>What differs between two versions of a piece, from the earlier to the later: what was proved of each, held side by side.</summary>
/// <remarks>What counts as the same is in <see cref="Sameness"/>. Names tell what belongs together; a member of which only the name is another is told as renamed, and its cams, parts and findings with it.</remarks>
public sealed record Comparison
{
    private Comparison(Proof before, Proof after, Verdict verdictBefore, Verdict verdictAfter, Renames renames)
    {
        (Before, After, Renamed) = (before, after, renames.All);
        var (was, now) = (before.Machine, after.Machine);
        Members = MemberChange.All(before, after, renames);
        Places = PlaceChange.All(was, now, renames);
        Cams = CamChange.All(before, after, renames);
        Wheels = WheelChange.All(before, after, renames);
        Parts = PartChange.All((was, before.Assembly), (now, after.Assembly), renames, Cams.Both, Wheels.Both);
        Rules = Pairing<string>.Of(was.Rules.Select(r => (renames.Now(r.Text), 0)), now.Rules.Select(r => (r.Text, 0)), (text, _, _) => text);
        Findings = FindingChange.Of(verdictBefore, verdictAfter, renames);
    }

    /// <summary>The earlier version.</summary>
    public Proof Before { get; }

    /// <summary>The later version.</summary>
    public Proof After { get; }

    /// <summary>Turns of the crank over which motions are compared: those that both performances have, from the start.</summary>
    public int SharedTurns => Math.Min(Before.Machine.Performance.CrankTurns, After.Machine.Performance.CrankTurns);

    /// <summary>Whether one performance is longer than the other.</summary>
    public bool LengthDiffers => Before.Machine.Performance.CrankTurns != After.Machine.Performance.CrankTurns;

    /// <summary>Members of which only the name is another.</summary>
    public IReadOnlyList<Rename> Renamed { get; }

    /// <summary>The members; a renamed one is in both.</summary>
    public Pairing<MemberChange> Members { get; }

    /// <summary>Pivots, slides and pins that stand elsewhere as drawn.</summary>
    public IReadOnlyList<PlaceChange> Places { get; }

    /// <summary>The cams, by their followers' names.</summary>
    public Pairing<CamChange> Cams { get; }

    /// <summary>The toothed wheels.</summary>
    public Pairing<WheelChange> Wheels { get; }

    /// <summary>All parts.</summary>
    public Pairing<PartChange> Parts { get; }

    /// <summary>The rules, by what they say.</summary>
    public Pairing<string> Rules { get; }

    /// <summary>What the checks say.</summary>
    public FindingChange Findings { get; }

    /// <summary>Whether nothing was found to differ.</summary>
    public bool IsNothing => !LengthDiffers && Renamed.Count == 0 && Places.Count == 0
        && Members is { New: [], Gone: [] } && !Members.Both.Any(m => m.IsChanged)
        && Cams is { New: [], Gone: [] } && !Cams.Both.Any(c => c.IsCutAgain || c.IsHubMadeAgain)
        && Wheels is { New: [], Gone: [] } && !Wheels.Both.Any(w => w.IsCutAgain || w.IsHubMadeAgain)
        && Parts is { New: [], Gone: [] } && !Parts.Both.Any(p => p.What != PartDifference.None)
        && Rules is { New: [], Gone: [] } && Findings is { New: [], Gone: [] };

    /// <summary>Compares two versions; parts and verdicts are worked out where they have not been yet.</summary>
    /// <param name="before">The earlier.</param>
    /// <param name="after">The later.</param>
    public static Comparison Of(Proof before, Proof after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new(before, after, Verdict.Of(before), Verdict.Of(after), Renames.Of(before.Machine.Design, after.Machine.Design));
    }
}
