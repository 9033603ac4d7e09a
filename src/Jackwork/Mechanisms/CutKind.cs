using Jackwork.Cams;
using Jackwork.Checks;

namespace Jackwork.Mechanisms;

/// <summary>A kind of mechanism whose plates follow from the timing chart, by way of the cams.</summary>
/// <param name="List">Key of its list in the result.</param>
/// <param name="In">The mechanisms of this kind; cams are worked out only where the machine has one.</param>
internal sealed record CutKind(string List, Func<Proof, IEnumerable<Mechanism>> In)
{
    /// <summary>All kinds, in the order of the result.</summary>
    public static readonly IReadOnlyList<CutKind> All =
    [
        new("positiveCams", PositiveCamWork.Of),
    ];
}
